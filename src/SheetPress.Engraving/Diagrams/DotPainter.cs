using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Draws dots, their labels, and the small signs beside strings.</summary>
internal sealed class DotPainter(ImmutableArray<Mark>.Builder marks, DiagramStyle style)
{
    private const TextFont LabelFont = TextFont.SansSemiBold;
    private const double LabelPadding = 0.7;
    private const double SquareCorner = 0.35;
    private const double Halo = 0.35;

    /// <summary>Half the width of a dot: wider than its radius when its label needs it.</summary>
    internal static double HalfWidth(NeckDot dot, DiagramStyle style) =>
        Math.Max(style.DotRadius, (TextSetter.Measure(dot.Label, LabelFont, style.LabelSize) / 2) + LabelPadding);

    /// <summary>Draws a dot.</summary>
    /// <param name="dot">The dot.</param>
    /// <param name="centre">Its centre.</param>
    /// <param name="halo">Whether a white rim parts it from what lies under it.</param>
    internal void Dot(NeckDot dot, Point centre, bool halo = true)
    {
        var (halfWidth, radius) = (HalfWidth(dot, style), style.DotRadius);
        // A square of the same height looks larger than a circle; it is drawn a little smaller.
        if (dot.Shape == DotShape.Root) (halfWidth, radius) = (halfWidth - 0.1, radius - 0.1);
        if (halo) Shape(dot.Shape, centre, halfWidth + Halo, radius + Halo, ink: 0, outline: 0);
        if (dot.Shape == DotShape.Other)
        {
            var half = style.OutlineThickness / 2;
            Shape(dot.Shape, centre, halfWidth - half, radius - half, ink: 0, outline: 0);
            Shape(dot.Shape, centre, halfWidth - half, radius - half, ink: 1, style.OutlineThickness);
        }
        else
        {
            Shape(dot.Shape, centre, halfWidth, radius, ink: 1, outline: 0);
        }
        Label(dot.Label, LabelFont, centre, dot.Shape == DotShape.Other ? 1 : 0);
    }

    /// <summary>Draws text with the middle of its capitals at a point.</summary>
    internal void Label(string text, TextFont font, Point centre, double ink = 1)
    {
        if (text.Length == 0) return;
        var piece = TextSetter.Set(text, font, style.LabelSize, MarkRole.Diagram, ink);
        piece.PlaceAt(marks, centre.X - (piece.Width / 2), centre.Y + (TextMetrics.Of(font).CapHeight * style.LabelSize / 2));
    }

    /// <summary>Draws the x of a string that is not to sound.</summary>
    internal void Cross(Point centre)
    {
        const double Half = 1.1;
        Line(centre.Offset(-Half, -Half), centre.Offset(Half, Half), 0.35);
        Line(centre.Offset(-Half, Half), centre.Offset(Half, -Half), 0.35);
    }

    /// <summary>Draws the o of an open string.</summary>
    internal void Ring(Point centre) =>
        marks.Add(new EllipseMark(centre, 1.2, 1.2, style.OutlineThickness) { Role = MarkRole.Diagram });

    /// <summary>Draws a line.</summary>
    internal void Line(Point from, Point to, double thickness, double ink = 1, bool round = false) =>
        marks.Add(new LineMark(from, to, thickness, round) { Role = MarkRole.Diagram, Ink = ink });

    /// <summary>Draws a filled bar with round ends.</summary>
    internal void Bar(Point from, Point to, double thickness) => Line(from, to, thickness, round: true);

    /// <summary>Draws a filled grey spot.</summary>
    internal void Spot(Point centre, double radius, double ink) =>
        marks.Add(new EllipseMark(centre, radius, radius) { Role = MarkRole.Diagram, Ink = ink });

    private void Shape(DotShape shape, Point centre, double halfWidth, double radius, double ink, double outline)
    {
        var area = new Box(centre.X - halfWidth, centre.Y - radius, centre.X + halfWidth, centre.Y + radius);
        marks.Add(shape == DotShape.Root ? new RectangleMark(area, outline, SquareCorner) { Role = MarkRole.Diagram, Ink = ink }
            : halfWidth > radius ? new RectangleMark(area, outline, radius) { Role = MarkRole.Diagram, Ink = ink }
            : new EllipseMark(centre, radius, radius, outline) { Role = MarkRole.Diagram, Ink = ink });
    }
}

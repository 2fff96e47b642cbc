using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Draws bends as a curved arrow from the number (or head) up over the staff, with their amount.</summary>
internal static class BendDrawer
{
    private const double Thickness = 0.14;
    private const double Start = 0.2;
    private const double Width = 1.0;
    private const double Rise = 1.2;
    private const double ArrowWidth = 0.6;
    private const double ArrowLength = 0.75;
    private const double TextGap = 0.25;

    /// <summary>Draws all bends.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">Tab or staff.</param>
    /// <param name="anchor">Right end and y of what is bent, or null.</param>
    /// <param name="sizes">Sizes of text.</param>
    /// <param name="staff">Index of the staff.</param>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, Func<PlacedEvent, Point?> anchor, TextSizes sizes, int staff)
    {
        foreach (var e in frame.Events)
        {
            if (e.Plan.Event.BendHalfSteps is not { } amount || anchor(e) is not { } from) continue;
            var origin = e.Plan.Origin with { Staff = staff };
            var (x, y) = (from.X + Start, from.Y);
            var tip = Math.Min(-Rise, y - (2 * Rise));
            var arrow = x + Width;
            var end = tip + ArrowLength;
            var stroke = new CurveMark(new Point(x, y), new Point(x + (Width * 0.8), y), new Point(arrow, y + ((end - y) * 0.4)), new Point(arrow, end), Thickness, Thickness) { Role = MarkRole.Technique, Origin = origin };
            ImmutableArray<Point> corners = [new(arrow - (ArrowWidth / 2), end), new(arrow + (ArrowWidth / 2), end), new(arrow, tip)];
            canvas.Add(stroke);
            canvas.Add(new PolygonMark(corners) { Role = MarkRole.Technique, Origin = origin });
            var text = new SymbolBuilder(MarkRole.Technique).Text(Amount(amount), TextFont.Sans, sizes.Small).Build();
            canvas.Place([.. RowItem.Centred(text, arrow, origin).MarksAt(tip - TextGap)], above: true, TextGap, 0.1);
        }
    }

    // Amounts in whole steps, as players read them.
    private static string Amount(double halfSteps)
    {
        var quarters = (int)Math.Round(halfSteps * 2);
        var whole = quarters / 4;
        var rest = (quarters % 4) switch { 1 => "¼", 2 => "½", 3 => "¾", _ => "" };
        if (quarters == 4) return "full";
        return whole == 0 ? rest : whole.ToString(System.Globalization.CultureInfo.InvariantCulture) + rest;
    }
}

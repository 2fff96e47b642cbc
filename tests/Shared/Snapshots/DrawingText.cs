using System.Globalization;
using System.Text;
using SheetPress.Engraving;

namespace SheetPress.Tests;

/// <summary>A display list as text, one mark a line, rounded to hundredths, for snapshots.</summary>
internal static class DrawingText
{
    internal static string Of(Drawing drawing)
    {
        var text = new StringBuilder();
        foreach (var mark in drawing.Marks)
        {
            text.Append(mark.Role).Append(' ');
            text.Append(mark switch
            {
                GlyphMark g => $"glyph {g.Glyph.Name} {At(g.Position)} space {N(g.StaffSpace)}",
                LineMark l => $"line {At(l.From)} to {At(l.To)} thick {N(l.Thickness)}",
                PolygonMark p => $"polygon {string.Join(' ', p.Corners.Select(At))} outline {N(p.OutlineThickness)}",
                CurveMark c => $"curve {At(c.Start)} {At(c.Control1)} {At(c.Control2)} {At(c.End)}",
                EllipseMark e => $"ellipse {At(e.Centre)} radii {N(e.RadiusX)} {N(e.RadiusY)} outline {N(e.OutlineThickness)}",
                RectangleMark r => $"rectangle {N(r.Area.Left)},{N(r.Area.Top)} to {N(r.Area.Right)},{N(r.Area.Bottom)} outline {N(r.OutlineThickness)} corner {N(r.CornerRadius)}",
                TextMark t => $"text \"{t.Run.Text}\" {t.Run.Font} {At(t.Position)} size {N(t.Size)}{(t.Link is null ? "" : " link " + t.Link)}",
                _ => mark.ToString(),
            });
            if (mark.Ink < 1) text.Append(" ink ").Append(N(mark.Ink));
            text.Append('\n');
        }
        return text.ToString();
    }

    private static string At(Point p) => $"{N(p.X)},{N(p.Y)}";

    // Minus nothing is nothing.
    private static string N(double value) => (Math.Round(value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}

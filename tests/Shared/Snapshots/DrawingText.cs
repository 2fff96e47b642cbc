using System.Globalization;
using System.Text;
using SheetPress.Engraving;

namespace SheetPress.Tests;

/// <summary>A display list as text, one mark a line, rounded to hundredths, for snapshots.</summary>
internal static class DrawingText
{
    /// <summary>Every mark.</summary>
    internal static string Of(Drawing drawing) => Of(drawing.Marks);

    /// <summary>Every mark but those of music, of which each system is one line with the box of its staff lines.</summary>
    internal static string WithoutMusic(Drawing drawing)
    {
        var text = new StringBuilder();
        foreach (var run in Runs(drawing.Marks))
        {
            if (run[0].Origin.System < 0) text.Append(Of(run));
            else text.Append(System(run));
        }
        return text.ToString();
    }

    private static IEnumerable<List<Mark>> Runs(IEnumerable<Mark> marks)
    {
        var run = new List<Mark>();
        foreach (var mark in marks)
        {
            if (run.Count > 0 && run[0].Origin.System != mark.Origin.System)
            {
                yield return run;
                run = [];
            }
            run.Add(mark);
        }
        if (run.Count > 0) yield return run;
    }

    private static string System(List<Mark> marks)
    {
        var box = marks.Where(m => m.Role is MarkRole.StaffLine or MarkRole.TabLine).Aggregate(Box.Empty, (all, mark) => all.Union(mark.Bounds));
        return $"system {marks[0].Origin.System + 1} lines {N(box.Left)},{N(box.Top)} to {N(box.Right)},{N(box.Bottom)}\n";
    }

    private static string Of(IEnumerable<Mark> marks)
    {
        var text = new StringBuilder();
        foreach (var mark in marks)
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

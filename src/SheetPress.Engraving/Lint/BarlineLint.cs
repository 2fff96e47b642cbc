namespace SheetPress.Engraving;

/// <summary>Checks that barlines join all staves of a system and that repeat dots stand under each other.</summary>
internal static class BarlineLint
{
    private const double Tolerance = 0.1;

    /// <summary>Checks the marks of one system.</summary>
    public static IEnumerable<LintFinding> Check(IReadOnlyList<Mark> marks, double unit)
    {
        var staff = marks.Where(m => m.Role is MarkRole.StaffLine or MarkRole.TabLine).Select(m => m.Bounds).ToList();
        if (staff.Count == 0) yield break;
        var (top, bottom) = (staff.Min(b => b.Top), staff.Max(b => b.Bottom));
        var bars = marks.Where(m => m.Role == MarkRole.Barline).ToList();
        foreach (var bar in bars.OfType<LineMark>())
        {
            if (Math.Abs(bar.Bounds.Top - top) > Tolerance * unit || Math.Abs(bar.Bounds.Bottom - bottom) > Tolerance * unit)
            {
                yield return new LintFinding(LintRule.Barline, bar.Origin, bar.Bounds, "barline does not run from the first line to the last");
            }
        }
        var dots = bars.OfType<GlyphMark>().ToList();
        var perColumn = (marks.Any(m => m.Role == MarkRole.StaffLine) ? 2 : 0) + (marks.Any(m => m.Role == MarkRole.TabLine) ? 2 : 0);
        foreach (var dot in dots)
        {
            var column = dots.Count(d => Math.Abs(d.Position.X - dot.Position.X) < Tolerance * unit);
            if (column != perColumn) yield return new LintFinding(LintRule.Barline, dot.Origin, dot.Bounds, "repeat dots of the staves do not stand under each other");
        }
    }
}

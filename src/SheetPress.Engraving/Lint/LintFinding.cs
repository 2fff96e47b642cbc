namespace SheetPress.Engraving;

/// <summary>Something on a page that a good engraver would circle in red.</summary>
/// <param name="Rule">The rule it breaks.</param>
/// <param name="Where">System, measure, staff and event of the (first) mark.</param>
/// <param name="Place">Box of the mark in the unit of the drawing.</param>
/// <param name="Message">What touched what, or what is too much, in words.</param>
public sealed record LintFinding(LintRule Rule, MarkOrigin Where, Box Place, string Message)
{
    /// <summary>Index of the page, from 0; -1 for a system that is on no page.</summary>
    public int Page { get; init; } = -1;

    /// <summary>"page 1, system 2, measure 5: chord symbol touches slur", counted from 1.</summary>
    public override string ToString()
    {
        var place = Page >= 0 ? FormattableString.Invariant($"page {Page + 1}, ") : "";
        if (Where.System >= 0) place += FormattableString.Invariant($"system {Where.System + 1}, ");
        if (Where.Measure >= 0) place += FormattableString.Invariant($"measure {Where.Measure + 1}, ");
        return $"{Rule}: {place}{Message}";
    }
}

using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>The machine's eye for one system: reads nothing but its display list and how far it was stretched.</summary>
public static class SystemLint
{
    /// <summary>A system is stretched to this many times its natural width at most.</summary>
    public const double MostStretch = 1.6;

    /// <summary>Nor squeezed below this.</summary>
    public const double LeastStretch = 0.85;

    // The bracket and its room hang out on the left; nothing hangs out on the right.
    private const double LeftRoom = 1.6;
    private const double RightRoom = 0.1;

    /// <summary>Checks a system.</summary>
    /// <param name="system">The system, in staff spaces.</param>
    /// <param name="staffSpace">Length of a staff space in millimetres.</param>
    public static ImmutableArray<LintFinding> Check(EngravedSystem system, double staffSpace)
    {
        var marks = system.Drawing.Marks;
        return [.. Music(marks, 1), .. TextSizeLint.Check(marks, staffSpace), .. Frame(system)];
    }

    /// <summary>The rules about the width of a system.</summary>
    internal static IEnumerable<LintFinding> Frame(EngravedSystem system)
    {
        foreach (var mark in system.Drawing.Marks)
        {
            var bounds = mark.Bounds;
            if (bounds.Left < -LeftRoom || bounds.Right > system.Width + RightRoom) yield return new LintFinding(LintRule.Margin, mark.Origin, bounds, $"{InkLint.Name(mark)} reaches beyond the system");
        }
        var where = (system.Drawing.Marks.FirstOrDefault()?.Origin ?? MarkOrigin.None) with { Measure = system.FirstMeasure };
        if (system.IsOverfull) yield return new LintFinding(LintRule.Stretch, where, system.Drawing.Bounds, FormattableString.Invariant($"system needs {system.LeastWidth:0.0} spaces and has {system.Width:0.0}"));
        if (system.StretchRatio is > MostStretch or < LeastStretch)
        {
            yield return new LintFinding(LintRule.Stretch, where, system.Drawing.Bounds, FormattableString.Invariant($"system is set to {system.StretchRatio:0.00} times its natural width"));
        }
    }

    /// <summary>The rules that need no more than the marks of one system.</summary>
    internal static IEnumerable<LintFinding> Music(IReadOnlyList<Mark> marks, double unit) =>
        InkLint.Check(marks, unit).Concat(NoteLint.Check(marks, unit)).Concat(BarlineLint.Check(marks, unit));
}

namespace SheetPress.Engraving;

/// <summary>
/// One thing of a row that is to be broken into lines (or of a column that is to be broken into pages), with the gap that
/// follows it. The gap vanishes where a line ends. All lengths are in one unit and none is negative.
/// </summary>
/// <param name="Size">Length of the thing.</param>
/// <param name="Gap">Natural length of the gap after it.</param>
/// <param name="GapStretch">How far the gap can grow before it looks bad.</param>
/// <param name="GapShrink">How far the gap can shrink at all.</param>
/// <param name="Penalty">Cost of a break after it: 0 none, positive unwanted, negative wanted, infinity forbidden, negative infinity forced.</param>
/// <param name="Carry">Length added to the start of the next line when the break is here (a table header that is repeated).</param>
public readonly record struct FitItem(double Size, double Gap = 0, double GapStretch = 0, double GapShrink = 0, double Penalty = 0, double Carry = 0)
{
    /// <summary>How far a line that ends after it can fall short before it looks bad; null for <see cref="FitOptions.EndStretch"/>.</summary>
    public double? EndStretch { get; init; }

    /// <summary>Another <see cref="EndStretch"/> for lines that fall short by more than this; null for none.</summary>
    public (double MoreThan, double EndStretch)? WhenShorter { get; init; }

    /// <summary>Whether a break after it is allowed.</summary>
    public bool CanBreak => Penalty < double.PositiveInfinity;

    /// <summary>Whether a break after it is forced.</summary>
    public bool MustBreak => double.IsNegativeInfinity(Penalty);
}

/// <summary>What lines are measured by.</summary>
/// <param name="Size">Length of a full line, above zero.</param>
public sealed record FitOptions(double Size)
{
    /// <summary>How far the end of a line can fall short before it looks bad, besides what the gaps stretch: 0 for lines that must be even.</summary>
    public double EndStretch { get; init; }

    /// <summary>Cost of a line as such: a high one makes for few lines.</summary>
    public double LineCost { get; init; } = 10;

    /// <summary>The share of <see cref="Size"/> that the last line should fill; below it the last line costs as if it had to reach it.</summary>
    public double LastFill { get; init; }
}

/// <summary>A line found: items from <paramref name="Start"/> up to but not including <paramref name="End"/>.</summary>
/// <param name="Start">Index of the first item.</param>
/// <param name="End">Index behind the last item.</param>
/// <param name="Natural">Length with every gap at its natural length, the carried part included.</param>
/// <param name="Stretch">Sum of what its gaps can grow.</param>
/// <param name="Shrink">Sum of what its gaps can shrink.</param>
public readonly record struct FitLine(int Start, int End, double Natural, double Stretch, double Shrink);

using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace SheetPress.Scores;

/// <summary>Which staves a score shows.</summary>
public enum StaffLayout
{
    /// <summary>Staff notation with tab below.</summary>
    StaffAndTab,
    /// <summary>Staff notation alone.</summary>
    Staff,
    /// <summary>Tab alone, with rhythm stems.</summary>
    Tab,
    /// <summary>Chord symbols over rhythm slashes on one staff.</summary>
    ChordChart,
}

/// <summary>One exercise, complete: the single truth that every output is made from. Measures are in written order; repeats are marks.</summary>
public sealed record Score : ScoreHeader
{
    /// <summary>A score with a header.</summary>
    /// <param name="header">What it says about itself.</param>
    /// <param name="measures">The measures; at least one.</param>
    [SetsRequiredMembers]
    public Score(ScoreHeader header, ImmutableArray<Measure> measures)
        : base(header) => Measures = measures;

    /// <summary>The measures; at least one.</summary>
    public ImmutableArray<Measure> Measures { get; init; }

    /// <summary>
    /// Where in a full measure the measure of an index starts, in quarter notes: zero but for a pickup, which fills the end of a
    /// measure, and for the second part of a divided measure, which bears the number of the first.
    /// </summary>
    public Fraction OffsetOf(int index)
    {
        var measure = Measures[index];
        if (index == 0) return measure.Number == 0 ? measure.Meter.MeasureLength - measure.Length : Fraction.Zero;
        return IsContinued(index) ? Measures[index - 1].Length : Fraction.Zero;
    }

    /// <summary>Whether the measure of an index is the second part of a divided measure, which bears the number of the first.</summary>
    public bool IsContinued(int index) => index > 0 && Measures[index - 1].Number == Measures[index].Number;
}

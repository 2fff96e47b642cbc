using System.Collections.Immutable;

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
public sealed record Score
{
    /// <summary>Name for files: lower-case words joined with hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Title of the exercise.</summary>
    public required string Title { get; init; }

    /// <summary>One line that says what to do; may be empty.</summary>
    public string Instruction { get; init; } = "";

    /// <summary>The instrument that plays.</summary>
    public required Instrument Instrument { get; init; }

    /// <summary>The tempo at the start.</summary>
    public required Tempo Tempo { get; init; }

    /// <summary>How pairs are played.</summary>
    public Feel Feel { get; init; }

    /// <summary>Which staves to show.</summary>
    public StaffLayout Layout { get; init; }

    /// <summary>Whether fretting fingers are shown.</summary>
    public bool ShowFingers { get; init; }

    /// <summary>Whether degree names stand in a row under the staff.</summary>
    public bool ShowDegrees { get; init; }

    /// <summary>Whether counting syllables stand in a row under the staff.</summary>
    public bool ShowCounts { get; init; }

    /// <summary>Whether roman numerals stand in a row under the staves.</summary>
    public bool ShowRomans { get; init; }

    /// <summary>Whether a chord chart shows the rhythm of the notes, in slashes, in place of one slash for each beat.</summary>
    public bool ShowRhythm { get; init; }

    /// <summary>Measures a system, when the author fixed them; null lets the page decide.</summary>
    public int? MeasuresPerSystem { get; init; }

    /// <summary>The measures; at least one.</summary>
    public required ImmutableArray<Measure> Measures { get; init; }

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

using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Scores;

/// <summary>One pitch of a line, before or after fingering.</summary>
/// <param name="Pitch">Sounding pitch, spelled.</param>
public sealed record LineTone(Pitch Pitch)
{
    /// <summary>Degree above the root of the chord of the moment; null when unknown.</summary>
    public Degree? Degree { get; init; }

    /// <summary>Place on the neck; set by fingering, or before it by an author who pins it.</summary>
    public FretPosition? Position { get; init; }

    /// <summary>Fretting finger 0 to 4; set by fingering.</summary>
    public int? Finger { get; init; }

    /// <summary>Kind of head.</summary>
    public Notehead Head { get; init; }

    /// <summary>Whether a finger has to stop its string; null means where its note is bent or slides.</summary>
    public bool? IsStopped { get; init; }
}

/// <summary>One note, chord or gap of a line as sounding time: no bar lines, no ties, no written values yet.</summary>
public sealed record LineNote
{
    /// <summary>Start in quarter notes from the start of the line.</summary>
    public required Fraction Start { get; init; }

    /// <summary>Sounding length in quarter notes, above zero.</summary>
    public required Fraction Duration { get; init; }

    /// <summary>Tones from low to high; at least one. Gaps between notes become rests.</summary>
    public required ImmutableArray<LineTone> Tones { get; init; }

    /// <summary>Articulations and marks.</summary>
    public Articulations Articulations { get; init; }

    /// <summary>How the plucking hand plays it.</summary>
    public Stroke Stroke { get; init; }

    /// <summary>How it is joined to the next note.</summary>
    public Connection Connection { get; init; }

    /// <summary>A slide into it from nowhere.</summary>
    public LooseSlide SlideIn { get; init; }

    /// <summary>A slide out of it to nowhere.</summary>
    public LooseSlide SlideOut { get; init; }

    /// <summary>Bend in half steps; null for none.</summary>
    public double? BendHalfSteps { get; init; }

    /// <summary>Whether a phrasing slur starts here.</summary>
    public bool SlurStart { get; init; }

    /// <summary>Whether a phrasing slur stops here.</summary>
    public bool SlurStop { get; init; }

    /// <summary>Loudness from here on ("mf"); null for as before.</summary>
    public string? Dynamic { get; init; }

    /// <summary>A change of loudness that starts or ends here.</summary>
    public Hairpin Hairpin { get; init; }

    /// <summary>Whether its measure is to be printed as the sign for the measure before, where it is the same.</summary>
    public bool IsSimile { get; init; }

    /// <summary>Counting syllable; null for none.</summary>
    public string? Count { get; init; }

    /// <summary>End in quarter notes from the start of the line.</summary>
    public Fraction End => Start + Duration;

    /// <summary>Whether it is bent or slides, which an open string cannot do.</summary>
    public bool MovesOnString => Connection == Connection.Slide || BendHalfSteps is not null || SlideIn != LooseSlide.None || SlideOut != LooseSlide.None;
}

/// <summary>A line of music over a progression: notes in order of start, not overlapping within the line.</summary>
/// <param name="Notes">The notes.</param>
/// <param name="Length">Whole length in quarter notes, rests at the end included.</param>
public sealed record Line(ImmutableArray<LineNote> Notes, Fraction Length)
{
    /// <summary>Changes of clef and tempo in order of time, each at the start of a measure.</summary>
    public ImmutableArray<LineChange> Changes { get; init; } = [];
}

/// <summary>What is another from a measure on.</summary>
/// <param name="Start">Start of the measure in quarter notes from the start of the line.</param>
public sealed record LineChange(Fraction Start)
{
    /// <summary>The new clef; null for the same as before.</summary>
    public Clef? Clef { get; init; }

    /// <summary>The new tempo, in place of one that the frame states there; null for no change by the line.</summary>
    public Tempo? Tempo { get; init; }

    /// <summary>An equation of note values that a new tempo follows from, in place of a tempo; null for none.</summary>
    public TempoEquation? Equation { get; init; }
}

/// <summary>One measure of the frame that a line is written into: the progression as the lesson states it.</summary>
public sealed record FrameMeasure
{
    /// <summary>Meter in force.</summary>
    public required Meter Meter { get; init; }

    /// <summary>Key in force.</summary>
    public required Key Key { get; init; }

    /// <summary>Actual length in quarter notes (shorter for a pickup).</summary>
    public required Fraction Length { get; init; }

    /// <summary>Chord symbols of the measure.</summary>
    public ImmutableArray<HarmonyMark> Harmonies { get; init; } = [];

    /// <summary>Other marks.</summary>
    public ImmutableArray<Direction> Directions { get; init; } = [];

    /// <summary>Whether a repeat starts here.</summary>
    public bool RepeatStart { get; init; }

    /// <summary>Times the section ending here is played; 0 for no repeat.</summary>
    public int RepeatEndTimes { get; init; }

    /// <summary>Numbers of the ending that starts here.</summary>
    public ImmutableArray<int> EndingStart { get; init; } = [];

    /// <summary>Whether an ending bracket stops at the end of this measure.</summary>
    public bool EndingStop { get; init; }

    /// <summary>Whether the stopping bracket is closed with a hook.</summary>
    public bool EndingClosed { get; init; }

    /// <summary>Whether a new system is wanted before this measure.</summary>
    public bool BreakBefore { get; init; }

    /// <summary>Whether the author wrote it as the measure before once more: a chord chart prints the sign for that.</summary>
    public bool RepeatsPrevious { get; init; }

    /// <summary>Barline at the end; null lets the builder choose (single, and final at the end).</summary>
    public Barline? Barline { get; init; }
}

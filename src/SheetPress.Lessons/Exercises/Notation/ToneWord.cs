using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One pitch as a written line names it, before chord, key and octave are known.</summary>
internal abstract record ToneWord;

/// <summary>A degree of the chord of the moment or of the key: "5", "b7", "low-5".</summary>
/// <param name="Request">The degree.</param>
/// <param name="Octaves">Octaves moved: -1 for one "low-".</param>
internal sealed record DegreeWord(DegreeRequest Request, int Octaves) : ToneWord;

/// <summary>A pitch: "Eb2", or "Eb" in the octave nearest to the note before.</summary>
/// <param name="Name">The note.</param>
/// <param name="Octave">Its octave, sounding; null for the nearest.</param>
internal sealed record PitchWord(NoteName Name, int? Octave) : ToneWord;

/// <summary>A note counted from the root of the chord to come: "next", "under-next".</summary>
internal sealed record NextWord(NextNote Note) : ToneWord;

/// <summary>The pitch of the note before: "x".</summary>
internal sealed record SameWord : ToneWord;

/// <summary>The notes that can be asked for by their relation to the next root.</summary>
internal enum NextNote
{
    /// <summary>The next root itself, taken early.</summary>
    Root,
    /// <summary>A half step below it.</summary>
    Under,
    /// <summary>A half step above it.</summary>
    Over,
    /// <summary>A scale step below it.</summary>
    StepUnder,
    /// <summary>A scale step above it.</summary>
    StepOver,
    /// <summary>Its fifth, the root of its dominant.</summary>
    Fifth,
}

/// <summary>A note, chord, hold or rest of a written line with its time within the line.</summary>
/// <param name="Start">Quarter notes from the start of the line.</param>
/// <param name="Duration">Quarter notes, above zero.</param>
/// <param name="Tones">What sounds; empty for a hold of what sounded before the line came round.</param>
/// <param name="Marks">How it is played.</param>
/// <param name="Pin">Where on the neck it is wanted.</param>
/// <param name="Count">Counting syllable of its rhythm; null for none.</param>
/// <param name="Span">Where it is written.</param>
internal sealed record WrittenNote(
    Fraction Start,
    Fraction Duration,
    IReadOnlyList<ToneWord> Tones,
    StrokeMarks Marks,
    NeckPin Pin,
    string? Count,
    SourceSpan Span)
{
    /// <summary>Whether it stands in a bar that is the one before once more, printed as the sign for it.</summary>
    public bool IsSimile { get; init; }

    /// <summary>Whether its own marks join it to the next note, and not those of the exercise's rhythm.</summary>
    public bool IsJoined { get; init; }

    /// <summary>Whether it only carries on what sounded before.</summary>
    public bool IsHold => Tones.Count == 0;

    /// <summary>End in quarter notes from the start of the line.</summary>
    public Fraction End => Start + Duration;
}

/// <summary>A place on the neck that an author asks for; nulls leave it to the fingering.</summary>
internal readonly record struct NeckPin(int? String, int? Fret, int? Finger = null)
{
    /// <summary>Whether a place is asked for.</summary>
    public bool IsSet => String is not null || Fret is not null;
}

/// <summary>A line as written: its notes and its length in quarter notes. Rests are gaps.</summary>
internal sealed record WrittenLine(IReadOnlyList<WrittenNote> Notes, Fraction Length, int Bars)
{
    /// <summary>Changes of clef and tempo in order of time.</summary>
    public IReadOnlyList<WrittenChange> Changes { get; init; } = [];
}

/// <summary>A change of clef or tempo at the start of a bar of a written line.</summary>
/// <param name="Start">Quarter notes from the start of the line.</param>
/// <param name="Span">Where it is written.</param>
internal sealed record WrittenChange(Fraction Start, SourceSpan Span)
{
    /// <summary>Whether the new clef is the bass clef; null for no new clef.</summary>
    public bool? IsBass { get; init; }

    /// <summary>The new tempo; null for none.</summary>
    public Tempo? Tempo { get; init; }

    /// <summary>The equation of note values that a new tempo follows from; null for none.</summary>
    public TempoEquation? Equation { get; init; }
}

using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>One written event of a voice: a note, a chord or (with no tones) a rest.</summary>
public sealed record ScoreEvent
{
    /// <summary>Where it begins, in quarter notes from the start of the measure.</summary>
    public required Fraction Onset { get; init; }

    /// <summary>The written value.</summary>
    public required NoteValue Value { get; init; }

    /// <summary>
    /// Length in quarter notes when this is a rest that fills its measure: it is written as one whole rest in every meter
    /// (<see cref="Value"/> is a whole note) and lasts this long. Null for every other event.
    /// </summary>
    public Fraction? MeasureRest { get; init; }

    /// <summary>Tones from low to high; empty for a rest.</summary>
    public ImmutableArray<Tone> Tones { get; init; } = [];

    /// <summary>Beam states by level, eighth beam first; empty when the event is not beamed.</summary>
    public ImmutableArray<BeamState> Beams { get; init; } = [];

    /// <summary>Articulations and marks.</summary>
    public Articulations Articulations { get; init; }

    /// <summary>How the plucking hand plays it.</summary>
    public Stroke Stroke { get; init; }

    /// <summary>How it is joined to the next event.</summary>
    public Connection Connection { get; init; }

    /// <summary>A slide into it from nowhere.</summary>
    public LooseSlide SlideIn { get; init; }

    /// <summary>A slide out of it to nowhere (Below: downward).</summary>
    public LooseSlide SlideOut { get; init; }

    /// <summary>Bend in half steps (1 half, 2 full, may be 0.5); null for none.</summary>
    public double? BendHalfSteps { get; init; }

    /// <summary>Whether a phrasing slur starts here.</summary>
    public bool SlurStart { get; init; }

    /// <summary>Whether a phrasing slur stops here.</summary>
    public bool SlurStop { get; init; }

    /// <summary>The counting syllable to print under the note ("1", "&amp;", "e", "a"), that of a rest in round brackets; null for none.</summary>
    public string? Count { get; init; }

    /// <summary>Whether it is a rest.</summary>
    public bool IsRest => Tones.IsEmpty;

    /// <summary>How long it lasts, in quarter notes: the length of its value, or of the measure for a measure rest.</summary>
    public Fraction Duration => MeasureRest ?? Value.Duration;

    /// <summary>Where it ends, in quarter notes from the start of the measure.</summary>
    public Fraction End => Onset + Duration;
}

/// <summary>A tuplet over events of one voice: all indexes are into <see cref="Voice.Events"/>.</summary>
/// <param name="First">First event.</param>
/// <param name="Last">Last event, included.</param>
/// <param name="Actual">How many notes are played.</param>
/// <param name="Normal">In the time of how many.</param>
/// <param name="Level">0 for an outer tuplet, 1 for one nested inside another.</param>
public readonly record struct TupletSpan(int First, int Last, int Actual, int Normal, int Level = 0);

/// <summary>One voice of a measure. Its events follow each other without gaps and fill the measure.</summary>
/// <param name="Events">The events in order.</param>
/// <param name="Tuplets">Tuplets over them.</param>
public sealed record Voice(ImmutableArray<ScoreEvent> Events, ImmutableArray<TupletSpan> Tuplets);

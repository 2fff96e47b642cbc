using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>A note as it sounds, ties merged and repeats unrolled.</summary>
internal sealed class PlayedNote
{
    /// <summary>Start in quarter notes from the start of the performance.</summary>
    public required Fraction Start { get; init; }

    /// <summary>End of its written length, before articulation shortens it.</summary>
    public required Fraction End { get; set; }

    /// <summary>The tone.</summary>
    public required Tone Tone { get; init; }

    /// <summary>The event in which it is struck.</summary>
    public required ScoreEvent Event { get; init; }

    /// <summary>How it is joined to the next note, said at its last event.</summary>
    public Connection Connection { get; set; }

    /// <summary>How the note before is joined to it.</summary>
    public Connection ArrivedBy { get; init; }

    /// <summary>Velocity of its place, before its own marks.</summary>
    public required int Level { get; init; }

    /// <summary>End of the measure in which it is struck, for notes that ring on.</summary>
    public required Fraction MeasureEnd { get; init; }
}

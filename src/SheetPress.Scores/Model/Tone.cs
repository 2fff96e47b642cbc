using SheetPress.Theory;

namespace SheetPress.Scores;

/// <summary>What kind of head a note has.</summary>
public enum Notehead
{
    /// <summary>An ordinary head.</summary>
    Normal,
    /// <summary>A ghost note: felt more than heard.</summary>
    Ghost,
    /// <summary>A dead note: no pitch, the string damped.</summary>
    Dead,
    /// <summary>A rhythm slash.</summary>
    Slash,
    /// <summary>A natural harmonic.</summary>
    Harmonic,
}

/// <summary>One sounding pitch of a note or chord, with its place on the neck.</summary>
/// <param name="Pitch">The sounding pitch, spelled as it is to be written (<see cref="Instrument.ToWritten"/> moves it by octaves).</param>
public sealed record Tone(Pitch Pitch)
{
    /// <summary>String and fret; null before fingering and for slashes.</summary>
    public FretPosition? Position { get; init; }

    /// <summary>Fretting finger: 0 open, 1 index to 4 little finger; null when not shown.</summary>
    public int? Finger { get; init; }

    /// <summary>Whether a tie leads from this tone to the next event.</summary>
    public bool TieStart { get; init; }

    /// <summary>Whether a tie arrives from the event before.</summary>
    public bool TieStop { get; init; }

    /// <summary>The kind of head.</summary>
    public Notehead Head { get; init; }

    /// <summary>Degree above the root of the chord of the moment, for degree names; null when unknown.</summary>
    public Degree? Degree { get; init; }
}

namespace SheetPress.Publishing;

/// <summary>What a MIDI file holds besides the notes. The default is the notes alone, at the tempo of the score.</summary>
public sealed record MidiOptions
{
    /// <summary>The notes alone.</summary>
    public static MidiOptions Default { get; } = new();

    /// <summary>Whether the instrument's part sounds; false gives a play-along without it.</summary>
    public bool Part { get; init; } = true;

    /// <summary>Whether a bar is counted in before each exercise (and, before a pickup, the beats that it lacks).</summary>
    public bool CountIn { get; init; }

    /// <summary>Whether a click marks the beats, on channel 10.</summary>
    public bool Click { get; init; }

    /// <summary>Whether the chord symbols sound as held chords.</summary>
    public bool Chords { get; init; }

    /// <summary>Factor on every tempo, from 0.1 to 4: 0.5 plays half as fast.</summary>
    public double TempoFactor { get; init; } = 1;
}

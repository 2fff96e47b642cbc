using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Tones to be held together, from low to high, with their places where the shape fixes them.</summary>
/// <param name="Tones">The tones.</param>
/// <param name="Places">A place for each tone; empty to leave them to the fingering.</param>
/// <param name="Cost">What it costs by itself.</param>
internal sealed record Voicing(ImmutableArray<NamedPitch> Tones, ImmutableArray<FretPosition> Places, double Cost)
{
    /// <summary>MIDI number of the highest tone.</summary>
    public int Top => Tones[^1].Pitch.MidiNumber;

    /// <summary>MIDI number of the lowest tone.</summary>
    public int Bottom => Tones[0].Pitch.MidiNumber;
}

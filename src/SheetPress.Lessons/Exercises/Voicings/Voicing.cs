using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Tones to be held together, from low to high, with their places where the shape fixes them.</summary>
/// <param name="Tones">The tones.</param>
/// <param name="Places">A place for each tone; empty to leave them to the fingering.</param>
/// <param name="Cost">What it costs by itself.</param>
internal sealed record Voicing(ImmutableArray<NamedPitch> Tones, ImmutableArray<FretPosition> Places, double Cost)
{
    /// <summary>The finger on each tone, 0 for an open string; empty to leave them to the fingering.</summary>
    public ImmutableArray<int> Fingers { get; init; } = [];

    /// <summary>Where the hand lies: the lowest fret that a finger stops; 0 when none does or the places are not fixed.</summary>
    public int Hand
    {
        get
        {
            var lowest = 0;
            foreach (var place in Places) if (place.Fret > 0 && (lowest == 0 || place.Fret < lowest)) lowest = place.Fret;
            return lowest;
        }
    }

    /// <summary>The voicing that a grip holds.</summary>
    public static Voicing Of(Instrument instrument, HarmonyStep step, ChordGrip grip)
    {
        var tones = new List<(NamedPitch Pitch, FretPosition Place, int Finger)>();
        for (var i = 0; i < grip.Places.Length; i++)
        {
            var midi = instrument.MidiNumberAt(grip.Places[i].String, grip.Places[i].Fret);
            var degree = grip.Degrees[i] ?? Degree.Root;
            tones.Add((new NamedPitch(Pitch.AtOrAbove(step.Chord.NoteOf(degree), midi), degree), grip.Places[i], grip.Fingers[i]));
        }
        // With a re-entrant tuning the lowest string is not the lowest tone.
        var ordered = tones.OrderBy(t => t.Pitch.Pitch.MidiNumber).ToArray();
        return new Voicing([.. ordered.Select(t => t.Pitch)], [.. ordered.Select(t => t.Place)], grip.Cost) { Fingers = [.. ordered.Select(t => t.Finger)] };
    }

    /// <summary>MIDI number of the highest tone.</summary>
    public int Top => Tones[^1].Pitch.MidiNumber;

    /// <summary>MIDI number of the lowest tone.</summary>
    public int Bottom => Tones[0].Pitch.MidiNumber;
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The tones of a chord from root to octave under one hand: how a bass player sees a chord.</summary>
internal static class OneOctave
{
    private const int Span = 3;

    /// <summary>The places, from the root up; tones that the hand does not reach are left out.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="chord">The chord.</param>
    /// <param name="neck">Where it may lie.</param>
    public static ImmutableArray<FretPosition> Of(Instrument instrument, Chord chord, NeckRequest neck)
    {
        ImmutableArray<FretPosition> best = [];
        var lowest = int.MaxValue;
        // From a root on one of the lowest strings, as near to the nut as it goes.
        for (var s = instrument.StringCount; s >= Math.Max(1, instrument.StringCount - 2); s--)
        {
            for (var fret = RootFret(instrument, s, chord); fret <= instrument.PlayableFrets; fret += 12)
            {
                if (!neck.Allows(new FretPosition(s, fret))) continue;
                // The first or the second finger on the root, whichever reaches more.
                var places = From(instrument, chord, new FretPosition(s, fret), Math.Max(0, fret - 1), neck);
                var others = From(instrument, chord, new FretPosition(s, fret), fret, neck);
                if (others.Length > places.Length) places = others;
                if (places.Length < best.Length || (places.Length == best.Length && fret >= lowest)) continue;
                (best, lowest) = (places, fret);
            }
        }
        return best;
    }

    private static int RootFret(Instrument instrument, int stringNumber, Chord chord) => NoteMath.Modulo(chord.Root.PitchClass - instrument.MidiNumberAt(stringNumber, 0), 12);

    private static ImmutableArray<FretPosition> From(Instrument instrument, Chord chord, FretPosition root, int hand, NeckRequest neck)
    {
        var places = ImmutableArray.CreateBuilder<FretPosition>();
        var low = instrument.MidiNumberAt(root.String, root.Fret);
        var steps = new SortedSet<int> { 0, 12 };
        foreach (var degree in chord.Quality.Degrees) if (degree.Number <= 7) steps.Add(degree.HalfSteps);
        foreach (var step in steps)
        {
            for (var s = root.String; s >= 1; s--)
            {
                var place = new FretPosition(s, low + step - instrument.MidiNumberAt(s, 0));
                if (place.Fret < hand || place.Fret > hand + Span || !neck.Allows(place)) continue;
                places.Add(place);
                break;
            }
        }
        return places.ToImmutable();
    }
}

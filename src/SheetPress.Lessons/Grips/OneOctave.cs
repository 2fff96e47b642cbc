using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The tones of a chord from root to octave under one hand: how a bass player sees a chord.</summary>
internal static class OneOctave
{
    private const int Span = 3;

    // Lower than any fret.
    private const int Played = -1;

    /// <summary>The places, from the root up; tones that the hand does not reach are left out.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="chord">The chord.</param>
    /// <param name="neck">Where it may lie.</param>
    /// <param name="played">Where its root is played, taken if as many tones lie under the hand from there as elsewhere; null for anywhere.</param>
    public static ImmutableArray<FretPosition> Of(Instrument instrument, Chord chord, NeckRequest neck, FretPosition? played = null)
    {
        var best = played is { } root ? FromRoot(instrument, chord, root, neck) : [];
        var lowest = played is null ? int.MaxValue : Played;
        // From a root on one of the lowest strings, as near to the nut as it goes.
        for (var s = instrument.StringCount; s >= Math.Max(1, instrument.StringCount - 2); s--)
        {
            for (var fret = RootFret(instrument, s, chord); fret <= instrument.PlayableFrets; fret += 12)
            {
                if (!neck.Allows(new FretPosition(s, fret))) continue;
                var places = FromRoot(instrument, chord, new FretPosition(s, fret), neck);
                if (places.Length < best.Length || (places.Length == best.Length && fret >= lowest)) continue;
                (best, lowest) = (places, fret);
            }
        }
        return best;
    }

    // The first or the second finger on the root, whichever reaches more.
    private static ImmutableArray<FretPosition> FromRoot(Instrument instrument, Chord chord, FretPosition root, NeckRequest neck)
    {
        var places = From(instrument, chord, root, Math.Max(0, root.Fret - 1), neck);
        var others = From(instrument, chord, root, Math.Max(1, root.Fret), neck);
        return others.Length > places.Length ? others : places;
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
                // Over an open root the hand lies at the first fret, with the open strings at hand.
                var isOpen = place.Fret == 0 && root.Fret == 0;
                if ((place.Fret < hand && !isOpen) || place.Fret > hand + Span || !neck.Allows(place)) continue;
                places.Add(place);
                break;
            }
        }
        return places.ToImmutable();
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A tone with its place, as part of a shape.</summary>
/// <param name="Place">String and fret.</param>
/// <param name="Degree">Degree above the root.</param>
public readonly record struct ShapeTone(FretPosition Place, Degree Degree);

/// <summary>
/// The tones of a chord or scale across all strings under one hand, each tone once, in one position after the other along the neck.
/// Common practice: a position starts from a tone on the lowest string, with the first or second finger on it.
/// </summary>
/// <param name="instrument">The instrument.</param>
/// <param name="root">The root.</param>
/// <param name="degrees">The tones.</param>
/// <param name="neck">What may be used.</param>
internal sealed class PositionShapes(Instrument instrument, NoteName root, ImmutableArray<Degree> degrees, NeckRequest neck)
{
    private const int Span = 3;

    // Strings from the lowest sound to the highest; with a re-entrant tuning that is not their order.
    private readonly int[] _strings = [.. Enumerable.Range(1, instrument.StringCount).Where(s => neck.Strings.IsDefaultOrEmpty || neck.Strings.Contains(s)).OrderBy(s => instrument.OpenStrings[s - 1].MidiNumber)];

    /// <summary>Frets of the lowest string at which positions start.</summary>
    public List<int> Starts(int from, int to)
    {
        var starts = new List<int>();
        for (var fret = from; fret <= Math.Max(from, to); fret++) if (DegreeAt(new FretPosition(_strings[0], fret)) is not null) starts.Add(fret);
        return starts;
    }

    /// <summary>The shape from a start: the hand lies with its first or second finger on the first tone, whichever has to stretch less, and then whichever reaches more tones.</summary>
    public ImmutableArray<ShapeTone> From(int start)
    {
        var first = Walk(start, start);
        if (start < 2) return [.. first];
        var second = Walk(start - 1, start);
        var (one, two) = (Stretches(first, start), Stretches(second, start - 1));
        return [.. two < one || (two == one && second.Count > first.Count) ? second : first];
    }

    private static int Stretches(List<ShapeTone> tones, int hand) => tones.Count(t => t.Place.Fret > 0 && (t.Place.Fret < hand || t.Place.Fret > hand + Span));

    private List<ShapeTone> Walk(int hand, int start)
    {
        var tones = new List<ShapeTone>();
        var last = -1;
        foreach (var number in _strings)
        {
            for (var fret = number == _strings[0] ? start : Math.Max(0, hand - 1); fret <= Math.Min(hand + Span + 1, instrument.PlayableFrets); fret++)
            {
                var place = new FretPosition(number, fret);
                if (!neck.Allows(place)) continue;
                var midi = instrument.MidiNumberAt(number, fret);
                if (midi <= last || DegreeAt(place) is not { } degree) continue;
                // Outside its four frets the hand stretches only for a tone that another string does not have; rather back than up.
                if (fret > hand + Span ? IsOnAnother(number, midi, Math.Max(0, hand - 1), hand) : fret < hand && IsOnAnother(number, midi, hand, hand)) continue;
                tones.Add(new ShapeTone(place, degree));
                last = midi;
            }
        }
        return tones;
    }

    private bool IsOnAnother(int number, int midi, int from, int hand)
    {
        foreach (var other in _strings)
        {
            var fret = midi - instrument.MidiNumberAt(other, 0);
            if (other != number && fret >= from && fret <= hand + Span) return true;
        }
        return false;
    }

    private Degree? DegreeAt(FretPosition place)
    {
        var above = NoteMath.Modulo(instrument.MidiNumberAt(place.String, place.Fret) - root.PitchClass, 12);
        foreach (var degree in degrees) if (NoteMath.Modulo(degree.HalfSteps, 12) == above) return degree;
        return null;
    }
}

using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace SheetPress.Theory;

/// <summary>Which scales fit a chord, and what a bare number means over it.</summary>
public static class ChordScales
{
    /// <summary>The scales that hold every tone of a quality (by sound), the usual one first; at least one.</summary>
    /// <remarks>
    /// A scale that has a natural fifth, ninth, eleventh or thirteenth beside the altered one of the symbol is left out while there is a
    /// better one. The chromatic scale, the last of the table to hold them, is given for tones that no other scale holds.
    /// </remarks>
    public static ImmutableArray<ScaleType> For(ChordQuality quality)
    {
        ArgumentNullException.ThrowIfNull(quality);
        var candidates = new List<ScaleType>();
        foreach (var name in Candidates(quality)) candidates.Add(ScaleTypes.Get(name));
        var fitting = Fitting(candidates, quality, mayClash: false);
        if (fitting.Count == 0) fitting = Fitting(candidates, quality, mayClash: true);
        if (fitting.Count == 0) fitting = Fitting(ScaleTypes.All, quality, mayClash: true);
        return [.. fitting];
    }

    private static List<ScaleType> Fitting(IReadOnlyList<ScaleType> candidates, ChordQuality quality, bool mayClash)
    {
        var fitting = new List<ScaleType>();
        foreach (var scale in candidates) if (Holds(scale, quality) && (mayClash || !Clashes(quality, scale))) fitting.Add(scale);
        return fitting;
    }

    /// <summary>
    /// What a teacher means by a number over a chord: the chord's own tone of that number (7 is the seventh that the chord has, 10 its third an
    /// octave up); where it has none, what stands for it (the suspended tone for 3, the sixth for 7); else what the scale gives.
    /// </summary>
    /// <param name="chord">The chord.</param>
    /// <param name="number">A number from 1 up.</param>
    /// <param name="scale">The scale of the moment, as <see cref="ChordAnalysis.Scale"/>; null for the usual scale of the chord.</param>
    public static Degree Resolve(this Chord chord, int number, ScaleType? scale = null)
    {
        ArgumentNullException.ThrowIfNull(chord);
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        if (chord.Quality.Find(number) is { } exact) return exact;
        var simple = ((number - 1) % 7) + 1;
        var own = RomanNumeral.OwnTone(chord.Quality, simple) ?? StandIn(chord.Quality.Shape, simple);
        var degree = own ?? (scale ?? For(chord.Quality)[0]).Find(simple) ?? new Degree(simple);
        return new(degree.Number + (number - simple), degree.Alteration);
    }

    /// <summary>Third and seventh, or what stands for them; two different tones, of a third alone the root with it.</summary>
    internal static ImmutableArray<ChordTone> GuideTones(Chord chord)
    {
        var shape = chord.Quality.Shape;
        var lower = shape.Third ?? StandIn(shape, 3) ?? Degree.Root;
        var upper = shape.Seventh ?? StandIn(shape, 7) ?? shape.First(5) ?? shape.Degrees[^1];
        if (upper == lower) upper = Degree.Root;
        return ImmutableCollectionsMarshal.AsImmutableArray((ChordTone[])[new(lower, chord.NoteOf(lower)), new(upper, chord.NoteOf(upper))]);
    }

    /// <summary>The degrees of a scale over a chord of a quality: those that sound as a chord tone are named and spelled as the chord has them, within the octave.</summary>
    /// <remarks>
    /// Common practice (from memory): a reader who sees Db in G13b5 looks for Db in its scale, though the scale alone, lydian dominant,
    /// would have C#; the altered scale of F#7#5 has C double-sharp, not D. A scale with a natural fifth keeps its sixth beside it:
    /// natural minor over Bm#5 has F# and G, for F# and F double-sharp would be no scale. And no letter stands twice where a free one
    /// serves as simply: the whole tone scale over D9b5 has Ab and Bb, not Ab and A#.
    /// </remarks>
    public static ImmutableArray<Degree> DegreesOver(this ScaleType scale, ChordQuality quality)
    {
        ArgumentNullException.ThrowIfNull(scale);
        ArgumentNullException.ThrowIfNull(quality);
        var degrees = scale.Degrees.Select(d => AsIn(quality, scale, d)).ToArray();
        for (var i = 0; i < degrees.Length; i++)
        {
            var isDoubled = degrees[i] == scale.Degrees[i] && degrees.Count(d => d.Number == degrees[i].Number) > scale.Degrees.Count(d => d.Number == degrees[i].Number);
            if (isDoubled && !quality.Degrees.Any(d => d.HalfSteps % 12 == degrees[i].HalfSteps) && OnFreeNumber(degrees, degrees[i].HalfSteps) is { } free) degrees[i] = free;
        }
        return ImmutableCollectionsMarshal.AsImmutableArray(degrees);
    }

    // A degree of this sound whose number no other has, with one sign at most.
    private static Degree? OnFreeNumber(Degree[] degrees, int halfSteps)
    {
        for (var number = 2; number <= 7; number++)
        {
            var alteration = halfSteps - new Degree(number).HalfSteps;
            if (Math.Abs(alteration) <= 1 && !Array.Exists(degrees, d => d.Number == number)) return new Degree(number, alteration);
        }
        return null;
    }

    /// <summary>A note of a scale as it is written beside a chord: a tone of the chord as in the chord.</summary>
    internal static NoteName Spelled(NoteName note, Scale scale, Chord chord)
    {
        foreach (var tone in chord.Tones) if (tone.Note.PitchClass == note.PitchClass) return IsSixthOf(scale.Type, tone.Degree) ? note : tone.Note;
        var over = scale.Type.DegreesOver(chord.Quality);
        for (var i = 0; i < over.Length; i++)
        {
            if (over[i] != scale.Type.Degrees[i] && scale.NoteOf(over[i]).PitchClass == note.PitchClass) return scale.NoteOf(over[i]);
        }
        return note;
    }

    private static Degree AsIn(ChordQuality quality, ScaleType scale, Degree degree)
    {
        foreach (var tone in quality.Degrees) if (tone.HalfSteps % 12 == degree.HalfSteps) return IsSixthOf(scale, tone) ? degree : tone.Simple;
        return degree;
    }

    private static bool IsSixthOf(ScaleType scale, Degree tone) => tone.Simple == new Degree(5, 1) && scale.Sounds(new Degree(5).HalfSteps);

    private static Degree? StandIn(ChordShape shape, int number) => number switch
    {
        3 when shape.IsSuspendedFourth => new Degree(4),
        3 when shape.IsSuspendedSecond => new Degree(2),
        7 when shape.HasSixth => new Degree(6),
        _ => null,
    };

    // In order of use without a key; within a key the one that keeps most of its notes is taken.
    private static string[] Candidates(ChordQuality quality)
    {
        var shape = quality.Shape;
        if (quality.IsHalfDiminished()) return ["locrian", "locrian natural 2"];
        if (quality.IsDiminished()) return ["whole-half diminished", "ultralocrian", "locrian"];
        if (quality.IsDominantSeventh() && shape.Third is null) return ["mixolydian", "dorian", "natural minor", "phrygian"];
        if (quality.IsDominantSeventh())
        {
            // A raised eleventh and nothing else that is altered asks for lydian dominant (common practice).
            if (shape.Has(11, 1) && !shape.HasAlteredNinth && !shape.Has(13, -1) && !shape.HasAlteredFifth) return ["lydian dominant"];
            return quality.HasAlteredTension()
                ? ["phrygian dominant", "lydian dominant", "mixolydian b6", "half-whole diminished", "altered", "whole tone", "lydian minor"]
                : ["mixolydian", "mixolydian b6", "phrygian dominant", "lydian dominant"];
        }
        var altered = quality.HasAlteredTension();
        if (shape.IsMinor)
        {
            if (shape.Seventh is { Alteration: 0 }) return ["melodic minor", "harmonic minor"];
            if (shape.HasSixth) return altered ? ["dorian b2", "dorian #4"] : ["dorian", "melodic minor"];
            if (altered) return ["natural minor", "phrygian", "dorian #4"];
            return shape.Seventh is null ? ["natural minor", "dorian", "phrygian"] : ["dorian", "natural minor", "phrygian"];
        }
        if (shape.Third is not null)
        {
            if (shape.FifthIs(1)) return shape.Seventh is null ? ["whole tone", "lydian augmented", "ionian #5", "augmented"] : ["lydian augmented", "ionian #5"];
            if (!altered) return shape.Seventh is null ? ["major", "mixolydian", "lydian"] : ["major", "lydian"];
            // A sixth chord with a raised eleventh asks for lydian and nothing else.
            if (shape.HasSixth && shape.Has(11, 1) && !shape.HasAlteredNinth) return ["lydian"];
            return shape.Seventh is null ? ["lydian", "phrygian dominant", "lydian #2", "half-whole diminished"] : ["lydian", "lydian #2", "harmonic major"];
        }
        return ["major", "mixolydian", "dorian", "natural minor", "phrygian", "lydian", "locrian"];
    }

    private static bool Holds(ScaleType scale, ChordQuality quality)
    {
        foreach (var degree in quality.Degrees) if (!scale.Sounds(degree.HalfSteps)) return false;
        return true;
    }

    // A natural tension or fifth of the scale beside the altered one of the chord.
    private static bool Clashes(ChordQuality quality, ScaleType scale)
    {
        foreach (var degree in quality.Degrees)
        {
            if (degree.Number is not (5 or 9 or 11 or 13) || degree.Alteration == 0) continue;
            if (!quality.Shape.Has(degree.Number) && scale.Sounds(new Degree(degree.Number).HalfSteps)) return true;
        }
        return false;
    }
}

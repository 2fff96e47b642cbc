using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Shapes on the neck for diagrams: grips of a chord, and the positions of a chord or scale.</summary>
public static class NeckShapes
{
    private const int HighestFret = 12;
    private const int ApartFrets = 2;
    private const double WorstBeyondBest = 4;
    private const double PerFret = 0.4;

    /// <summary>The usual grip of a chord; null when none can be held within the frets.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="chord">The chord.</param>
    /// <param name="level">Level, 1 to 5.</param>
    /// <param name="fromFret">Lowest fret besides open strings, or null.</param>
    /// <param name="toFret">Highest fret, or null.</param>
    public static ChordGrip? Grip(Instrument instrument, Chord chord, int level, int? fromFret = null, int? toFret = null)
    {
        var grips = Grips(instrument, chord, level, fromFret, toFret);
        return grips.IsEmpty ? null : grips[0];
    }

    /// <summary>Grips of a chord along the neck, from the nut up, each in a position of its own.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="chord">The chord.</param>
    /// <param name="level">Level, 1 to 5.</param>
    /// <param name="most">How many at most.</param>
    /// <param name="fromFret">Lowest fret besides open strings, or null.</param>
    /// <param name="toFret">Highest fret, or null.</param>
    public static ImmutableArray<ChordGrip> GripFamily(Instrument instrument, Chord chord, int level, int most, int? fromFret = null, int? toFret = null)
    {
        var chosen = new List<ChordGrip>();
        // What a grip costs where it lies does not count here: all of the neck is to be seen.
        var grips = Grips(instrument, chord, level, fromFret, toFret).Select(g => (Grip: g, Cost: g.Cost - (PerFret * g.LowestFret))).OrderBy(g => g.Cost).ToList();
        foreach (var (grip, cost) in grips)
        {
            if (chosen.Count == most || cost > grips[0].Cost + WorstBeyondBest) break;
            if (chosen.TrueForAll(c => Math.Abs(c.LowestFret - grip.LowestFret) >= ApartFrets)) chosen.Add(grip);
        }
        return [.. chosen.OrderBy(g => g.LowestFret)];
    }

    /// <summary>The fingers for places that a lesson gives; null when one hand cannot hold them.</summary>
    public static ChordGrip? Held(Instrument instrument, Chord chord, IReadOnlyList<FretPosition> places) => new ChordGripFinder(instrument, new NeckRequest(), level: 5).Of(chord, places);

    /// <summary>The positions of a chord or scale from the nut to the octave, each with every tone under the hand.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="root">The root.</param>
    /// <param name="degrees">Its tones.</param>
    /// <param name="most">How many at most.</param>
    /// <param name="fromFret">Lowest fret at which one starts, or null.</param>
    /// <param name="toFret">Highest fret used, or null.</param>
    public static ImmutableArray<ImmutableArray<ShapeTone>> Positions(Instrument instrument, NoteName root, ImmutableArray<Degree> degrees, int most, int? fromFret = null, int? toFret = null)
    {
        var shapes = new PositionShapes(instrument, root, degrees, new NeckRequest { HighestFret = toFret });
        var from = fromFret ?? 0;
        var found = ImmutableArray.CreateBuilder<ImmutableArray<ShapeTone>>();
        foreach (var start in shapes.Starts(from, Math.Min(toFret ?? instrument.PlayableFrets, from + HighestFret - 1)))
        {
            if (found.Count == most) break;
            var shape = shapes.From(start);
            // Two tones a half step apart start the same position: it is shown once.
            if (!shape.IsEmpty && (found.Count == 0 || shape.Any(t => !found[^1].Contains(t)))) found.Add(shape);
        }
        return found.ToImmutable();
    }

    private static ImmutableArray<ChordGrip> Grips(Instrument instrument, Chord chord, int level, int? fromFret, int? toFret)
    {
        var neck = new NeckRequest { LowestFret = fromFret, HighestFret = toFret };
        return new ChordGripFinder(instrument, neck, level).Find(chord, fromFret is null ? HighestFret - 1 : instrument.PlayableFrets);
    }
}

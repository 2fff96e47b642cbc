using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Rhythms of one bar that move away from the beats, in any meter.</summary>
internal static class SyncopatedRhythms
{
    private static readonly Fraction Eighth = new(1, 2);

    /// <summary>Long and short by turns, the short note leading to the next beat: three eighths and one over two beats, two and one over a dotted beat.</summary>
    public static RhythmPattern Leaning(Meter meter)
    {
        var beats = meter.BeatUnit <= 4 && !meter.IsCompound ? Pairs(meter) : Beats(meter);
        return Filled(meter, beats.SelectMany(b => b.Length > Eighth * 2 ? new[] { b.Start, b.Start + b.Length - Eighth } : [b.Start]));
    }

    /// <summary>The first beat where it belongs, every other note an eighth early.</summary>
    public static RhythmPattern Anticipated(Meter meter) => Filled(meter, Beats(meter).Select(b => b.Start == Fraction.Zero ? b.Start : b.Start - Eighth));

    /// <summary>The first beat, and then only the last eighth of every beat.</summary>
    public static RhythmPattern OffBeats(Meter meter)
    {
        var cells = ImmutableArray.CreateBuilder<RhythmCell>();
        foreach (var (start, length) in Beats(meter))
        {
            if (length <= Eighth)
            {
                cells.Add(Cell(start, length, isRest: false));
                continue;
            }
            cells.Add(Cell(start, length - Eighth, isRest: start != Fraction.Zero));
            cells.Add(Cell(start + length - Eighth, Eighth, isRest: false));
        }
        return new RhythmPattern(cells.ToImmutable(), meter.MeasureLength);
    }

    private static RhythmPattern Filled(Meter meter, IEnumerable<Fraction> starts)
    {
        var at = starts.Distinct().Order().ToList();
        var cells = ImmutableArray.CreateBuilder<RhythmCell>(at.Count);
        for (var i = 0; i < at.Count; i++) cells.Add(Cell(at[i], (i + 1 < at.Count ? at[i + 1] : meter.MeasureLength) - at[i], isRest: false));
        return new RhythmPattern(cells.ToImmutable(), meter.MeasureLength);
    }

    private static IEnumerable<(Fraction Start, Fraction Length)> Beats(Meter meter) => EvenRhythms.Beats(meter) is var beats && beats.Length < meter.MeasureLength
        ? Enumerable.Range(0, (int)(meter.MeasureLength / beats.Length).Floor).Select(i => (beats.Length * i, beats.Length))
        : beats.Cells.Select(c => (c.Start, c.Duration));

    // Two beats at a time, a single one at the end of an odd bar.
    private static IEnumerable<(Fraction Start, Fraction Length)> Pairs(Meter meter)
    {
        var pair = meter.UnitLength * 2;
        for (var start = Fraction.Zero; start < meter.MeasureLength; start += pair) yield return (start, Fraction.Min(pair, meter.MeasureLength - start));
    }

    private static RhythmCell Cell(Fraction start, Fraction duration, bool isRest) => new() { Start = start, Duration = duration, IsRest = isRest };
}

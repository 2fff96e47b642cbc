using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Plain rhythms that fit any meter, for exercises whose lesson asks for none.</summary>
internal static class EvenRhythms
{
    /// <summary>One note a measure.</summary>
    public static RhythmPattern Measures(Meter meter) => Repeat(meter.MeasureLength);

    /// <summary>One note a beat: quarters in x/4, dotted quarters in 6/8, the groups of 7/8.</summary>
    public static RhythmPattern Beats(Meter meter) => meter.BeatUnit <= 4 ? Repeat(meter.UnitLength) : Groups(meter);

    /// <summary>Eighth notes.</summary>
    public static RhythmPattern Eighths(Meter meter) => Repeat(new Fraction(1, 2));

    /// <summary>Sixteenth notes.</summary>
    public static RhythmPattern Sixteenths(Meter meter) => Repeat(new Fraction(1, 4));

    /// <summary>Two notes a measure, on its strong places; one in measures of two or three beats.</summary>
    public static RhythmPattern Halves(Meter meter)
    {
        var cells = ImmutableArray.CreateBuilder<RhythmCell>();
        var from = Fraction.Zero;
        foreach (var start in meter.BeatStarts)
        {
            var ends = start == meter.MeasureLength;
            if (!ends && (start == Fraction.Zero || MetricWeights.At(meter, start) != MetricWeight.Strong)) continue;
            cells.Add(new RhythmCell { Start = from, Duration = start - from });
            from = start;
        }
        return new RhythmPattern(cells.ToImmutable(), meter.MeasureLength);
    }

    /// <summary>Equal notes of one length.</summary>
    public static RhythmPattern Repeat(Fraction length) => new([new RhythmCell { Start = Fraction.Zero, Duration = length }], length);

    private static RhythmPattern Groups(Meter meter)
    {
        var cells = ImmutableArray.CreateBuilder<RhythmCell>(meter.Groups.Length);
        var starts = meter.BeatStarts;
        for (var i = 0; i + 1 < starts.Length; i++) cells.Add(new RhythmCell { Start = starts[i], Duration = starts[i + 1] - starts[i] });
        return new RhythmPattern(cells.MoveToImmutable(), meter.MeasureLength);
    }
}

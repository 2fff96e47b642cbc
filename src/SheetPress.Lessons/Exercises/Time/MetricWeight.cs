using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>How strong a place in a measure is.</summary>
internal enum MetricWeight
{
    /// <summary>Between the beats.</summary>
    OffBeat,
    /// <summary>On a beat.</summary>
    Beat,
    /// <summary>On the beat that carries the second half of the measure: three in 4/4, the second group in 6/8, four in 5/4.</summary>
    Strong,
    /// <summary>The first beat.</summary>
    Downbeat,
}

/// <summary>Finds the weight of places in a measure.</summary>
internal static class MetricWeights
{
    /// <summary>Weight of an offset in quarter notes from the start of a measure.</summary>
    public static MetricWeight At(Meter meter, Fraction offset)
    {
        if (offset == Fraction.Zero) return MetricWeight.Downbeat;
        var at = Fraction.Zero;
        var groups = meter.Groups;
        var half = meter.MeasureLength / 2;
        for (var i = 0; i < groups.Length; i++)
        {
            if (at == offset)
            {
                // Groups of several units are felt as stresses of their own; single beats only at the half of the measure.
                var stressed = groups[i] > 1 && (!meter.IsCompound || groups.Length <= 3) || (groups.Length >= 4 && at == half);
                return stressed ? MetricWeight.Strong : MetricWeight.Beat;
            }
            at += meter.UnitLength * groups[i];
        }
        return meter.BeatUnit <= 4 && offset.IsMultipleOf(meter.UnitLength) ? MetricWeight.Beat : MetricWeight.OffBeat;
    }
}

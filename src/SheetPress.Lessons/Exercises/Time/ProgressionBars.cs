using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Finds bars in a progression.</summary>
internal static class ProgressionBars
{
    /// <summary>The number of the bar, from 1 as a reader counts the written ones, that a time lies in.</summary>
    public static int NumberAt(Progression progression, Fraction time)
    {
        var end = Fraction.Zero;
        var number = 0;
        foreach (var measure in progression.Measures)
        {
            number++;
            end += measure.Length;
            if (time < end) break;
        }
        return number;
    }

    /// <summary>What a reader of the sheet calls a measure: "bar 3", or "the pickup" for a short first one, which has no number there.</summary>
    public static string Name(Progression progression, int measure)
    {
        var hasPickup = progression.Measures.Length > 1 && progression.Measures[0].Length < progression.Measures[0].Meter.MeasureLength;
        if (hasPickup && measure == 0) return "the pickup";
        return string.Create(CultureInfo.InvariantCulture, $"bar {(hasPickup ? measure : measure + 1)}");
    }

    /// <summary>The start of a measure in quarter notes from the start of the progression.</summary>
    public static Fraction StartOf(this Progression progression, int measure)
    {
        var start = Fraction.Zero;
        for (var i = 0; i < measure; i++) start += progression.Measures[i].Length;
        return start;
    }
}

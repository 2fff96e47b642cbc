using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// The bars that lead into a new phrase and so may have a fill. Phrases are counted anew from every rehearsal mark, repeat sign and
/// double bar line, and never from a pickup. The last bar of such a section leads on whatever its number, back to the start where the
/// section is repeated. Where the exercise ends on a held chord, the bar before it leads to the end instead (common practice).
/// </summary>
internal static class PhrasePlan
{
    /// <summary>Whether each measure has a fill.</summary>
    /// <param name="progression">The progression.</param>
    /// <param name="track">Its chords.</param>
    /// <param name="every">Bars of a phrase; 0 for no fills.</param>
    public static bool[] BarsWithFill(Progression progression, HarmonyTrack track, int every)
    {
        var measures = progression.Measures;
        var due = new bool[measures.Length];
        if (every <= 0) return due;
        var first = measures is [var pickup, _, ..] && pickup.Length < pickup.Meter.MeasureLength ? 1 : 0;
        while (first < measures.Length)
        {
            var end = first + 1;
            while (end < measures.Length && !StartsSection(measures, end)) end++;
            var length = end - first;
            for (var bar = 1; bar <= length; bar++)
            {
                // A phrase of one bar at the end of a section belongs to the phrase before it.
                due[first + bar - 1] = bar == length || (bar % every == 0 && length - bar >= 2);
            }
            first = end;
        }
        if (track.Sounding is not [.., { IsFinal: true } last]) return due;
        var held = last.Span.Measure;
        if (last.Start != progression.StartOf(held)) return due;
        due[held] = false;
        if (held > 0) due[held - 1] = true;
        return due;
    }

    private static bool StartsSection(ImmutableArray<FrameMeasure> measures, int index)
    {
        var before = measures[index - 1];
        return measures[index].RepeatStart || before.RepeatEndTimes > 0 || before.Barline == Barline.Double
            || measures[index].Directions.Any(d => d.Kind == DirectionKind.Rehearsal);
    }
}

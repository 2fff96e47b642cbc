using System.Collections.Immutable;
using SheetPress.Lessons;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Finds the choruses of a twelve-bar blues in a progression.</summary>
internal static class BluesForms
{
    /// <summary>The choruses in order: each begins where a part of the progression begins or the chorus before ends, and fills its part.</summary>
    public static ImmutableArray<BluesForm> Find(Progression progression)
    {
        var measures = progression.Measures;
        if (measures.Length < BluesForm.Bars) return [];
        var bars = new List<Chord>[measures.Length];
        for (var i = 0; i < bars.Length; i++) bars[i] = [];
        foreach (var span in progression.Chords) if (span.Chord is { } chord) bars[span.Measure].Add(chord);
        var found = ImmutableArray.CreateBuilder<BluesForm>();
        for (var i = 0; i + BluesForm.Bars <= measures.Length; i++)
        {
            var end = i + BluesForm.Bars;
            var isPart = (IsStart(measures, i) || IsEnd(found, i)) && (IsStart(measures, end) || (end + BluesForm.Bars <= measures.Length && HarmonicAnalysis.FindBlues(bars, end, measures[end].Key) is not null));
            if (!isPart || !HasOneKey(measures, i, end) || HarmonicAnalysis.FindBlues(bars, i, measures[i].Key) is not { } form) continue;
            found.Add(form);
            i = end - 1;
        }
        return found.ToImmutable();
    }

    private static bool IsEnd(ImmutableArray<BluesForm>.Builder found, int index) => found.Count > 0 && found[^1].FirstBar + BluesForm.Bars == index;

    private static bool HasOneKey(ImmutableArray<FrameMeasure> measures, int start, int end)
    {
        for (var i = start; i < end; i++) if (measures[i].Key != measures[start].Key) return false;
        return true;
    }

    // Where a part begins or the progression ends: after a pickup, a repeat sign or double barline, at a mark, at a second ending or coda.
    private static bool IsStart(ImmutableArray<FrameMeasure> measures, int index)
    {
        if (index == 0 || index == measures.Length) return true;
        var (measure, before) = (measures[index], measures[index - 1]);
        if (index == 1 && before.Length < before.Meter.MeasureLength) return true;
        if (measure.RepeatStart || measure.EndingStart.Length > 0 || before.RepeatEndTimes > 0 || before.Barline is not null) return true;
        return measure.Directions.Any(d => d.Kind is DirectionKind.Rehearsal or DirectionKind.Segno or DirectionKind.Coda);
    }
}

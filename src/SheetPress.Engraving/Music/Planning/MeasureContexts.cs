using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Works out clef, key and meter in force measure by measure, and joins empty measures into multi-bar rests.</summary>
internal static class MeasureContexts
{
    /// <summary>The contexts of a score in order.</summary>
    public static ImmutableArray<MeasureContext> Of(Score score, bool mergeEmpty)
    {
        var contexts = ImmutableArray.CreateBuilder<MeasureContext>(score.Measures.Length);
        var clef = score.Measures[0].ClefChange ?? score.Instrument.Clef;
        MeasureContext? before = null;
        for (var i = 0; i < score.Measures.Length;)
        {
            var measure = score.Measures[i];
            var count = mergeEmpty ? RunOfEmpty(score, i) : 1;
            var clefBefore = clef;
            clef = measure.ClefChange ?? clef;
            before = new MeasureContext
            {
                Measure = measure,
                Index = i,
                Count = count,
                LastMeasure = score.Measures[i + count - 1],
                Harmonies = measure.RepeatsPrevious && before is not null && SameChords(before.LastMeasure, measure) ? [] : measure.Harmonies,
                Clef = clef,
                ClefBefore = clefBefore,
                IsContinued = score.IsContinued(i),
                KeyBefore = before?.Measure.Key,
                MeterBefore = before?.Measure.Meter,
            };
            contexts.Add(before);
            i += count;
        }
        return contexts.ToImmutable();
    }

    /// <summary>How many measures from an index on can be drawn as one rest; 1 when none can be joined.</summary>
    private static int RunOfEmpty(Score score, int start)
    {
        var count = 0;
        while (start + count < score.Measures.Length)
        {
            var measure = score.Measures[start + count];
            if (!IsEmpty(measure) || (count > 0 && !Continues(score.Measures[start + count - 1], measure))) break;
            count++;
        }
        return Math.Max(1, count);
    }

    private static bool SameChords(Measure before, Measure measure) =>
        before.Harmonies.Select(h => (h.Offset, h.Chord)).SequenceEqual(measure.Harmonies.Select(h => (h.Offset, h.Chord)));

    private static bool IsEmpty(Measure measure) =>
        !measure.RepeatsPrevious && measure.Harmonies.IsEmpty && measure.Length == measure.Meter.MeasureLength
        && measure.Voices.All(v => v.Events.All(e => e.IsRest && e.Count is null));

    private static bool Continues(Measure before, Measure measure) =>
        before.RepeatEndTimes == 0 && before.Barline == Barline.Single && !before.EndingStop
        && !measure.RepeatStart && !measure.BreakBefore && measure.ClefChange is null && measure.Directions.IsEmpty
        && measure.EndingStart.IsEmpty && measure.Key == before.Key && measure.Meter == before.Meter;
}

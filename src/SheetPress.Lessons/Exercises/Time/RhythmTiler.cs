using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Lays a rhythm over the progression and shares its notes out among the chords.
/// <list type="bullet">
/// <item>The rhythm starts again at each barline. Only one of several whole measures runs on over the barlines until it is through,
/// or until a repeat, an ending or another meter stops it.</item>
/// <item>A note that is still sounding when the chord changes is cut there and struck again for the new chord, unless it began
/// at most an eighth before the change: then it is a push and already belongs to the new chord.</item>
/// <item>Nothing sounds where there is no chord.</item>
/// </list>
/// </summary>
internal static class RhythmTiler
{
    private static readonly Fraction LongestPush = new(1, 2);

    /// <summary>The slots of each chord of the progression, in order of its chords; empty for N.C.</summary>
    /// <param name="progression">The progression.</param>
    /// <param name="rhythmOf">The rhythm of a meter.</param>
    public static ImmutableArray<ImmutableArray<Slot>> Tile(Progression progression, Func<Meter, RhythmPattern> rhythmOf)
    {
        var chords = progression.Chords;
        var slots = new ImmutableArray<Slot>.Builder[chords.Length];
        for (var i = 0; i < slots.Length; i++) slots[i] = ImmutableArray.CreateBuilder<Slot>();
        var end = progression.Length;
        var chord = 0;
        foreach (var (start, duration, weight, cell) in Strokes(progression.Measures, rhythmOf))
        {
            var from = start;
            var until = Fraction.Min(start + duration, end);
            var source = (RhythmCell?)cell;
            while (from < until)
            {
                while (chord < chords.Length - 1 && chords[chord].End <= from) chord++;
                var change = chords[chord].End;
                var owner = chord;
                if (until > change && chord + 1 < chords.Length)
                {
                    var isPush = change - from <= LongestPush && source is not null && chords[chord].Chord is not null && chords[chord + 1].Chord is not null
                        && chords[chord].Start < from;
                    if (isPush)
                    {
                        owner = chord + 1;
                        change = chords[owner].End;
                    }
                }
                var stop = Fraction.Min(until, change);
                if (chords[owner].Chord is not null) slots[owner].Add(new Slot(from, stop - from, source is null ? MetricWeight.Strong : weight, source));
                from = stop;
                source = null;
            }
        }
        var result = ImmutableArray.CreateBuilder<ImmutableArray<Slot>>(slots.Length);
        foreach (var builder in slots) result.Add(builder.ToImmutable());
        return result.MoveToImmutable();
    }

    /// <summary>The strokes of each measure, timed from the start of the measure.</summary>
    public static ImmutableArray<ImmutableArray<RhythmCell>> StrokesByMeasure(Progression progression, Func<Meter, RhythmPattern> rhythmOf)
    {
        var strokes = Strokes(progression.Measures, rhythmOf).ToList();
        var result = ImmutableArray.CreateBuilder<ImmutableArray<RhythmCell>>(progression.Measures.Length);
        var start = Fraction.Zero;
        foreach (var measure in progression.Measures)
        {
            var end = start + measure.Length;
            result.Add([.. strokes.Where(s => s.Start >= start && s.Start < end).Select(s => s.Cell with { Start = s.Start - start, Duration = s.Duration })]);
            start = end;
        }
        return result.MoveToImmutable();
    }

    // The sounding cells in time order.
    private static IEnumerable<(Fraction Start, Fraction Duration, MetricWeight Weight, RhythmCell Cell)> Strokes(ImmutableArray<FrameMeasure> measures, Func<Meter, RhythmPattern> rhythmOf)
    {
        var start = Fraction.Zero;
        for (var first = 0; first < measures.Length;)
        {
            var measure = measures[first];
            var rhythm = rhythmOf(measure.Meter);
            var count = MeasuresOfOneRun(measures, first, rhythm.Length);
            var end = start + (measure.Length * count);
            // In a pickup the rhythm stands where it would in a full measure: its end meets the barline.
            var at = start;
            if (first == 0 && measure.Length < measure.Meter.MeasureLength) at -= measure.Meter.MeasureLength - measure.Length;
            var full = at;
            for (; at < end; at += rhythm.Length)
            {
                foreach (var cell in rhythm.Cells)
                {
                    var from = at + cell.Start;
                    if (from < start || from >= end || cell.IsRest) continue;
                    var weight = MetricWeights.At(measure.Meter, (from - full).Modulo(measure.Meter.MeasureLength));
                    yield return (from, Fraction.Min(cell.Duration, end - from), weight, cell);
                }
            }
            start = end;
            first += count;
        }
    }

    // How many measures a rhythm runs over before it starts again: one, unless it is several whole measures long.
    private static int MeasuresOfOneRun(ImmutableArray<FrameMeasure> measures, int first, Fraction rhythmLength)
    {
        var measure = measures[first];
        if (rhythmLength <= measure.Length || !rhythmLength.IsMultipleOf(measure.Length)) return 1;
        var count = 1;
        while (measure.Length * count < rhythmLength && first + count < measures.Length)
        {
            var next = measures[first + count];
            var broken = next.Length != measure.Length || !next.Meter.Equals(measure.Meter) || next.RepeatStart
                || !next.EndingStart.IsEmpty || measures[first + count - 1].RepeatEndTimes > 0;
            if (broken) break;
            count++;
        }
        return count;
    }
}

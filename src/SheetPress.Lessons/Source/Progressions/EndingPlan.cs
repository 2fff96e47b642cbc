using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>What happens at the end of a bar: repeats and ending brackets.</summary>
/// <param name="Times">Times the section that ends here is played; 0 when none ends.</param>
/// <param name="Stops">Whether an ending bracket stops.</param>
/// <param name="Closed">Whether it is closed with a hook.</param>
internal readonly record struct EndingPlan(int Times, bool Stops, bool Closed)
{
    /// <summary>The plan of each bar.</summary>
    /// <remarks>
    /// Common practice: an ending before a repeat sign runs up to it and is closed; the last one stays open, and is drawn no longer than
    /// the first. A section with endings is played as often as its endings say.
    /// </remarks>
    public static ImmutableArray<EndingPlan> Of(ImmutableArray<WrittenBar> bars)
    {
        var plans = new EndingPlan[bars.Length];
        for (var i = 0; i < bars.Length; i++) if (bars[i].RepeatEnd) plans[i] = new EndingPlan(bars[i].Times ?? 2, false, false);
        var firstLength = 0;
        for (var i = 0; i < bars.Length; i++)
        {
            if (bars[i].Ending.IsEmpty) continue;
            var last = LastBarOf(bars, i);
            var length = last - i + 1;
            if (bars[last].RepeatEnd)
            {
                if (bars[i].Ending[0] == 1) firstLength = length;
                plans[last] = new EndingPlan(Math.Max(2, bars[i].Ending[^1] + 1), true, true);
            }
            else
            {
                last = i + Math.Min(length, Math.Max(1, firstLength)) - 1;
                plans[last] = plans[last] with { Stops = true, Closed = last == bars.Length - 1 };
            }
        }
        return [.. plans];
    }

    private static int LastBarOf(ImmutableArray<WrittenBar> bars, int start)
    {
        for (var i = start; i < bars.Length; i++)
        {
            var ends = bars[i].RepeatEnd || bars[i].DoubleBarline || i == bars.Length - 1 || !bars[i + 1].Ending.IsEmpty || bars[i + 1].RepeatStart
                || bars[i + 1].StartMarks.Exists(m => m.Kind == Scores.DirectionKind.Rehearsal);
            if (ends) return i;
        }
        return start;
    }
}

using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>Checks that repeats and endings of a written progression belong together.</summary>
internal static class RepeatChecker
{
    /// <summary>Reports what does not fit.</summary>
    public static void Check(ImmutableArray<WrittenBar> bars, DiagnosticBag bag)
    {
        WrittenBar? open = null;
        var lastEnding = 0;
        WrittenBar? endingBar = null;
        for (var i = 0; i < bars.Length; i++)
        {
            var bar = bars[i];
            if (bar.RepeatStart)
            {
                if (open is not null) bag.Add(open.RepeatStartSpan, ProgressionProblems.RepeatNotClosed());
                open = bar;
                lastEnding = 0;
                endingBar = null;
            }
            if (!bar.Ending.IsEmpty)
            {
                if (endingBar is not null)
                {
                    bag.Add(endingBar.EndingSpan, ProgressionProblems.EndingWithoutRepeat());
                    open = null;
                }
                if (bar.Ending[0] != lastEnding + 1) bag.Add(bar.EndingSpan, ProgressionProblems.EndingOutOfOrder(lastEnding + 1));
                lastEnding = bar.Ending[^1];
                endingBar = bar;
            }
            if (bar.RepeatEnd)
            {
                open = null;
                var followed = i + 1 < bars.Length && !bars[i + 1].Ending.IsEmpty;
                if (endingBar is not null && !followed)
                {
                    bag.Add(bar.RepeatEndSpan, ProgressionProblems.LastEndingRepeats());
                }
                if (bar.Times is not null && endingBar is not null) bag.Add(bar.RepeatEndSpan, ProgressionProblems.TimesWithEndings());
                if (!followed) lastEnding = 0;
                endingBar = null;
            }
            else if (endingBar is not null && bar.Ending.IsEmpty && bar.DoubleBarline)
            {
                endingBar = null;
            }
            if (endingBar is not null && IsLastEnding(bars, i)) endingBar = null;
        }
        if (open is not null) bag.Add(open.RepeatStartSpan, ProgressionProblems.RepeatNotClosed());
    }

    // The last ending has no repeat sign: nothing with an ending number follows before the next repeat starts.
    private static bool IsLastEnding(ImmutableArray<WrittenBar> bars, int at)
    {
        for (var i = at; i < bars.Length; i++)
        {
            if (bars[i].RepeatEnd) return false;
            if (i > at && bars[i].RepeatStart) return true;
            if (i > at && !bars[i].Ending.IsEmpty) return bars[i].Ending[0] == 1;
        }
        return true;
    }
}

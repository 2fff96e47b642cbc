using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Checks that jumps and signs of a written progression belong together: D.S. to the last segno before it, "al Fine" and "al Coda" to a
/// Fine or To Coda that is met on the way from there, To Coda to a coda behind it. A Fine in the last bar marks the end and needs no
/// jump. Common practice, as <see cref="PlaybackOrder"/> plays it.
/// </summary>
internal static class JumpChecker
{
    /// <summary>Reports jumps that lead nowhere; where there are none, signs that no jump uses.</summary>
    public static void Check(ImmutableArray<WrittenBar> bars, DiagnosticBag bag)
    {
        ImmutableArray<WrittenMark> marks = [.. bars.SelectMany(b => b.StartMarks.Concat(b.EndMarks)).Where(m => m.Kind is not (DirectionKind.Words or DirectionKind.Rehearsal))];
        var lost = false;
        for (var i = 0; i < marks.Length; i++)
        {
            foreach (var problem in LostGoals(marks, i))
            {
                bag.Add(marks[i].Span, problem);
                lost = true;
            }
        }
        // As long as a jump lacks its goal, an unused sign may well wait for that one.
        if (lost) return;
        for (var i = 0; i < marks.Length; i++)
        {
            if (Unused(marks, i) is { } problem && !(marks[i].Kind == DirectionKind.Fine && bars[^1].EndMarks.Contains(marks[i]))) bag.Add(marks[i].Span, problem);
        }
    }

    private static IEnumerable<Problem> LostGoals(ImmutableArray<WrittenMark> marks, int index)
    {
        var mark = marks[index];
        if (mark.Kind == DirectionKind.ToCoda && Find(marks, DirectionKind.Coda, index) < 0) yield return ProgressionProblems.NoCoda();
        if (!IsJump(mark)) yield break;
        var start = StartOf(marks, index);
        if (mark.Kind == DirectionKind.DalSegno && start < 0) yield return ProgressionProblems.NoSegno(mark.Text);
        if (JumpWords.SaysFine(mark.Text) && Find(marks, DirectionKind.Fine, start) < 0) yield return ProgressionProblems.NoFine(mark.Text);
        if (JumpWords.SaysCoda(mark.Text) && Find(marks, DirectionKind.ToCoda, start) < 0) yield return ProgressionProblems.NoToCoda(mark.Text, Find(marks, DirectionKind.Coda, start) >= 0);
    }

    private static Problem? Unused(ImmutableArray<WrittenMark> marks, int index) => marks[index].Kind switch
    {
        DirectionKind.Segno when !Jumps(marks).Any(j => marks[j].Kind == DirectionKind.DalSegno && StartOf(marks, j) == index) => ProgressionProblems.UnusedSegno(),
        DirectionKind.Fine when !Jumps(marks).Any(j => JumpWords.MayEnd(marks[j].Text) && StartOf(marks, j) < index) => ProgressionProblems.UnusedFine(),
        DirectionKind.ToCoda when !Jumps(marks).Any(j => JumpWords.MayGoToCoda(marks[j].Text) && StartOf(marks, j) < index) => ProgressionProblems.UnusedToCoda(),
        DirectionKind.Coda when !Enumerable.Range(0, index).Any(i => marks[i].Kind == DirectionKind.ToCoda && Find(marks, DirectionKind.Coda, i) == index) => ProgressionProblems.UnusedCoda(),
        _ => null,
    };

    // Where a jump goes on: at the last segno before it; -1 for the start.
    private static int StartOf(ImmutableArray<WrittenMark> marks, int jump)
    {
        if (marks[jump].Kind == DirectionKind.DaCapo) return -1;
        for (var i = jump - 1; i >= 0; i--) if (marks[i].Kind == DirectionKind.Segno) return i;
        return -1;
    }

    // The first mark of a kind behind another; -1 for none.
    private static int Find(ImmutableArray<WrittenMark> marks, DirectionKind kind, int after)
    {
        for (var i = after + 1; i < marks.Length; i++) if (marks[i].Kind == kind) return i;
        return -1;
    }

    private static IEnumerable<int> Jumps(ImmutableArray<WrittenMark> marks) => Enumerable.Range(0, marks.Length).Where(i => IsJump(marks[i]));

    private static bool IsJump(WrittenMark mark) => mark.Kind is DirectionKind.DaCapo or DirectionKind.DalSegno;
}

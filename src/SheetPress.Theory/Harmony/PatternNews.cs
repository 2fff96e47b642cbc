namespace SheetPress.Theory;

/// <summary>
/// Leaves out patterns that another one tells as well: a ii–V inside a turnaround or a cycle of fourths, a turnaround from the third degree
/// inside a cycle, a cycle that is a turnaround and its goal, the dominant of a ii–V–I, and a close on the
/// dominant with which a turnaround ends.
/// </summary>
internal static class PatternNews
{
    /// <summary>The patterns that are news, in the same order.</summary>
    internal static List<ProgressionPattern> Of(List<ProgressionPattern> found) => found.FindAll(p => !found.Exists(other => Tells(other, p)));

    private static bool Tells(ProgressionPattern teller, ProgressionPattern told)
    {
        if (teller.First > told.First) return false;
        if (teller.Last < told.Last) return told.Kind.IsCycle() && teller.Kind == ProgressionPatternKind.Turnaround && teller.Last + 1 == told.Last;
        return told.Kind switch
        {
            ProgressionPatternKind.TwoFive or ProgressionPatternKind.TwoFiveOnward => teller.Kind.IsCycle() || teller.Kind.IsTurnaround(),
            ProgressionPatternKind.TurnaroundFromThird => teller.Kind.IsCycle(),
            ProgressionPatternKind.HalfClose => teller.Kind.IsTurnaround(),
            ProgressionPatternKind.SecondaryDominant or ProgressionPatternKind.SecondaryDominantTriad => teller.Kind is ProgressionPatternKind.MajorTwoFiveOne or ProgressionPatternKind.MinorTwoFiveOne,
            _ => false,
        };
    }
}

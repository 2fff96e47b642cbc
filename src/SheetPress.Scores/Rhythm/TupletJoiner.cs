namespace SheetPress.Scores;

/// <summary>Two triplets that fill one beat (or less) between them are written as one group of six, or as one triplet of divided units.</summary>
internal static class TupletJoiner
{
    public static void JoinHalves(MetricNode tree, IReadOnlyList<Stretch> stretches, List<TupletPlan> plans)
    {
        for (var i = 0; i < plans.Count; i++)
        {
            var plan = plans[i];
            var length = plan.Length;
            if (plan.Actual == 3 && i + 1 < plans.Count && plans[i + 1] is { Actual: 3 } next && next.Start == plan.End && next.Length == plan.Length)
            {
                length = plan.Length * 2;
                var whole = tree.Innermost(plan.Start, next.End);
                if (length > Fraction.One || whole.Shape != MetricShape.Pair || whole.Start != plan.Start || whole.Length != length) continue;
                plans.RemoveAt(i + 1);
            }
            else if (plan.Actual != 6)
            {
                continue;
            }
            plans[i] = ShowsThirds(stretches, plan.Start, length)
                ? new TupletPlan(plan.Start, length, 3, 2)
                : new TupletPlan(plan.Start, length, 6, 4);
        }
    }

    // Every struck odd sixth divides a third that is struck on both sides: three units, some of them divided. Six equal notes are six.
    private static bool ShowsThirds(IReadOnlyList<Stretch> stretches, Fraction start, Fraction length)
    {
        const int ends = (1 << 0) | (1 << 6);
        const int all = (1 << 7) - 1;
        var struck = ends;
        foreach (var stretch in stretches)
        {
            var sixth = (stretch.Start - start) * 6 / length;
            if (sixth.Denominator == 1 && sixth > 0 && sixth < 6) struck |= 1 << (int)sixth.Numerator;
        }
        for (var odd = 1; odd < 6; odd += 2)
        {
            var sides = (1 << (odd - 1)) | (1 << (odd + 1));
            if ((struck & (1 << odd)) != 0 && (struck & sides) != sides) return false;
        }
        return struck != all;
    }
}

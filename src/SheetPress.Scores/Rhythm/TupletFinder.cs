using System.Numerics;

namespace SheetPress.Scores;

/// <summary>A stretch that is written as a tuplet: where, and how many units in the time of how many.</summary>
internal readonly record struct TupletPlan(Fraction Start, Fraction Length, int Actual, int Normal)
{
    public Fraction End => Start + Length;

    /// <summary>The written unit: an eighth in an eighth-note triplet.</summary>
    public Fraction Unit => Length / Normal;

    /// <summary>The factor from sounding to written time.</summary>
    public Fraction Stretch => new(Actual, Normal);
}

/// <summary>A stretch of sound or silence in the times of a metric tree; stretches follow each other without gaps.</summary>
internal readonly record struct Stretch(Fraction Start, Fraction End, int Source)
{
    public bool IsRest => Source < 0;
}

/// <summary>
/// Finds the tuplets that a rhythm needs. For each time that lies on no binary division, every bracket that could hold it is
/// weighed: it should start and end where notes do, hold whole units, and lie on the beats. The unit of a tuplet is the value
/// whose usual number is the next smaller one: 3 in the time of 2, 5, 6 and 7 of 4; in dotted beats 5 of 3 and 7 of 6
/// (Read, Gould; from memory). The weights are our own, chosen so that the table of cases in the tests comes out as an engraver would write it.
/// </summary>
internal static class TupletFinder
{
    private const int CutRest = 1;
    private const int CutNote = 3;
    private const int CutNoteIntoTuplet = 6;
    private const int HalvedUnit = 4;
    private const int FinelyDividedUnit = 8;
    private const int OffTheBeat = 4;
    private const int HiddenMiddle = 3;
    private const int Nested = 5;

    private static readonly Fraction Shortest = new(1, 16);

    /// <summary>Lists the tuplets in order, or returns false when some time fits none.</summary>
    public static bool TryFind(MetricNode tree, IReadOnlyList<Stretch> stretches, bool mayNest, out List<TupletPlan> plans)
    {
        plans = [];
        var from = stretches[0].Start;
        var to = stretches[^1].End;
        var done = from;
        for (var i = 1; i < stretches.Count; i++)
        {
            var time = stretches[i].Start;
            if (time < done) continue;
            if (IsBinary(time))
            {
                if (time.Denominator > Shortest.Denominator) return false;
                continue;
            }
            if (Best(tree, stretches, time, done, to, mayNest) is not { } plan) return false;
            plans.Add(plan);
            done = plan.End;
        }
        JoinHalves(tree, stretches, plans);
        return true;
    }

    /// <summary>Whether a time lies on a binary division of the quarter note.</summary>
    public static bool IsBinary(Fraction time) => BitOperations.IsPow2(time.Denominator);

    private static TupletPlan? Best(MetricNode tree, IReadOnlyList<Stretch> stretches, Fraction time, Fraction from, Fraction to, bool mayNest)
    {
        TupletPlan? best = null;
        var bestCost = int.MaxValue;
        for (var power = -3; power <= 3; power++)
        {
            var length = power < 0 ? new Fraction(1, 1 << -power) : new Fraction(1 << power);
            Weigh(length, 3, 2, 0);
            Weigh(length, 5, 4, 1);
            if (length <= Fraction.One) Weigh(length, 6, 4, 2);
            Weigh(length, 7, 4, 1);
            var dotted = length * new Fraction(3, 2);
            Weigh(dotted, 5, 3, 1);
            Weigh(dotted, 7, 6, 1);
        }
        return best;

        void Weigh(Fraction length, int actual, int normal, int ratioCost)
        {
            if (length > to - from || length / normal < Shortest) return;
            var step = Fraction.Max(length / 4, Shortest);
            var start = step * new Fraction((time / step).Floor);
            for (; start > time - length; start -= step)
            {
                if (start < from || start + length > to) continue;
                var plan = new TupletPlan(start, length, actual, normal);
                if (CostOf(tree, stretches, plan, mayNest, bestCost - ratioCost) is not { } cost) continue;
                best = plan;
                bestCost = cost + ratioCost;
            }
        }
    }

    // The cost of a bracket, or null when it does not fit or costs no less than the limit.
    private static int? CostOf(MetricNode tree, IReadOnlyList<Stretch> stretches, TupletPlan plan, bool mayNest, int limit)
    {
        var cost = 0;
        var division = 0;
        var nested = false;
        foreach (var stretch in stretches)
        {
            if (stretch.End <= plan.Start) continue;
            if (stretch.Start >= plan.End) break;
            if (stretch.Start < plan.Start) cost += CostOfCut(stretch, stretch.Start);
            if (stretch.End > plan.End) cost += CostOfCut(stretch, stretch.End);
            if (stretch.Start <= plan.Start) continue;
            var written = (stretch.Start - plan.Start) * plan.Stretch;
            if (!IsBinary(written)) nested = true;
            else if (written.Denominator > Shortest.Denominator) return null;
            else division = Math.Max(division, CostOfDivision(written / plan.Unit));
            if (nested && !mayNest) return null;
        }
        cost += division;
        if (nested) cost += Nested;
        if (cost >= limit) return null;
        if (!tree.IsNatural(plan.Start, plan.End)) cost += OffTheBeat + (HidesMiddle(tree, plan) ? HiddenMiddle : 0);
        if (cost >= limit) return null;
        if (nested && !TryFind(MetricNode.OfTuplet(plan.Actual, plan.Unit), Inside(stretches, plan), mayNest: false, out _)) return null;
        return cost;
    }

    private static int CostOfDivision(Fraction units) => units.Denominator switch { 1 => 0, 2 => HalvedUnit, _ => FinelyDividedUnit };

    // A note tied out of a bracket reads well when it ends on a plain beat, badly when it ends in another bracket.
    private static int CostOfCut(Stretch stretch, Fraction farEnd)
    {
        if (stretch.IsRest) return CutRest;
        return IsBinary(farEnd) ? CutNote : CutNoteIntoTuplet;
    }

    private static bool HidesMiddle(MetricNode tree, TupletPlan plan)
    {
        var node = tree.Innermost(plan.Start, plan.End);
        return node.Shape is MetricShape.Halves or MetricShape.Unequal || node.HasTernaryParts;
    }

    /// <summary>The stretches inside a tuplet, cut at its ends, in written time from its start.</summary>
    public static List<Stretch> Inside(IReadOnlyList<Stretch> stretches, TupletPlan plan)
    {
        var inside = new List<Stretch>();
        foreach (var stretch in stretches)
        {
            var start = Fraction.Max(stretch.Start, plan.Start);
            var end = Fraction.Min(stretch.End, plan.End);
            if (start < end) inside.Add(new Stretch((start - plan.Start) * plan.Stretch, (end - plan.Start) * plan.Stretch, stretch.Source));
        }
        return inside;
    }

    // Two triplets that fill one beat (or less) between them are written as one group of six, or as one triplet of divided units.
    private static void JoinHalves(MetricNode tree, IReadOnlyList<Stretch> stretches, List<TupletPlan> plans)
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

    // Both thirds are struck, but not every sixth: three units, some of them divided.
    private static bool ShowsThirds(IReadOnlyList<Stretch> stretches, Fraction start, Fraction length)
    {
        var struck = 0;
        foreach (var stretch in stretches)
        {
            var sixth = (stretch.Start - start) * 6 / length;
            if (sixth.Denominator == 1 && sixth > 0 && sixth < 6) struck |= 1 << (int)sixth.Numerator;
        }
        const int thirds = (1 << 2) | (1 << 4);
        const int all = thirds | (1 << 1) | (1 << 3) | (1 << 5);
        return (struck & thirds) == thirds && struck != all;
    }
}

using System.Numerics;

namespace SheetPress.Scores;

/// <summary>
/// Finds the tuplets that a rhythm needs. Every time that lies on no binary division has to fall inside a bracket; among all ways to
/// set brackets the one that reads best is taken: brackets start and end where notes do, hold whole units, lie on the beats and are
/// few. The unit of a tuplet is the value whose usual number is the next smaller one: 3 in the time of 2, 5, 6 and 7 of 4; in
/// dotted beats 5 of 3 and 7 of 6 (Read, Gould; from memory). The weights are our own, chosen so that the table of cases in the
/// tests comes out as an engraver would write it.
/// </summary>
internal sealed class TupletFinder
{
    private const int Bracket = 2;
    private const int CutNote = 3;
    private const int CutNoteIntoTuplet = 6;
    private const int CutInsideBeat = 2;
    private const int HalvedUnit = 9;
    private const int FinelyDividedUnit = 14;
    private const int OffTheBeat = 4;
    private const int HiddenMiddle = 5;
    private const int SextupletOffTheBeat = 6;
    private const int Nested = 12;

    // So many brackets over one time are followed up; dearer ones have never been part of the best set.
    private const int Followed = 6;

    private static readonly Fraction Shortest = new(1, 16);

    private readonly MetricNode _tree;
    private readonly IReadOnlyList<Stretch> _stretches;
    private readonly bool _mayNest;
    private readonly Dictionary<Fraction, Solution?> _solved = [];

    private TupletFinder(MetricNode tree, IReadOnlyList<Stretch> stretches, bool mayNest)
    {
        _tree = tree;
        _stretches = stretches;
        _mayNest = mayNest;
    }

    /// <summary>Lists the tuplets in order, or returns null when some time fits none.</summary>
    public static List<TupletPlan>? Find(MetricNode tree, IReadOnlyList<Stretch> stretches, bool mayNest)
    {
        var plans = new List<TupletPlan>();
        if (stretches.All(s => IsBinary(s.Start))) return stretches.All(IsFineEnough) ? plans : null;
        if (new TupletFinder(tree, stretches, mayNest).SolveFrom(stretches[0].Start) is not { } solution) return null;
        for (var s = solution; s.Plan is { } plan; s = s.Next!) plans.Add(plan);
        TupletJoiner.JoinHalves(tree, stretches, plans);
        return plans;
    }

    private static bool IsBinary(Fraction time) => BitOperations.IsPow2(time.Denominator);

    private static bool IsFineEnough(Stretch stretch) => stretch.Start.Denominator <= Shortest.Denominator;

    /// <summary>Brackets from some time on: the first one and what follows it.</summary>
    private sealed record Solution(int Cost, TupletPlan? Plan, Solution? Next);

    /// <summary>A bracket that may be set; one that nests has yet to show that the times inside it fit.</summary>
    private readonly record struct Candidate(int Cost, TupletPlan Plan, bool Nests);

    private Solution? SolveFrom(Fraction done)
    {
        if (_solved.TryGetValue(done, out var known)) return known;
        return _solved[done] = FirstOddTime(done, out var tooFine) is { } time ? SolveAt(time, done)
            : tooFine ? null : new Solution(0, null, null);
    }

    private Solution? SolveAt(Fraction time, Fraction done)
    {
        Solution? best = null;
        var followed = 0;
        foreach (var candidate in CandidatesAt(time, done))
        {
            if (followed == Followed || (best is not null && candidate.Cost >= best.Cost)) break;
            if (candidate.Nests && Find(candidate.Plan.ToTree(), candidate.Plan.Inside(_stretches), mayNest: false) is null) continue;
            if (SolveFrom(candidate.Plan.End) is not { } rest) continue;
            followed++;
            if (best is null || candidate.Cost + rest.Cost < best.Cost) best = new Solution(candidate.Cost + rest.Cost, candidate.Plan, rest);
        }
        return best;
    }

    // The first time from there on that needs a bracket; too fine when a binary one before it has no value.
    private Fraction? FirstOddTime(Fraction from, out bool tooFine)
    {
        tooFine = false;
        foreach (var stretch in _stretches)
        {
            if (stretch.Start < from) continue;
            if (!IsBinary(stretch.Start)) return stretch.Start;
            if (!IsFineEnough(stretch))
            {
                tooFine = true;
                return null;
            }
        }
        return null;
    }

    // Every bracket over a time, cheapest first; of equal ones the shorter first. A flawless one is taken as it is found.
    private List<Candidate> CandidatesAt(Fraction time, Fraction from)
    {
        var found = new List<Candidate>();
        var to = _stretches[^1].End;
        for (var power = -3; power <= 3; power++)
        {
            var length = power < 0 ? new Fraction(1, 1 << -power) : new Fraction(1 << power);
            if (time.Denominator % 3 == 0)
            {
                Weigh(length, 3, 2, 0);
                if (length <= Fraction.One) Weigh(length, 6, 4, 2);
            }
            if (time.Denominator % 5 == 0)
            {
                Weigh(length, 5, 4, 0);
                Weigh(length * new Fraction(3, 2), 5, 3, 0);
            }
            if (time.Denominator % 7 == 0)
            {
                Weigh(length, 7, 4, 0);
                Weigh(length * new Fraction(3, 2), 7, 6, 0);
            }
            if (found.Count > 0 && found[^1].Cost == Bracket) return [found[^1]];
        }
        found.Sort(static (a, b) => a.Cost != b.Cost ? a.Cost - b.Cost : a.Plan.Length != b.Plan.Length ? a.Plan.Length.CompareTo(b.Plan.Length) : a.Plan.Start.CompareTo(b.Plan.Start));
        return found;

        void Weigh(Fraction length, int actual, int normal, int ratioCost)
        {
            if (length > to - from || length / normal < Shortest || (found.Count > 0 && found[^1].Cost == Bracket)) return;
            var step = Fraction.Max(length / 4, Shortest);
            var start = step * new Fraction((time / step).Floor);
            for (; start > time - length; start -= step)
            {
                if (Try(start, length, actual, normal, ratioCost)) return;
            }
            // Brackets that start with a note somewhere between the usual places.
            foreach (var stretch in _stretches)
            {
                if (stretch.Start >= time) break;
                if (stretch.Start <= time - length || !IsBinary(stretch.Start) || stretch.Start.IsMultipleOf(step)) continue;
                if (Try(stretch.Start, length, actual, normal, ratioCost)) return;
            }
        }

        // Whether a bracket is flawless, so that no other need be weighed.
        bool Try(Fraction start, Fraction length, int actual, int normal, int ratioCost)
        {
            if (start < from || start + length > to) return false;
            var plan = new TupletPlan(start, length, actual, normal);
            if (CostOf(plan, out var nests) is not { } cost) return false;
            if (actual == 6 && !_tree.IsBeat(start)) cost += SextupletOffTheBeat;
            found.Add(new Candidate(cost + ratioCost, plan, nests));
            return cost + ratioCost == Bracket;
        }
    }

    // What a bracket costs to the eye, or null when the times inside it do not fit.
    private int? CostOf(TupletPlan plan, out bool nests)
    {
        var cost = Bracket;
        var division = 0;
        nests = false;
        foreach (var stretch in _stretches)
        {
            if (stretch.End <= plan.Start) continue;
            if (stretch.Start >= plan.End) break;
            if (stretch.Start < plan.Start) cost += CostOfCut(stretch, plan.Start, IsBinary(stretch.Start) ? CutNote : 0);
            if (stretch.End > plan.End) cost += CostOfCut(stretch, plan.End, IsBinary(stretch.End) ? CutNote : CutNoteIntoTuplet);
            if (stretch.Start <= plan.Start) continue;
            var written = (stretch.Start - plan.Start) * plan.Widening;
            if (!IsBinary(written)) nests = true;
            else if (written.Denominator > Shortest.Denominator) return null;
            else division = Math.Max(division, CostOfDivision(written / plan.Unit));
            if (nests && !_mayNest) return null;
        }
        if (!_tree.IsNatural(plan.Start, plan.End)) cost += OffTheBeat + (HidesMiddle(plan) ? HiddenMiddle : 0);
        return cost + division + (nests ? Nested : 0);
    }

    private static int CostOfDivision(Fraction units) => units.Denominator switch { 1 => 0, 2 => HalvedUnit, _ => FinelyDividedUnit };

    // A note tied out of a bracket reads well when it ends on a plain beat, badly when it ends in another bracket (where the tie is
    // not counted again); a rest is cut for nothing. Either is worse inside a beat.
    private int CostOfCut(Stretch stretch, Fraction at, int cost) => (stretch.IsRest ? 0 : cost) + (_tree.IsBeat(at) ? 0 : CutInsideBeat);

    private bool HidesMiddle(TupletPlan plan)
    {
        var node = _tree.Innermost(plan.Start, plan.End);
        return node.Shape is MetricShape.Halves or MetricShape.Unequal || node.HasTernaryParts;
    }
}

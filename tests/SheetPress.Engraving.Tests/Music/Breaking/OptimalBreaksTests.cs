using CsCheck;

namespace SheetPress.Engraving.Tests;

/// <summary>The best set of breaks, against trying every set.</summary>
public class OptimalBreaksTests
{
    private const double Unlike = 1.5;

    [Fact]
    public void Equals_brute_force()
    {
        Gen.Select(Gen.Int[1, 9], Gen.Double[0, 4].Array[100], Gen.Int[0, 4].Array[100], Gen.Int[1, 9]).Sample((count, costs, classes, longest) =>
        {
            LineCost? Cost(int first, int end)
            {
                if (end - first > longest) return null;
                var at = (first * 10) + end - 1;
                return new LineCost(costs[at], classes[at] == 4 ? null : (LineFitness)classes[at]);
            }
            var (starts, sum) = OptimalBreaks.Find(count, Cost, Unlike);
            sum.ShouldBe(Enumerable.Range(0, 1 << (count - 1)).Min(set => Sum(StartsOf(set, count), count, Cost)), 1e-9);
            sum.ShouldBe(Sum([.. starts], count, Cost), 1e-9);
        });
    }

    [Fact]
    public void Of_equal_sets_the_one_with_the_longer_last_line_is_taken() =>
        OptimalBreaks.Find(3, (first, end) => end - first > 2 ? null : new LineCost(0, null), Unlike).Starts.ShouldBe([0, 1]);

    [Fact]
    public void Neighbours_set_alike_win_over_a_little_cheaper_ones()
    {
        // Two lines in any case: 1 + 2 are unlike and cheaper by one, 2 + 1 alike.
        static LineCost? Cost(int first, int end) => (first, end) switch
        {
            (0, 1) => new LineCost(1, LineFitness.Tight),
            (1, 3) => new LineCost(1, LineFitness.VeryLoose),
            (0, 2) => new LineCost(1, LineFitness.Decent),
            (2, 3) => new LineCost(2, LineFitness.Loose),
            _ => end - first > 1 ? null : new LineCost(50, LineFitness.Decent),
        };
        OptimalBreaks.Find(3, Cost, Unlike).Starts.ShouldBe([0, 2]);
        OptimalBreaks.Find(3, Cost, unlike: 0).Starts.ShouldBe([0, 1]);
    }

    [Fact]
    public void Looks_at_each_line_once_or_not_at_all()
    {
        var asked = 0;
        OptimalBreaks.Find(200, (first, end) =>
        {
            asked++;
            return new LineCost(end - first, LineFitness.Decent);
        }, Unlike);
        asked.ShouldBeLessThanOrEqualTo(200 * 201 / 2);
    }

    private static List<int> StartsOf(int set, int count)
    {
        var starts = new List<int> { 0 };
        for (var i = 1; i < count; i++) if ((set >> (i - 1) & 1) == 1) starts.Add(i);
        return starts;
    }

    private static double Sum(List<int> starts, int count, Func<int, int, LineCost?> cost)
    {
        var sum = 0.0;
        LineFitness? before = null;
        for (var i = 0; i < starts.Count; i++)
        {
            if (cost(starts[i], i + 1 < starts.Count ? starts[i + 1] : count) is not { } line) return double.PositiveInfinity;
            sum += line.Cost;
            if (before is { } a && line.Fitness is { } b && Math.Abs((int)a - (int)b) > 1) sum += Unlike;
            before = line.Fitness;
        }
        return sum;
    }
}

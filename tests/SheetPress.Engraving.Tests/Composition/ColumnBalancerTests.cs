using CsCheck;

namespace SheetPress.Engraving.Tests;

public class ColumnBalancerTests
{
    [Fact]
    public void A_table_is_not_cut_for_the_sake_of_level_columns()
    {
        FlowBox Line(double penalty) => new(5, []) { BreakPenalty = penalty };
        FlowBox[] flow = [Line(0), Line(FlowBox.Unwanted), Line(FlowBox.Unwanted), Line(0), Line(0)];
        ColumnBalancer.Balance([.. flow], 90).Height.ShouldBe(20);
    }

    [Fact]
    public void Columns_are_as_level_as_the_breaks_allow()
    {
        Gen.Select(Gen.Double[1, 20], Gen.Double[0, 4], Gen.Bool).Array[1, 12].Sample(parts =>
        {
            var flow = parts.Select(p => new FlowBox(p.Item1, [new PlacedDrawing(Drawing.Nothing, 1, 0, 0)]) { After = new FlowSpace(p.Item2), BreakPenalty = p.Item3 ? FlowBox.Never : 0 }).ToArray();
            var best = Enumerable.Range(1, flow.Length)
                .Where(cut => cut == flow.Length ? flow[..^1].All(b => b.BreakPenalty > 0) : flow[cut - 1].BreakPenalty == 0)
                .Min(cut => Math.Max(Height(flow[..cut]), Height(flow[cut..])));
            ColumnBalancer.Balance([.. flow], 90).Height.ShouldBe(best, 1e-9);
        }, iter: 300);
    }

    private static double Height(FlowBox[] column) => column.Sum(b => b.Height) + column.SkipLast(1).Sum(b => b.After.Natural);

    // Of two ways that are equally level the left column is the longer one: readers expect a text to end early, not to begin so.
    [Fact]
    public void The_left_column_is_the_longer_one()
    {
        FlowBox Part(double height) => new(height, [new PlacedDrawing(Drawing.Nothing, 1, 0, 0)]);
        var box = ColumnBalancer.Balance([Part(10), Part(5), Part(10)], 90);
        box.Height.ShouldBe(15);
        box.Drawings.Count(d => d.X == 0).ShouldBe(2);
    }
}

using CsCheck;

namespace SheetPress.Engraving.Tests;

/// <summary>Breaks compared with trying all of them: Knuth and Plass, Breaking Paragraphs into Lines (1981), ask for the least total demerits.</summary>
public class TotalFitTests
{
    private static readonly Gen<double> Penalty = Gen.Frequency((6, Gen.Const(0.0)), (2, Gen.Double[0, 300]), (1, Gen.Const(double.PositiveInfinity)), (1, Gen.Double[-50, 0]));

    private static readonly Gen<FitItem> Item =
        Gen.Select(Gen.Double[0.5, 12], Gen.Double[0, 3], Gen.Double[0, 2], Gen.Double[0, 1], Penalty, Gen.Frequency((4, Gen.Const(0.0)), (1, Gen.Double[0, 3])))
            .Select((size, gap, stretch, shrink, penalty, carry) => new FitItem(size, gap, stretch, Math.Min(shrink, gap), penalty, carry));

    private static readonly Gen<FitOptions> Options =
        Gen.Select(Gen.Double[10, 40], Gen.Double[0, 10], Gen.Double[0, 500], Gen.Double[0, 0.6])
            .Select((size, end, cost, fill) => new FitOptions(size) { EndStretch = end, LineCost = cost, LastFill = fill });

    [Fact]
    public void Breaks_cost_no_more_than_the_best_of_all_sets_of_breaks()
    {
        Gen.Select(Item.Array[1, 11], Options).Sample((items, options) =>
        {
            var found = TotalFit.Break(items, options);
            Cost(items, options, found.Select(l => l.End)).ShouldBe(BestCost(items, options), 1e-6 * Math.Max(1, BestCost(items, options)), string.Join(' ', found.Select(l => l.End)) + " but " + string.Join(' ', BestBreaks(items, options)));
        }, iter: 400);
    }

    [Fact]
    public void Lines_follow_each_other_and_hold_every_item()
    {
        Gen.Select(Item.Array[1, 40], Options).Sample((items, options) =>
        {
            var at = 0;
            foreach (var line in TotalFit.Break(items, options))
            {
                line.Start.ShouldBe(at);
                line.End.ShouldBeGreaterThan(line.Start);
                if (line.End < items.Length) items[line.End - 1].CanBreak.ShouldBeTrue();
                at = line.End;
            }
            at.ShouldBe(items.Length);
        }, iter: 400);
    }

    [Fact]
    public void A_first_fit_that_leaves_a_bad_line_behind_is_not_taken()
    {
        // Filling the first line to the brim leaves the second four short; three and one short cost less in all.
        FitItem[] items = [new(4, 1), new(4, 1), new(2, 1), new(8, 1), new(9)];
        var options = new FitOptions(12) { EndStretch = 4 };
        TotalFit.Break(items, options).Select(l => l.End).ShouldBe([2, 4, 5]);
        BestBreaks(items, options).ShouldBe([2, 4, 5]);
    }

    [Fact]
    public void A_forced_break_ends_a_line_and_leaves_it_at_its_natural_length()
    {
        FitItem[] items = [new(2, 1, Penalty: double.NegativeInfinity), new(2, 1), new(2)];
        var lines = TotalFit.Break(items, new FitOptions(20));
        lines.Select(l => l.End).ShouldBe([1, 3]);
    }

    [Fact]
    public void A_thing_that_is_too_long_stands_in_a_line_of_its_own()
    {
        FitItem[] items = [new(3, 1), new(30, 1), new(3)];
        TotalFit.Break(items, new FitOptions(10)).Select(l => l.End).ShouldBe([1, 2, 3]);
    }

    [Fact]
    public void What_is_carried_over_a_break_takes_room_in_the_next_line()
    {
        FitItem[] items = [new(8, Carry: 4), new(8)];
        var lines = TotalFit.Break(items, new FitOptions(12));
        lines.Length.ShouldBe(2);
        lines[1].Natural.ShouldBe(12);
    }

    [Fact]
    public void Nothing_makes_no_lines() => TotalFit.Break([], new FitOptions(10)).ShouldBeEmpty();

    // Every set of allowed breaks, by the same cost of a line; a line may be overfull only where no allowed break lies inside it.
    private static double BestCost(FitItem[] items, FitOptions options) => AllBreaks(items).Min(b => Cost(items, options, b));

    private static List<int> BestBreaks(FitItem[] items, FitOptions options) => AllBreaks(items).MinBy(b => Cost(items, options, b))!;

    private static IEnumerable<List<int>> AllBreaks(FitItem[] items)
    {
        for (var set = 0; set < 1 << (items.Length - 1); set++)
        {
            var breaks = new List<int>();
            var allowed = true;
            for (var i = 0; i < items.Length - 1; i++)
            {
                var chosen = (set & (1 << i)) != 0;
                allowed &= chosen ? items[i].CanBreak : !items[i].MustBreak;
                if (chosen) breaks.Add(i + 1);
            }
            breaks.Add(items.Length);
            if (allowed) yield return breaks;
        }
    }

    private static double Cost(FitItem[] items, FitOptions options, IEnumerable<int> ends)
    {
        var (total, start) = (0.0, 0);
        foreach (var end in ends)
        {
            var (natural, stretch, shrink) = (start > 0 ? items[start - 1].Carry : 0, 0.0, 0.0);
            var breakInside = false;
            for (var i = start; i < end; i++)
            {
                natural += items[i].Size;
                if (i == end - 1) break;
                natural += items[i].Gap;
                stretch += items[i].GapStretch;
                shrink += items[i].GapShrink;
                breakInside |= items[i].CanBreak;
            }
            var overfull = natural - shrink > options.Size + 1e-9;
            if (overfull && breakInside) return double.PositiveInfinity;
            total += TotalFit.Demerits(new FitLine(start, end, natural, stretch, shrink), items[end - 1], end == items.Length, overfull, options);
            start = end;
        }
        return total;
    }
}

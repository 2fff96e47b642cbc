using CsCheck;

namespace SheetPress.Engraving.Tests;

public class PageBreakerTests
{
    [Fact]
    public void Pages_are_as_few_as_can_be_and_never_too_high()
    {
        Gen.Select(Gen.Double[5, 60], Gen.Double[0, 8], Gen.Bool).Array[1, 40].Sample(parts =>
        {
            var flow = parts.Select(p => Box(p.Item1, p.Item2, p.Item3 ? FlowBox.Unwanted : 0)).ToArray();
            var pages = PageBreaker.Break(flow, 100, 0);
            foreach (var page in pages) Height(flow, page).ShouldBeLessThanOrEqualTo(100 + 1e-6);
            pages.Length.ShouldBe(FewestPages(flow, 100));
        }, iter: 300);
    }

    [Fact]
    public void Slack_is_shared_out_over_the_white_of_a_page()
    {
        var flow = new[] { Stretchy(30), Stretchy(30), Stretchy(30), Stretchy(30), Stretchy(30) };
        var pages = PageBreaker.Break(flow, 100, 0);
        pages.Length.ShouldBe(2);
        pages[0].Spread.ShouldBeGreaterThan(0);
        Height(flow, pages[0]).ShouldBe(100, 0.01);
        pages[1].Spread.ShouldBeInRange(0, pages[0].Spread);

        static FlowBox Stretchy(double height) => Box(height, 2, 0) with { After = new FlowSpace(2, 4) };
    }

    [Fact]
    public void A_page_ends_level_or_is_left_clearly_short()
    {
        // The four gaps of the first page can grow by 4 each, and by 6.4 where that makes it level.
        PageBreaker.Break([.. Stretchy(18), .. Stretchy(90)[..1]], 100, 0)[0].Spread.ShouldBe(0.125, 1e-9);
        var level = PageBreaker.Break([.. Stretchy(14.6), .. Stretchy(90)[..1]], 100, 0)[0].Spread;
        level.ShouldBe((100 - (5 * 14.6) - 8) / 16, 1e-9);
        PageBreaker.Break([.. Stretchy(12), .. Stretchy(90)[..1]], 100, 0)[0].Spread.ShouldBe(1);

        static FlowBox[] Stretchy(double height) => [.. Enumerable.Range(0, 5).Select(_ => Box(height, 2, 0) with { After = new FlowSpace(2, 4) })];
    }

    [Fact]
    public void Facing_pages_end_level_with_each_other()
    {
        // Page two reaches to 84 only and page three to 88, both short of the foot: in a book both end at 84.
        FlowBox[] flow = [Tall(95), Tall(40), Tall(38, 5), Tall(41), Tall(41, 10), Tall(90)];
        var loose = PageBreaker.Break(flow, 100, 0);
        loose.Select(p => p.End).ShouldBe([1, 3, 5, 6]);
        Math.Abs(Height(flow, loose[1]) - Height(flow, loose[2])).ShouldBeGreaterThan(0.5);
        var book = PageBreaker.Break(flow, 100, 0, facing: true);
        book.Select(p => p.End).ShouldBe([1, 3, 5, 6]);
        Height(flow, book[1]).ShouldBe(Height(flow, book[2]), 1e-6);
        book[0].Spread.ShouldBe(loose[0].Spread);

        static FlowBox Tall(double height, double stretch = 2.5) => Box(height, 2, 0) with { After = new FlowSpace(2, stretch) };
    }

    [Fact]
    public void Breaks_hurt_no_more_than_those_of_any_other_set_with_as_few_pages()
    {
        // Every set of breaks is tried; what hurts is the sum of the penalties where no page has slack to share.
        Gen.Select(Gen.Int[1, 4], Gen.Frequency((3, Gen.Const(0.0)), (2, Gen.Double[1, 300]), (1, Gen.Const(FlowBox.Never))), Gen.Int[0, 3]).Array[2, 10].Sample(parts =>
        {
            var flow = parts.Select(p => Box(10 * p.Item1, 0, p.Item2) with { EndsPart = p.Item3 == 0 }).ToArray();
            var found = PageBreaker.Break(flow, 60, 0);
            var best = Enumerable.Range(0, 1 << (flow.Length - 1)).Select(set => Pages(flow.Length, set)).Where(p => IsAllowed(flow, p, 60)).ToList();
            if (best.Count == 0) return;
            found.Length.ShouldBe(best.Min(p => p.Count));
            IsAllowed(flow, [.. found.Select(p => p.End)], 60).ShouldBeTrue();
            var least = best.Where(p => p.Count == found.Length).Min(p => Hurt(flow, p, 60));
            Hurt(flow, [.. found.Select(p => p.End)], 60).ShouldBe(least, 1e-3 * Math.Max(1, least));
        }, iter: 300);
    }

    [Fact]
    public void White_shrinks_to_save_a_page()
    {
        var flow = Enumerable.Range(0, 4).Select(_ => Box(24, 2, 0) with { After = new FlowSpace(2, 2, 1) }).ToArray();
        PageBreaker.Break(flow, 102, 0).ShouldHaveSingleItem().Spread.ShouldBe(0, 1e-9);
        PageBreaker.Break(flow, 99.6, 0).ShouldHaveSingleItem().Spread.ShouldBe(-0.8, 1e-6);
        PageBreaker.Break(flow, 98.9, 0).Length.ShouldBe(2);
    }

    [Fact]
    public void What_must_stay_together_does()
    {
        var flow = new[] { Box(50, 2, 0), Box(30, 2, FlowBox.Never), Box(30, 2, 0), Box(10, 2, 0) };
        PageBreaker.Break(flow, 100, 0).Select(p => (p.Start, p.End)).ShouldBe([(0, 1), (1, 4)]);
    }

    [Fact]
    public void A_break_goes_where_it_hurts_least()
    {
        // Both breaks make two pages; the one between sections costs nothing.
        var flow = new[] { Box(70, 2, 0), Box(15, 2, FlowBox.Unwanted), Box(30, 2, 0) };
        PageBreaker.Break(flow, 100, 0)[0].End.ShouldBe(1);
    }

    // Two pages in any case. Shared out, each page would lack some four tenths; the white goes to the end of the part, the first page is full.
    [Fact]
    public void White_goes_to_the_end_of_a_part()
    {
        FlowBox[] flow = [Box(55, 0, 0), Box(25, 0, 0), Box(35, 0, 0), Box(90, 0, 0)];
        PageBreaker.Break(flow, 100, 0).Select(p => p.End).ShouldBe([1, 3, 4]);
        flow[2] = flow[2] with { EndsPart = true };
        PageBreaker.Break(flow, 100, 0).Select(p => p.End).ShouldBe([2, 3, 4]);
    }

    // Three pages in any case. A page that is emptier than by a third takes the beginning of the next part, though a page within the part is emptier for it.
    [Theory]
    [InlineData(30, 45, 45, 2)]
    [InlineData(70, 25, 60, 1)]
    public void A_part_begins_on_a_new_page_only_for_modest_white(double before, double first, double second, int end)
    {
        FlowBox[] flow = [Box(before, 0, 0) with { EndsPart = true }, Box(10, 0, FlowBox.Never), Box(first - 10, 0, 0), Box(second, 0, 0), Box(90, 0, 0)];
        var pages = PageBreaker.Break(flow, 100, 0);
        pages.Length.ShouldBe(3);
        pages[0].End.ShouldBe(end == 1 ? 1 : 3);
    }

    // What follows has no room there: the white is not the fault of the break.
    [Fact]
    public void White_before_a_part_that_does_not_fit_is_not_shared_out_over_a_table()
    {
        FlowBox[] flow = [Box(85, 0, 900) with { RunsOn = true }, Box(10, 0, 900) with { RunsOn = true }, Box(60, 0, 0) with { EndsPart = true }, Box(80, 0, 0)];
        PageBreaker.Break(flow, 100, 0).Select(p => p.End).ShouldBe([2, 3, 4]);
    }

    // A row that still fits is not carried over to fill the page on which the table ends.
    [Fact]
    public void A_page_is_full_where_its_table_goes_on()
    {
        FlowBox[] flow = [.. Enumerable.Repeat(Box(6, 0, 900) with { RunsOn = true }, 22), Box(6, 0, 0) with { EndsPart = true }, Box(90, 0, 0)];
        flow[13] = flow[13] with { Height = 14 };
        PageBreaker.Break(flow, 100, 0)[0].End.ShouldBe(15);
    }

    [Fact]
    public void The_first_page_can_be_higher()
    {
        var flow = new[] { Box(60, 0, 0), Box(45, 0, 0) };
        PageBreaker.Break(flow, 100, 0).Length.ShouldBe(2);
        PageBreaker.Break(flow, 100, 8).Length.ShouldBe(1);
    }

    private static List<int> Pages(int boxes, int set)
    {
        var ends = new List<int>();
        for (var i = 0; i + 1 < boxes; i++) if ((set & (1 << i)) != 0) ends.Add(i + 1);
        ends.Add(boxes);
        return ends;
    }

    private static bool IsAllowed(FlowBox[] flow, List<int> ends, double height)
    {
        var start = 0;
        foreach (var end in ends)
        {
            if (flow[start..end].Sum(b => b.Height) > height + 1e-9 || (end < flow.Length && flow[end - 1].BreakPenalty == FlowBox.Never)) return false;
            start = end;
        }
        return true;
    }

    // Knuth and Plass (1981) with demerits linear in badness and penalty, as they are where a page costs far more than either.
    private static double Hurt(FlowBox[] flow, List<int> ends, double height)
    {
        var (sum, start) = (0.0, 0);
        foreach (var end in ends)
        {
            var isLast = end == flow.Length;
            var slack = Math.Max(0, ((isLast ? 0.25 : 1) * height) - flow[start..end].Sum(b => b.Height));
            sum += (100 * Math.Pow(slack / (Stretch(end) * height), 3)) + (isLast ? 0 : flow[end - 1].BreakPenalty);
            start = end;

            double Stretch(int next)
            {
                if (!flow[next - 1].EndsPart) return 0.2;
                var kept = flow[next..].TakeWhile(b => b.BreakPenalty == FlowBox.Never).Count();
                return slack > Math.Max(height / 3, flow[next..].Take(kept + 1).Sum(b => b.Height)) ? 0.23 : 0.35;
            }
        }
        return sum;
    }

    private static FlowBox Box(double height, double after, double penalty) => new(height, []) { After = new FlowSpace(after), BreakPenalty = penalty };

    private static double Height(FlowBox[] flow, FlowPage page)
    {
        var height = 0.0;
        for (var i = page.Start; i < page.End; i++)
        {
            var space = flow[i].After;
            height += flow[i].Height;
            if (i + 1 < page.End) height += space.Natural + (page.Spread * (page.Spread > 0 ? space.Stretch : space.Shrink));
        }
        return height;
    }

    // First fit gives the fewest pages when every break is allowed.
    private static int FewestPages(FlowBox[] flow, double height)
    {
        var (pages, used) = (1, 0.0);
        for (var i = 0; i < flow.Length; i++)
        {
            var gap = used > 0 ? flow[i - 1].After.Natural : 0;
            if (used + gap + flow[i].Height > height + 1e-9)
            {
                pages++;
                used = flow[i].Height;
            }
            else
            {
                used += gap + flow[i].Height;
            }
        }
        return pages;
    }
}

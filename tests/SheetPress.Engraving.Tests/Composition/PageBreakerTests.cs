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

    [Fact]
    public void The_first_page_can_be_higher()
    {
        var flow = new[] { Box(60, 0, 0), Box(45, 0, 0) };
        PageBreaker.Break(flow, 100, 0).Length.ShouldBe(2);
        PageBreaker.Break(flow, 100, 8).Length.ShouldBe(1);
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

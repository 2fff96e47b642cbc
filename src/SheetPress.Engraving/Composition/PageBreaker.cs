using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>One page of the flow: boxes from <paramref name="Start"/> up to but not including <paramref name="End"/>.</summary>
/// <param name="Start">Index of the first box.</param>
/// <param name="End">Index behind the last box.</param>
/// <param name="Spread">How far the white between boxes is stretched (positive, in shares of its stretch) or shrunk (negative, in shares of its shrink).</param>
internal readonly record struct FlowPage(int Start, int End, double Spread);

/// <summary>Breaks the flow into pages: few of them, broken where it hurts least, slack shared out over the white of each page.</summary>
internal static class PageBreaker
{
    // A page costs more than the badness of some hundred pages, so that the fewest pages win; among those the breaks decide.
    private const double PageCost = 1e6;
    // Slack beyond what the white can take stays at the foot, at the price of this stretch, a share of the page.
    private const double FootStretch = 0.2;
    // A page that ends within a table should be full, or a reader takes the table to end there: the same as a share of the page and
    // of the row that comes next.
    private const double FootStretchWithin = 0.08;
    private const double RowStretchWithin = 1;
    // White at the end of a part looks meant, as at the end of a chapter: it is better there than on a page before, within the part. But
    // more than a third of the page, in which the beginning of the next part would have room, looks nearly as empty as it does elsewhere.
    private const double FootStretchAtPart = 0.35;
    private const double MostWhiteAtPart = 1.0 / 3;
    private const double FootStretchAtEmptyPart = 0.23;
    // A page ends level with the foot where no more than this does it; else its white opens to the lesser share only and the rest
    // is left, since a page that nearly ends level looks like a mistake and one that is pulled apart looks empty.
    private const double LevelSpread = 1.6;
    private const double WidestSpread = 1;
    // The last page opens a little too, so that it does not look tighter than the page before it.
    private const double WidestLastSpread = 0.4;
    private const double LastPageFill = 0.25;

    /// <summary>Finds the pages.</summary>
    /// <param name="flow">The flow.</param>
    /// <param name="height">Height of the text area, that of the first page less what its first box is measured short by.</param>
    /// <param name="firstBonus">How much higher the text area of the first page is.</param>
    /// <param name="facing">Whether pages two and three, four and five and so on face each other: such a pair ends level where its white allows.</param>
    internal static ImmutableArray<FlowPage> Break(IReadOnlyList<FlowBox> flow, double height, double firstBonus, bool facing = false)
    {
        var items = new FitItem[flow.Count];
        for (var i = 0; i < items.Length; i++)
        {
            var box = flow[i];
            var item = new FitItem(box.Height, box.After.Natural, box.After.Stretch, box.After.Shrink, box.BreakPenalty, box.Repeated?.Height ?? 0);
            if (box.RunsOn) item = item with { EndStretch = Math.Max(FootStretchWithin * height, RowStretchWithin * flow[i + 1].Height) };
            // Behind a table that goes on from another page the white is what the fuller page leaves.
            else if (box.EndsPart && i > 0 && flow[i - 1].RunsOn) item = item with { EndStretch = height };
            else if (box.EndsPart) item = item with { EndStretch = FootStretchAtPart * height, WhenShorter = (Math.Max(MostWhiteAtPart * height, box.After.Natural + Whole(flow, i + 1)), FootStretchAtEmptyPart * height) };
            items[i] = item;
        }
        // The first box is on the first page in any case: making it smaller is making that page higher.
        if (items.Length > 0) items[0] = items[0] with { Size = Math.Max(0, items[0].Size - firstBonus) };
        var options = new FitOptions(height) { LineCost = PageCost, EndStretch = FootStretch * height, LastFill = LastPageFill };
        var lines = TotalFit.Break(items, options);
        var spreads = new double[lines.Length];
        for (var i = 0; i < lines.Length; i++)
        {
            var isLast = i == lines.Length - 1;
            spreads[i] = Spread(lines[i], height, isLast, isLast && i > 0 ? Math.Clamp(spreads[i - 1], 0, WidestLastSpread) : WidestLastSpread);
        }
        if (facing) for (var left = 1; left + 2 < lines.Length; left += 2) Level(lines, spreads, left, height);
        return [.. lines.Select((line, i) => new FlowPage(line.Start, line.End, spreads[i]))];
    }

    // Height of a box and all that no page break may part from it.
    private static double Whole(IReadOnlyList<FlowBox> flow, int first)
    {
        var height = 0.0;
        for (var i = first; i < flow.Count; i++)
        {
            height += flow[i].Height;
            if (flow[i].BreakPenalty < FlowBox.Never) break;
            height += flow[i].After.Natural;
        }
        return height;
    }

    private static double Spread(FitLine page, double height, bool isLast, double widestLast)
    {
        var slack = height - page.Natural;
        if (slack < 0) return page.Shrink > 0 ? Math.Max(-1, slack / page.Shrink) : 0;
        if (page.Stretch <= 0) return 0;
        var level = slack / page.Stretch;
        return isLast ? Math.Min(level, widestLast) : level <= LevelSpread ? level : WidestSpread;
    }

    // Where not both pages reach the foot, both end as low as the one that reaches less far, unless the other is longer than that.
    private static void Level(ImmutableArray<FitLine> pages, double[] spreads, int left, double height)
    {
        var end = Math.Min(Reach(pages[left], height), Reach(pages[left + 1], height));
        if (end >= height || end < Math.Max(pages[left].Natural, pages[left + 1].Natural)) return;
        for (var i = left; i <= left + 1; i++) spreads[i] = pages[i].Stretch > 0 ? (end - pages[i].Natural) / pages[i].Stretch : 0;
    }

    private static double Reach(FitLine page, double height) => Math.Min(height, page.Natural + (LevelSpread * page.Stretch));
}

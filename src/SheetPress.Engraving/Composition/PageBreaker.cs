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
    private const double FootStretch = 0.3;
    private const double WidestSpread = 1;
    // The last page opens a little too, so that it does not look tighter than the pages before it.
    private const double WidestLastSpread = 0.4;
    private const double LastPageFill = 0.25;

    /// <summary>Finds the pages.</summary>
    /// <param name="flow">The flow.</param>
    /// <param name="height">Height of the text area, that of the first page less what its first box is measured short by.</param>
    /// <param name="firstBonus">How much higher the text area of the first page is.</param>
    internal static ImmutableArray<FlowPage> Break(IReadOnlyList<FlowBox> flow, double height, double firstBonus)
    {
        var items = new FitItem[flow.Count];
        for (var i = 0; i < items.Length; i++)
        {
            var box = flow[i];
            items[i] = new FitItem(box.Height, box.After.Natural, box.After.Stretch, box.After.Shrink, box.BreakPenalty, box.Repeated?.Height ?? 0);
        }
        // The first box is on the first page in any case: making it smaller is making that page higher.
        if (items.Length > 0) items[0] = items[0] with { Size = Math.Max(0, items[0].Size - firstBonus) };
        var options = new FitOptions(height) { LineCost = PageCost, EndStretch = FootStretch * height, LastFill = LastPageFill };
        var pages = ImmutableArray.CreateBuilder<FlowPage>();
        foreach (var line in TotalFit.Break(items, options))
        {
            var slack = height - line.Natural;
            var isLast = line.End == items.Length;
            var spread = slack < 0 ? (line.Shrink > 0 ? Math.Max(-1, slack / line.Shrink) : 0)
                : line.Stretch <= 0 ? 0
                : Math.Min(isLast ? WidestLastSpread : WidestSpread, slack / line.Stretch);
            pages.Add(new FlowPage(line.Start, line.End, spread));
        }
        return pages.DrainToImmutable();
    }
}

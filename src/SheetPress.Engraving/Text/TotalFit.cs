using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>
/// Finds the set of breaks with the least total demerits over a whole paragraph or a whole document, after Knuth and Plass,
/// "Breaking Paragraphs into Lines", Software: Practice and Experience 11 (1981): badness of a line is 100 |r|^3, where r is
/// its slack over its stretch (or shrink), and demerits are (line cost + badness + penalty)^2.
/// </summary>
public static class TotalFit
{
    // A line that is too long is worse than many that are not, and the worse the longer.
    private const double OverfullFactor = 100;
    private const double WorstBadness = 1e5;
    private const double Tolerance = 1e-9;

    /// <summary>Breaks items into lines. Work grows with the number of items times the number of items in a line.</summary>
    /// <param name="items">The items.</param>
    /// <param name="options">The measure.</param>
    /// <returns>The lines in order; none for no items. A line is longer than the measure only where no break could help.</returns>
    public static ImmutableArray<FitLine> Break(IReadOnlyList<FitItem> items, FitOptions options)
    {
        var count = items.Count;
        if (count == 0) return [];
        var cost = new double[count + 1];
        var from = new int[count + 1];
        var sums = Sums.Of(items);
        for (var end = 1; end <= count; end++)
        {
            cost[end] = double.PositiveInfinity;
            if (end < count && !items[end - 1].CanBreak) continue;
            var breakInside = false;
            for (var start = end - 1; start >= 0; start--)
            {
                if (start > 0 && !items[start - 1].CanBreak) continue;
                var line = sums.Line(items, start, end);
                var overfull = line.Natural - line.Shrink > options.Size + Tolerance;
                if (overfull && breakInside)
                {
                    // What is carried over may be all that is too much: a line that starts earlier can be without it.
                    if (start == 0 || line.Natural - items[start - 1].Carry - line.Shrink > options.Size + Tolerance || items[start - 1].MustBreak) break;
                    continue;
                }
                var total = cost[start] + Demerits(line, items[end - 1], end == count, overfull, options);
                if (total < cost[end])
                {
                    cost[end] = total;
                    from[end] = start;
                }
                breakInside = true;
                if (start > 0 && items[start - 1].MustBreak) break;
            }
        }
        var lines = new List<FitLine>();
        for (var end = count; end > 0; end = from[end]) lines.Add(sums.Line(items, from[end], end));
        lines.Reverse();
        return [.. lines];
    }

    /// <summary>What a line costs: the sum of all lines is what <see cref="Break"/> makes least.</summary>
    /// <param name="line">The line.</param>
    /// <param name="last">Its last item.</param>
    /// <param name="isLast">Whether it is the last line.</param>
    /// <param name="overfull">Whether it is too long even when shrunk.</param>
    /// <param name="options">The measure.</param>
    internal static double Demerits(FitLine line, FitItem last, bool isLast, bool overfull, FitOptions options)
    {
        if (overfull)
        {
            var worst = options.LineCost + WorstBadness;
            return OverfullFactor * worst * worst * (1 + ((line.Natural - line.Shrink - options.Size) / options.Size));
        }
        var ends = isLast || last.MustBreak;
        var endStretch = last.WhenShorter is { } shorter && options.Size - line.Natural > shorter.MoreThan ? shorter.EndStretch : last.EndStretch ?? options.EndStretch;
        var badness = Badness(line, ends, endStretch, options);
        var penalty = ends ? 0 : last.Penalty;
        var cost = options.LineCost + badness;
        return penalty >= 0 ? (cost + penalty) * (cost + penalty) : (cost * cost) - (penalty * penalty);
    }

    private static double Badness(FitLine line, bool ends, double endStretch, FitOptions options)
    {
        var slack = options.Size - line.Natural;
        if (slack < -Tolerance) return 100 * Cube(Math.Min(1, -slack / line.Shrink));
        if (ends) slack = (options.LastFill * options.Size) - line.Natural;
        if (slack <= Tolerance) return 0;
        var stretch = line.Stretch + endStretch;
        return stretch <= 0 ? WorstBadness : Math.Min(WorstBadness, 100 * Cube(slack / stretch));
    }

    private static double Cube(double ratio) => ratio * ratio * ratio;

    // Sums over the items before each index, so that any line is measured in constant time.
    private readonly struct Sums(double[] natural, double[] stretch, double[] shrink)
    {
        internal static Sums Of(IReadOnlyList<FitItem> items)
        {
            var (natural, stretch, shrink) = (new double[items.Count + 1], new double[items.Count + 1], new double[items.Count + 1]);
            for (var i = 0; i < items.Count; i++)
            {
                natural[i + 1] = natural[i] + items[i].Size + items[i].Gap;
                stretch[i + 1] = stretch[i] + items[i].GapStretch;
                shrink[i + 1] = shrink[i] + items[i].GapShrink;
            }
            return new Sums(natural, stretch, shrink);
        }

        internal FitLine Line(IReadOnlyList<FitItem> items, int start, int end)
        {
            var last = items[end - 1];
            var carry = start > 0 ? items[start - 1].Carry : 0;
            return new FitLine(
                start,
                end,
                natural[end] - natural[start] - last.Gap + carry,
                stretch[end] - stretch[start] - last.GapStretch,
                shrink[end] - shrink[start] - last.GapShrink);
        }
    }
}

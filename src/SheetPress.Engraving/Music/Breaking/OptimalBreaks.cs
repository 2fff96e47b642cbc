using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>
/// The best set of breaks over a whole sequence, by dynamic programming over the position of the last break (after Knuth and
/// Plass 1981). At most quadratic in the number of items.
/// </summary>
internal static class OptimalBreaks
{
    /// <summary>Finds where the lines start so that the sum of their costs is least.</summary>
    /// <param name="count">Number of items, at least one.</param>
    /// <param name="cost">
    /// Cost of a line from its first item to the one after its last; null when the items do not fit in a line, and then no longer
    /// line from the same end fits either. A line of one item is never null.
    /// </param>
    /// <returns>Index of the first item of each line, 0 first. Of equal sums the one with the longer last line is taken.</returns>
    public static ImmutableArray<int> Find(int count, Func<int, int, double?> cost)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var best = new double[count + 1];
        var start = new int[count + 1];
        for (var end = 1; end <= count; end++)
        {
            best[end] = double.PositiveInfinity;
            for (var first = end - 1; first >= 0; first--)
            {
                if (cost(first, end) is not { } line) break;
                if (best[first] + line > best[end]) continue;
                best[end] = best[first] + line;
                start[end] = first;
            }
        }
        var breaks = new List<int>();
        for (var end = count; end > 0; end = start[end]) breaks.Add(start[end]);
        breaks.Reverse();
        return [.. breaks];
    }
}

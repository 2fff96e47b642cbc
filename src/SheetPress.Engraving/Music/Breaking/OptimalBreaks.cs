using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>What a line costs.</summary>
/// <param name="Cost">Its own cost.</param>
/// <param name="Fitness">How tightly it is set; null for a line that goes with any neighbour.</param>
internal readonly record struct LineCost(double Cost, LineFitness? Fitness);

/// <summary>How tightly a line is set. Neighbours of adjoining classes look alike.</summary>
internal enum LineFitness
{
    /// <summary>Clearly squeezed.</summary>
    Tight,
    /// <summary>Near its natural width.</summary>
    Decent,
    /// <summary>Clearly stretched.</summary>
    Loose,
    /// <summary>Stretched almost as far as it may be.</summary>
    VeryLoose,
}

/// <summary>
/// The best set of breaks over a whole sequence, by dynamic programming over the position of the last break and the fitness of the
/// line before it (after Knuth and Plass 1981). At most quadratic in the number of items.
/// </summary>
internal static class OptimalBreaks
{
    // One class for each fitness and one for lines that go with any neighbour.
    private const int Classes = 5;
    private const int Any = Classes - 1;

    /// <summary>Finds where the lines start so that the sum of their costs is least.</summary>
    /// <param name="count">Number of items, at least one.</param>
    /// <param name="cost">
    /// Cost of a line from its first item to the one after its last; null when the items do not fit in a line, and then no longer
    /// line from the same end fits either. A line of one item is never null.
    /// </param>
    /// <param name="unlike">Cost of two neighbouring lines whose fitness is more than one class apart.</param>
    /// <returns>
    /// Index of the first item of each line, 0 first, and the sum of the costs. Of equal sums the one with the longer last line is
    /// taken.
    /// </returns>
    public static (ImmutableArray<int> Starts, double Sum) Find(int count, Func<int, int, LineCost?> cost, double unlike)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var best = new double[(count + 1) * Classes];
        var from = new int[(count + 1) * Classes];
        Array.Fill(best, double.PositiveInfinity);
        best[Any] = 0;
        for (var end = 1; end <= count; end++)
        {
            for (var first = end - 1; first >= 0; first--)
            {
                if (cost(first, end) is not { } line) break;
                var state = (end * Classes) + (line.Fitness is { } fitness ? (int)fitness : Any);
                for (var before = 0; before < Classes; before++)
                {
                    var sum = best[(first * Classes) + before] + line.Cost + (AreUnlike(before, line.Fitness) ? unlike : 0);
                    if (double.IsInfinity(sum) || sum > best[state]) continue;
                    best[state] = sum;
                    from[state] = (first * Classes) + before;
                }
            }
        }
        var last = count * Classes;
        for (var state = count * Classes; state < best.Length; state++) if (best[state] < best[last]) last = state;
        var breaks = new List<int>();
        for (var state = last; state >= Classes; state = from[state]) breaks.Add(from[state] / Classes);
        breaks.Reverse();
        return ([.. breaks], best[last]);
    }

    private static bool AreUnlike(int before, LineFitness? after) => before != Any && after is { } fitness && Math.Abs(before - (int)fitness) > 1;
}

using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Shares the width of a table among its columns.</summary>
public static class ColumnWidths
{
    /// <summary>
    /// Every column gets what its content needs unbroken when that fits, what is left over shared out equally if wanted. When it
    /// does not fit, columns are held to a common width that only those may pass whose least width asks for it (max-min fair
    /// sharing): narrow columns stay whole and the wide ones wrap. When not even the least widths fit, each is cut in proportion.
    /// </summary>
    /// <param name="least">Least width of each column.</param>
    /// <param name="natural">Natural width of each column, not below the least.</param>
    /// <param name="available">Width to share, the gaps between the columns taken off.</param>
    /// <param name="fill">Whether to use all of it.</param>
    /// <returns>Widths that add up to no more than <paramref name="available"/>.</returns>
    public static ImmutableArray<double> Share(IReadOnlyList<double> least, IReadOnlyList<double> natural, double available, bool fill)
    {
        var (leastSum, naturalSum) = (least.Sum(), natural.Sum());
        if (naturalSum <= available)
        {
            var extra = fill ? (available - naturalSum) / natural.Count : 0;
            return [.. natural.Select(n => n + extra)];
        }
        if (leastSum >= available) return [.. least.Select(l => l / leastSum * available)];
        var common = CommonWidth(least, natural, available);
        return [.. least.Select((l, i) => Math.Max(l, Math.Min(natural[i], common)))];
    }

    // The sum of max(least, min(natural, w)) over the columns grows with w in straight pieces that meet at the least and natural
    // widths: find the piece in which it reaches what is available.
    private static double CommonWidth(IReadOnlyList<double> least, IReadOnlyList<double> natural, double available)
    {
        var (below, sumBelow) = (0.0, least.Sum());
        foreach (var corner in least.Concat(natural).Order())
        {
            var sum = 0.0;
            for (var i = 0; i < least.Count; i++) sum += Math.Max(least[i], Math.Min(natural[i], corner));
            if (sum >= available) return sum > sumBelow ? below + ((available - sumBelow) / (sum - sumBelow) * (corner - below)) : corner;
            (below, sumBelow) = (corner, sum);
        }
        return below;
    }
}

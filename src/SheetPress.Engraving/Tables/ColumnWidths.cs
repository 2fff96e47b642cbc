using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Shares the width of a table among its columns.</summary>
public static class ColumnWidths
{
    /// <summary>
    /// Every column gets what its content needs unbroken when that fits, what is left over shared out equally if wanted. When it
    /// does not fit, each gets its least width and of the rest a share by how much it would gain (the automatic table layout of
    /// CSS 2.1, 17.5.2.2). When not even the least widths fit, each is cut in proportion.
    /// </summary>
    /// <param name="least">Least width of each column.</param>
    /// <param name="natural">Natural width of each column, not below the least.</param>
    /// <param name="available">Width to share, the gaps between the columns taken off.</param>
    /// <param name="fill">Whether to use all of it.</param>
    /// <returns>Widths that add up to no more than <paramref name="available"/>.</returns>
    public static ImmutableArray<double> Share(IReadOnlyList<double> least, IReadOnlyList<double> natural, double available, bool fill)
    {
        var (leastSum, naturalSum) = (least.Sum(), natural.Sum());
        var widths = ImmutableArray.CreateBuilder<double>(least.Count);
        for (var i = 0; i < least.Count; i++)
        {
            widths.Add(
                naturalSum <= available ? natural[i] + (fill ? (available - naturalSum) / least.Count : 0)
                : leastSum <= available ? least[i] + ((natural[i] - least[i]) / (naturalSum - leastSum) * (available - leastSum))
                : least[i] / leastSum * available);
        }
        return widths.MoveToImmutable();
    }
}

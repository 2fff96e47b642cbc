using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>
/// Fits figures to the room that a chord has, so that none is cut off in the middle of its way: what is left over after whole
/// figures turns back instead of starting anew.
/// </summary>
internal static class Figures
{
    /// <summary>Whole figures, and for what is left over the last of them goes back the way it came: R 3 5 7 5 3 in a room of six.</summary>
    /// <param name="figure">The figure, at least one tone.</param>
    /// <param name="room">Notes there is room for.</param>
    public static ImmutableArray<CellTone> TurningBack(IReadOnlyList<CellTone> figure, int room)
    {
        var count = figure.Count;
        var fitted = ImmutableArray.CreateBuilder<CellTone>(Math.Max(1, room));
        var whole = room / count * count;
        for (var i = 0; i < Math.Max(1, room); i++)
        {
            var over = i - whole;
            fitted.Add(figure[over < 0 || whole == 0 || over > count - 2 ? i % count : count - 2 - over]);
        }
        return fitted.MoveToImmutable();
    }

    /// <summary>Up to the top and back to the step above the start, again and again; what is left over turns earlier, three notes go up only.</summary>
    /// <param name="tone">The tone of an index, counted upward from the start at 0.</param>
    /// <param name="top">Index of the tone to turn at; one more where the room is filled exactly by that.</param>
    /// <param name="room">Notes there is room for.</param>
    public static ImmutableArray<CellTone> UpAndBack(Func<int, CellTone> tone, int top, int room)
    {
        var fitted = ImmutableArray.CreateBuilder<CellTone>(Math.Max(1, room));
        var cycle = room == 2 * (top + 1) || room == 3 ? room : 2 * top;
        for (var i = 0; i < Math.Max(1, room); i++)
        {
            var length = Math.Min(cycle, Math.Max(1, room) - (i / cycle * cycle));
            var at = i % cycle;
            fitted.Add(tone(room == 3 ? at : Math.Min(at, (length % 2 == 0 ? length : length - 1) - at)));
        }
        return fitted.MoveToImmutable();
    }
}

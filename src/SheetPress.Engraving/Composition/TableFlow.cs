using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Puts a set table into the flow of the page: rows whole, the header with them and again on each new page.</summary>
internal static class TableFlow
{
    // A table is cut only where some four tenths of a page would be left white else, and rather not beside a single row, which looks
    // lost at the foot or the head of a page.
    private const double MidTable = 900;
    private const double LonelyRow = 1300;

    /// <summary>The rows as boxes.</summary>
    /// <param name="table">The table.</param>
    /// <param name="keepLast">Whether the last row must not be parted from the one before it.</param>
    internal static ImmutableArray<FlowBox> Boxes(TableSetter.SetTable table, bool keepLast = false)
    {
        var boxes = ImmutableArray.CreateBuilder<FlowBox>(table.Rows.Length + 1);
        FlowBox? header = null;
        if (table.Header is { } top)
        {
            header = FlowBox.Of(top.Drawing, top.Height);
            boxes.Add(header with { BreakPenalty = FlowBox.Never });
        }
        for (var i = 0; i < table.Rows.Length; i++)
        {
            var isLast = i == table.Rows.Length - 1;
            var lonely = i == 0 || i == table.Rows.Length - 2;
            boxes.Add(FlowBox.Of(table.Rows[i].Drawing, table.Rows[i].Height) with
            {
                BreakPenalty = isLast ? 0 : keepLast && i == table.Rows.Length - 2 ? FlowBox.Never : lonely ? LonelyRow : MidTable,
                Repeated = isLast ? null : header,
            });
        }
        return boxes.MoveToImmutable();
    }
}

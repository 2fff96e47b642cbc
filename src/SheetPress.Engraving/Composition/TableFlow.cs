using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Puts a set table into the flow of the page: rows whole, the header with them and again on each new page.</summary>
internal static class TableFlow
{
    // A table is cut only where some four tenths of a page would be left white else. One or two rows look lost at the foot of a page
    // and, where it would be easy to carry more over, still more at the head of the next.
    private const double MidTable = 900;
    private const double FewAtFoot = 950;
    private const double OneAtFoot = 1000;
    private const double FewAtHead = 1600;
    private const double OneAtHead = 2000;

    /// <summary>The rows as boxes.</summary>
    /// <param name="table">The table.</param>
    /// <param name="keepLast">Whether the last row must not be parted from the one before it.</param>
    /// <param name="over">What stands over the header again where the table goes on with the row of a number, counted from 0; null for nothing.</param>
    internal static ImmutableArray<FlowBox> Boxes(TableSetter.SetTable table, bool keepLast = false, Func<int, FlowBox?>? over = null)
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
            boxes.Add(FlowBox.Of(table.Rows[i].Drawing, table.Rows[i].Height) with
            {
                BreakPenalty = isLast ? 0 : keepLast && i == table.Rows.Length - 2 ? FlowBox.Never : Penalty(i + 1, table.Rows.Length - i - 1),
                Repeated = isLast ? null : Again(header, over?.Invoke(i + 1)),
                RunsOn = !isLast,
            });
        }
        return boxes.MoveToImmutable();
    }

    private static FlowBox? Again(FlowBox? header, FlowBox? over) =>
        header is null || over is null ? header ?? over : ColumnBalancer.Stack([over, header]);

    private static double Penalty(int above, int below) => (above, below) switch
    {
        (_, 1) => OneAtHead,
        (_, 2) => FewAtHead,
        (1, _) => OneAtFoot,
        (2, _) => FewAtFoot,
        _ => MidTable,
    };
}

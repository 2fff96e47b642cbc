using System.Collections.Immutable;

namespace SheetPress.Engraving.Tests;

/// <summary>Where tables break over pages: what book work asks of a table that is continued, from memory of the typographic handbooks.</summary>
public class TableFlowTests
{
    [Theory]
    [InlineData(13)]
    [InlineData(14)]
    [InlineData(23)]
    public void The_rest_of_a_table_is_three_rows_or_more(int rows)
    {
        // Eleven rows fit beside the header: of 13 rows three are carried over, not two.
        var flow = Rows(rows);
        var pages = PageBreaker.Break(flow, (11.5 * flow[1].Height) + flow[0].Height, 0);
        pages.Length.ShouldBeGreaterThan(1);
        foreach (var page in pages[1..]) (page.End - page.Start).ShouldBeGreaterThanOrEqualTo(3);
    }

    [Fact]
    public void A_page_within_a_table_is_filled()
    {
        // Twenty-six rows that begin in the middle of a page: it takes all that it can hold, though the next page has room for more.
        var flow = Rows(26);
        var height = (20.5 * flow[1].Height) + flow[0].Height;
        var above = new FlowBox(height / 2, []);
        var after = new FlowBox(height * 0.9, []);
        var pages = PageBreaker.Break([above, .. flow, after], height, 0);
        pages[0].End.ShouldBe(1 + 1 + (int)((height - above.Height - flow[0].Height) / flow[1].Height));
    }

    private static ImmutableArray<FlowBox> Rows(int count)
    {
        var small = new PageStyle().Small;
        var rows = Enumerable.Range(0, count).Select(i => ImmutableArray.Create(TableCell.Of("row", small), TableCell.Of("words", small)));
        return TableFlow.Boxes(TableSetter.Set(new TableSpec([new TableColumn(TableCell.Of("A", small)), new TableColumn(TableCell.Of("B", small))], [.. rows]), 100));
    }
}

namespace SheetPress.Engraving.Tests;

public class TableSetterTests
{
    private static TextStyle Small => new PageStyle().Small;

    [Theory]
    [InlineData(60)]
    [InlineData(110)]
    [InlineData(174)]
    public void All_ink_lies_within_the_table(double width)
    {
        var table = TableSetter.Set(Sample(), width);
        table.Width.ShouldBeLessThanOrEqualTo(width + 1e-9);
        foreach (var row in table.Rows.Append(table.Header!))
        {
            var ink = row.Drawing.Bounds;
            ink.Left.ShouldBeGreaterThan(-0.2);
            ink.Right.ShouldBeLessThan(width + 0.2);
            ink.Top.ShouldBeGreaterThan(-0.01);
            ink.Bottom.ShouldBeLessThan(row.Height + 0.2);
        }
    }

    [Fact]
    public void First_lines_of_a_row_stand_on_one_baseline()
    {
        var large = new PageStyle().Title;
        var spec = new TableSpec(
            [new TableColumn(TableCell.Empty), new TableColumn(TableCell.Empty)],
            [[TableCell.Of("Big", large), TableCell.Of("small", Small)]]);
        var row = TableSetter.Set(spec, 100).Rows[0];
        row.Drawing.Marks.OfType<TextMark>().Select(m => Math.Round(m.Position.Y, 6)).Distinct().ShouldHaveSingleItem();
    }

    [Fact]
    public void Numbers_in_a_right_aligned_column_end_level()
    {
        var spec = new TableSpec(
            [new TableColumn(TableCell.Of("Exercise", Small)), new TableColumn(TableCell.Of("Minutes", Small), ColumnAlignment.Right)],
            [[TableCell.Of("a", Small), TableCell.Of("5", Small)], [TableCell.Of("b", Small), TableCell.Of("10", Small)]]);
        var ends = TableSetter.Set(spec, 100).Rows.Select(r => r.Drawing.Marks.OfType<TextMark>().Last()).Select(m => m.Position.X + (m.Run.Advance * m.Size));
        foreach (var end in ends) end.ShouldBe(100, 1e-6);
    }

    [Fact]
    public void A_header_returns_on_the_next_page_and_never_stands_alone()
    {
        var boxes = TableFlow.Boxes(TableSetter.Set(Sample(), 174));
        boxes[0].BreakPenalty.ShouldBe(FlowBox.Never);
        foreach (var row in boxes[1..^1]) row.Repeated.ShouldNotBeNull();
        boxes[^1].Repeated.ShouldBeNull();
    }

    private static TableSpec Sample() => new(
        [new TableColumn(TableCell.Of("First", Small)), new TableColumn(TableCell.Of("Second column", Small)), new TableColumn(TableCell.Of("Third", Small), ColumnAlignment.Right)],
        [
            [TableCell.Of("short", Small), TableCell.Of("a cell with words enough to run over several lines when the table is narrow", Small), TableCell.Of("1", Small)],
            [TableCell.Of("also short", Small), TableCell.Of("brief", Small), TableCell.Empty],
            [TableCell.Of("x", Small), TableCell.Of("y", Small), TableCell.Of("100", Small)],
        ]);
}

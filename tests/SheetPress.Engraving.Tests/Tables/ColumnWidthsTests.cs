using CsCheck;

namespace SheetPress.Engraving.Tests;

public class ColumnWidthsTests
{
    private static readonly Gen<(double Least, double Natural)> Column = Gen.Select(Gen.Double[1, 30], Gen.Double[0, 80]).Select((least, more) => (least, least + more));

    [Fact]
    public void Widths_fill_what_is_there_and_never_pass_it()
    {
        Gen.Select(Column.Array[1, 8], Gen.Double[10, 250], Gen.Bool).Sample((columns, available, fill) =>
        {
            var (least, natural) = (columns.Select(c => c.Least).ToArray(), columns.Select(c => c.Natural).ToArray());
            var widths = ColumnWidths.Share(least, natural, available, fill);
            widths.Sum().ShouldBeLessThanOrEqualTo(available + 1e-9);
            if (fill || natural.Sum() >= available) widths.Sum().ShouldBe(available, 1e-6);
            if (least.Sum() > available) return;
            for (var i = 0; i < widths.Length; i++) widths[i].ShouldBeGreaterThanOrEqualTo(least[i] - 1e-9);
        }, iter: 500);
    }

    [Fact]
    public void Narrow_columns_stay_whole_and_wide_ones_wrap() =>
        ColumnWidths.Share([5, 5, 5], [10, 100, 90], 90, fill: true).ShouldBe([10, 40, 40]);

    [Fact]
    public void A_column_gets_its_least_width_at_the_cost_of_the_others() =>
        ColumnWidths.Share([50, 5, 5], [60, 60, 60], 90, fill: true).ShouldBe([50, 20, 20]);

    [Fact]
    public void Too_narrow_a_page_cuts_all_in_proportion() =>
        ColumnWidths.Share([30, 60], [30, 60], 45, fill: true).ShouldBe([15, 30]);
}

using System.Globalization;

namespace SheetPress.Engraving;

/// <summary>Draws the number of the first measure of a system, small, over the clef.</summary>
internal static class MeasureNumbers
{
    private const double Rise = 0.6;
    private const double Gap = 0.35;

    /// <summary>Draws the number of a system that is not the first and begins with a measure, not within one.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, TextSizes sizes)
    {
        var context = frame.Measures[0].Plan.Context;
        if (frame.Index == 0 || context.Measure.Number < 1 || context.IsContinued) return;
        var number = context.Measure.Number.ToString(CultureInfo.InvariantCulture);
        var layout = new SymbolBuilder(MarkRole.MeasureNumber).Text(number, TextFont.SansItalic, sizes.Small).Build();
        TextRow.Place(canvas, [new RowItem(layout, -layout.Bounds.Left, new MarkOrigin(frame.Index, context.Index, -1, -1))], above: true, -Rise, Gap);
    }
}

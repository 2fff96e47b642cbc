using System.Globalization;

namespace SheetPress.Engraving;

/// <summary>Draws signs that stand in the middle of a measure: "repeat the measure before" and the multi-bar rest.</summary>
internal static class CentredSigns
{
    // The bar of a multi-bar rest ends this far from the barlines; its number stands this far over the staff.
    private const double RestInset = 1.2;
    private const double RestThickness = 0.9;
    private const double RestEnds = 0.2;
    private const double NumberRise = 0.7;

    /// <summary>Draws the signs of a staff or tab.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">Where to.</param>
    /// <param name="middle">y of the middle of the staff.</param>
    /// <param name="staff">Index of the staff.</param>
    /// <param name="withRests">Whether multi-bar rests are drawn here.</param>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, double middle, int staff, bool withRests)
    {
        foreach (var measure in frame.Measures)
        {
            var origin = new MarkOrigin(frame.Index, measure.Plan.Context.Index, staff, -1);
            if (measure.Plan.Kind == MeasureKind.RepeatSign)
            {
                canvas.Add(Ink.Centred("repeat1Bar", (measure.InnerLeft + measure.InnerRight) / 2, middle, MarkRole.Rest, origin));
            }
            else if (measure.Plan.Kind == MeasureKind.MultiBarRest && withRests)
            {
                DrawRest(measure, canvas, middle, origin);
            }
        }
    }

    private static void DrawRest(PlacedMeasure measure, StaffCanvas canvas, double middle, MarkOrigin origin)
    {
        var (left, right) = (measure.InnerLeft + RestInset, measure.InnerRight - RestInset);
        canvas.Add(Ink.Level(left, right, middle, RestThickness, MarkRole.Rest, origin));
        canvas.Add(Ink.Upright(left, middle - 1, middle + 1, RestEnds, MarkRole.Rest, origin));
        canvas.Add(Ink.Upright(right, middle - 1, middle + 1, RestEnds, MarkRole.Rest, origin));
        var number = new SymbolBuilder(MarkRole.Rest);
        foreach (var digit in measure.Plan.Context.Count.ToString(CultureInfo.InvariantCulture)) number.Glyph($"timeSig{digit}", 1);
        var layout = number.Build();
        canvas.Place([.. RowItem.Centred(layout, (left + right) / 2, origin).MarksAt(-NumberRise - layout.Bounds.Bottom)], above: true, NumberRise);
    }
}

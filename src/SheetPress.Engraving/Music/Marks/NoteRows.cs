using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Rows of text that follow the notes: degree names and counting syllables under the staff, letters of the plucking hand.</summary>
internal static class NoteRows
{
    private const double Drop = 0.9;
    private const double Gap = 0.6;
    private const double RowGap = 0.5;

    // Line distance of the degree names of a chord, in em.
    private const double ChordLine = 0.95;

    private const double StrokeRise = 0.7;
    private const double StrokeGap = 0.4;

    /// <summary>Degree names under a staff, the lowest tone of a chord lowest.</summary>
    public static void DrawDegrees(SystemFrame frame, StaffCanvas canvas, double bottomLine, TextSizes sizes)
    {
        var shown = frame.Events.Where(e => !e.Plan.Event.IsRest).Select(e => (Event: e, Degrees: e.Plan.Event.Tones.Where(t => t.Degree is not null && !t.TieStop).Select(t => t.Degree!.Value).ToList())).ToList();
        if (!shown.Exists(s => s.Degrees.Count > 0)) return;
        var lines = shown.Max(s => s.Degrees.Count);
        var items = new List<RowItem>();
        foreach (var (e, degrees) in shown)
        {
            for (var i = 0; i < degrees.Count; i++)
            {
                items.Add(RowItem.Centred(DegreeText.Layout(degrees[i], sizes.Row), e.Centre, e.Plan.Origin, (lines - 1 - i) * ChordLine * sizes.Row));
            }
        }
        TextRow.Place(canvas, items, above: false, bottomLine + Drop + (0.7 * sizes.Row), Gap);
    }

    /// <summary>Counting syllables under a staff.</summary>
    public static void DrawCounts(SystemFrame frame, StaffCanvas canvas, double bottomLine, TextSizes sizes)
    {
        var items = new List<RowItem>();
        foreach (var e in frame.Events)
        {
            if (e.Plan.Event.Count is { } count) items.Add(RowItem.Centred(RowTexts.Count(count, sizes), e.Centre, e.Plan.Origin));
        }
        TextRow.Place(canvas, items, above: false, bottomLine + Drop + (0.7 * sizes.Row), RowGap);
    }

    /// <summary>Signs of the plucking hand over a staff or tab.</summary>
    public static void DrawStrokes(SystemFrame frame, StaffCanvas canvas, TextSizes sizes, int staff)
    {
        var items = new List<RowItem>();
        var taken = new HashSet<(PlacedMeasure, Fraction)>();
        foreach (var e in frame.Events)
        {
            if (e.Plan.Event.IsRest || StrokeSigns.Of(e.Plan.Event.Stroke, sizes) is not { } sign || !taken.Add((e.Measure, e.Plan.Event.Onset))) continue;
            items.Add(RowItem.Centred(sign, e.Centre, e.Plan.Origin with { Staff = staff }));
        }
        TextRow.Place(canvas, items, above: true, -StrokeRise, StrokeGap);
    }
}

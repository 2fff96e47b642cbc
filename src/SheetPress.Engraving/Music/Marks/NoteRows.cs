using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Rows of text that follow the notes: degree names and counting syllables under the staff, letters of the plucking hand.</summary>
internal static class NoteRows
{
    private const double Drop = 0.9;
    private const double Gap = 0.6;
    private const double RowGap = 0.5;

    // The number of a tuplet that stands nearer than this beside a text of a row would be read with it: the row goes below it.
    private const double SideGap = 1;

    // Line distance of the degree names of a chord, in em.
    private const double ChordLine = 0.95;

    // The finger of a lower voice would be read with a number below it.
    private const double FingerGap = 1;

    private const double StrokeRise = 0.7;
    private const double StrokeGap = 0.4;

    // A letter nearer than this beside a word, such as the one for palm mute, would be read with it: the row goes over the word.
    private const double StrokeSide = 1;

    /// <summary>Degree names under a staff, the lowest tone of a chord lowest; each of two voices has its own row, the upper voice the upper one.</summary>
    public static void DrawDegrees(SystemFrame frame, StaffCanvas canvas, double bottomLine, TextSizes sizes)
    {
        // Tones of both voices that start together stand over each other.
        var shown = frame.Events.Where(e => !e.Plan.Event.IsRest).GroupBy(e => (e.Measure, e.Plan.Event.Onset))
            .SelectMany(g => g.Select(e => (Event: e, g.First().Centre, Tones: e.Plan.Event.Tones.Where(t => t.Degree is not null && !t.TieStop).OrderBy(t => t.Pitch).ToList())))
            .Where(s => s.Tones.Count > 0).ToList();
        if (shown.Count == 0) return;
        int Lines(int voice) => shown.Where(s => s.Event.Plan.Voice == voice).Select(s => s.Tones.Count).DefaultIfEmpty().Max();
        var (upper, lower) = (Lines(0), Lines(1));
        var items = new List<RowItem>();
        foreach (var (e, centre, tones) in shown)
        {
            var lowest = upper + lower - 1 - (e.Plan.Voice == 0 ? lower : 0);
            for (var i = 0; i < tones.Count; i++)
            {
                items.Add(RowItem.Centred(DegreeText.Layout(tones[i].Degree!.Value, sizes.Row), centre, e.Plan.Origin, (lowest - i) * ChordLine * sizes.Row));
            }
        }
        PlaceBelow(canvas, items, bottomLine, Gap, sizes);
    }

    /// <summary>Counting syllables under a staff.</summary>
    public static void DrawCounts(SystemFrame frame, StaffCanvas canvas, double bottomLine, TextSizes sizes)
    {
        var items = new List<RowItem>();
        var taken = new HashSet<(PlacedMeasure, Fraction)>();
        foreach (var e in frame.Events)
        {
            if (e.Plan.Event.Count is { } count && taken.Add((e.Measure, e.Plan.Event.Onset))) items.Add(RowItem.Centred(RowTexts.Count(count, sizes), e.Centre, e.Plan.Origin));
        }
        PlaceBelow(canvas, items, bottomLine, RowGap, sizes);
    }

    // What stands below a row stands below all of it: a letter of the tab between two syllables would be read with them.
    private static void PlaceBelow(StaffCanvas canvas, List<RowItem> items, double bottomLine, double gap, TextSizes sizes)
    {
        var baseline = TextRow.Place(canvas, items, above: false, bottomLine + Drop + (0.7 * sizes.Row), gap, SideGap, m => m.Role == MarkRole.Finger, FingerGap);
        var row = Box.Around(items.SelectMany(i => i.MarksAt(baseline)).Select(m => m.Bounds));
        if (!row.IsEmpty) canvas.Lower.Add(row);
    }

    /// <summary>Signs of the plucking hand over a staff or tab, those of a lower voice below it.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The staff or tab.</param>
    /// <param name="bottomLine">y of its bottom line.</param>
    /// <param name="sizes">Sizes of text.</param>
    /// <param name="staff">Index of the staff, for the origin.</param>
    public static void DrawStrokes(SystemFrame frame, StaffCanvas canvas, double bottomLine, TextSizes sizes, int staff)
    {
        foreach (var above in (bool[])[true, false])
        {
            var items = new List<RowItem>();
            foreach (var e in frame.Events.Where(e => !e.Plan.Event.IsRest && (e.Plan.Voice == 0) == above))
            {
                if (StrokeSigns.Of(e.Plan.Event.Stroke, sizes) is { } sign) items.Add(RowItem.Centred(sign, e.Centre, e.Plan.Origin with { Staff = staff }));
            }
            if (items.Count > 0) TextRow.Place(canvas, items, above, above ? -StrokeRise : bottomLine + StrokeRise - items.Min(i => i.Layout.Bounds.Top), StrokeGap, StrokeSide);
        }
    }
}

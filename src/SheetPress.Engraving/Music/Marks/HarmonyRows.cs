using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Chord symbols on one baseline over the system, their diagrams over them, and roman numerals in a row under the staves.</summary>
internal static class HarmonyRows
{
    // Nearest baselines, and white to what is nearer to the staff.
    private const double ChordBaseline = -1.2;
    private const double ChordGap = 0.8;
    private const double FrameGap = 0.6;

    // A finger right behind a chord symbol would be read as a part of it.
    private const double BesideChord = 1;

    // So would an accent, even a little further off, and a hairpin on the line of the symbols.
    private const double BesideSign = 2;
    private const double RomanDrop = 1;
    private const double RomanGap = 0.8;

    /// <summary>Chord symbols and their diagrams.</summary>
    /// <returns>The baseline of the symbols; the one nearest to the staff that they may have where there are none.</returns>
    public static double DrawChords(SystemFrame frame, StaffCanvas canvas, Score score, TextSizes sizes)
    {
        var symbols = new List<RowItem>();
        var frames = new List<RowItem>();
        foreach (var (measure, harmony, origin) in All(frame))
        {
            var x = measure.XAt(harmony.Offset);
            var symbol = ChordSymbolText.Layout(harmony.Chord, sizes.Chord);
            symbols.Add(new RowItem(symbol, x - symbol.Bounds.Left, origin));
            if (!harmony.Frame.IsEmpty) frames.Add(new RowItem(ChordFrame.Layout(harmony, score.Instrument, sizes), x, origin));
        }
        var baseline = TextRow.Place(canvas, symbols, above: true, ChordBaseline, ChordGap, BesideChord, m => m.Role is MarkRole.Articulation or MarkRole.Dynamic, ChordGap, BesideSign);
        TextRow.Place(canvas, frames, above: true, ChordBaseline, FrameGap);
        return baseline;
    }

    /// <summary>Roman numerals.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The whole system.</param>
    /// <param name="bottomLine">y of the bottom line of the last staff.</param>
    /// <param name="sizes">Sizes of text.</param>
    public static void DrawRomans(SystemFrame frame, StaffCanvas canvas, double bottomLine, TextSizes sizes)
    {
        var items = new List<RowItem>();
        foreach (var (measure, harmony, origin) in All(frame))
        {
            if (harmony.Roman is not { } roman) continue;
            var layout = RomanText.Layout(roman, sizes.Roman);
            items.Add(new RowItem(layout, measure.XAt(harmony.Offset) - layout.Bounds.Left, origin));
        }
        TextRow.Place(canvas, items, above: false, bottomLine + RomanDrop + sizes.Roman, RomanGap);
    }

    private static IEnumerable<(PlacedMeasure Measure, HarmonyMark Harmony, MarkOrigin Origin)> All(SystemFrame frame)
    {
        foreach (var measure in frame.Measures)
        {
            var harmonies = measure.Plan.Context.Harmonies;
            for (var i = 0; i < harmonies.Length; i++) yield return (measure, harmonies[i], new MarkOrigin(frame.Index, measure.Plan.Context.Index, -1, i));
        }
    }
}

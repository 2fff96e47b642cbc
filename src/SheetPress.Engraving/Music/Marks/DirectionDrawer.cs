using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws words, rehearsal marks and signs of navigation above a system.</summary>
internal static class DirectionDrawer
{
    private const double Rise = 1.5;
    private const double Gap = 0.6;
    private const double TempoGap = 1.2;
    private const double BesideGap = 1.2;

    // White beside rehearsal marks and the tempo.
    private const double HeadSide = 1;

    // White beside words, so that they do not read on from a chord symbol.
    private const double WordSide = 2;

    /// <summary>Words and navigation signs, in line with the chord symbols where there is room, else over them.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">Where to.</param>
    /// <param name="chordBaseline">Baseline of the chord symbols.</param>
    /// <param name="sizes">Sizes of text.</param>
    public static void DrawWords(SystemFrame frame, StaffCanvas canvas, double chordBaseline, TextSizes sizes)
    {
        var baseline = Math.Min(-Rise, chordBaseline);
        var hasChords = frame.Measures.Any(m => !m.Plan.Context.Measure.Harmonies.IsEmpty);
        var chordLine = (TextMetrics.Of(ChordSymbolText.RootFont).CapHeight * sizes.Chord) + Gap;
        foreach (var (measure, direction, origin) in All(frame))
        {
            if (direction.Kind is DirectionKind.Dynamic or DirectionKind.Rehearsal or DirectionKind.Tempo || DirectionSymbols.Of(direction, sizes) is not { } symbol) continue;
            // The end of a measure is where a jump is taken from.
            var x = EndsMeasure(direction.Kind) ? Math.Min(measure.End, frame.Width) - symbol.Bounds.Right
                : direction.Offset == Fraction.Zero && direction.Kind is DirectionKind.Segno or DirectionKind.Coda ? Math.Max(0, measure.Start - (symbol.Advance / 2))
                : measure.XAt(direction.Offset);
            PlaceWord(new RowItem(symbol, x, origin));
        }
        foreach (var measure in frame.Measures)
        {
            var (times, context) = (measure.Plan.Context.LastMeasure.RepeatEndTimes, measure.Plan.Context);
            if (times <= 2 || context.LastMeasure.EndingStop) continue;
            var symbol = DirectionSymbols.Times(times, sizes);
            PlaceWord(new RowItem(symbol, Math.Min(measure.End, frame.Width) - symbol.Bounds.Right, new MarkOrigin(frame.Index, context.LastIndex, -1, -1)));
        }

        // Beside the chord symbols, or wholly over them.
        void PlaceWord(RowItem item)
        {
            var isBeside = !hasChords || canvas.Clearance([.. item.MarksAt(baseline)], above: true, Gap, WordSide) == 0;
            TextRow.Place(canvas, [item], above: true, isBeside ? baseline : baseline - chordLine, Gap, WordSide);
        }
    }

    /// <summary>Rehearsal marks and tempos, over everything else.</summary>
    public static void DrawHeads(SystemFrame frame, StaffCanvas canvas, Score score, EngravingOptions options, TextSizes sizes)
    {
        // Where a tempo can stand beside the rehearsal mark of its measure.
        var beside = new Dictionary<PlacedMeasure, double>(ReferenceEqualityComparer.Instance);
        foreach (var (measure, direction, origin) in All(frame))
        {
            if (direction.Kind != DirectionKind.Rehearsal || DirectionSymbols.Of(direction, sizes) is not { } symbol) continue;
            var x = measure == frame.Measures[0] ? 0 : Math.Max(0, measure.Start - (symbol.Advance / 2));
            TextRow.Place(canvas, [new RowItem(symbol, x, origin)], above: true, -Rise, Gap, HeadSide);
            beside[measure] = x + symbol.Advance + BesideGap;
        }
        if (options.ShowTempo && frame.Index == 0)
        {
            var tempo = Tempo(score, options, sizes);
            var x = Math.Max(MeterLeft(frame.Springs), beside.GetValueOrDefault(frame.Measures[0]));
            TextRow.Place(canvas, [new RowItem(tempo, x - tempo.Bounds.Left, new MarkOrigin(frame.Index, frame.Measures[0].Plan.Context.Index, -1, -1))], above: true, -Rise, TempoGap, HeadSide);
        }
        foreach (var (measure, direction, origin) in All(frame))
        {
            if (direction.Kind != DirectionKind.Tempo || DirectionSymbols.Of(direction, sizes) is not { } symbol) continue;
            // Over the first note, no further than the end of the staff.
            var x = direction.Offset == Fraction.Zero ? Math.Max(measure.FirstX, beside.GetValueOrDefault(measure)) : measure.XAt(direction.Offset);
            x = Math.Max(0, Math.Min(x - symbol.Bounds.Left, frame.Width - symbol.Bounds.Right));
            TextRow.Place(canvas, [new RowItem(symbol, x, origin)], above: true, -Rise, TempoGap, HeadSide);
        }
    }

    /// <summary>Where the tempo mark ends: the first system is no shorter.</summary>
    public static double TempoEnd(SystemSprings springs, Score score, EngravingOptions options, TextSizes sizes)
    {
        var left = MeterLeft(springs);
        if (score.Measures[0].Directions.FirstOrDefault(d => d.Kind == DirectionKind.Rehearsal) is { } rehearsal) left = Math.Max(left, DirectionSymbols.Of(rehearsal, sizes)!.Advance + BesideGap);
        return left + Tempo(score, options, sizes).Bounds.Width;
    }

    private static SymbolLayout Tempo(Score score, EngravingOptions options, TextSizes sizes) =>
        TempoSymbol.Layout(score.Tempo, options.ShowSwing ? score.Feel : Feel.Straight, sizes.Direction, options.StraightWord);

    // The tempo stands over the meter.
    private static double MeterLeft(SystemSprings springs) =>
        springs.Boundaries[0].Signs.Where(s => s.Mark.Role == MarkRole.Meter).Select(s => s.Mark.Bounds.Left).DefaultIfEmpty(0).Min();

    private static bool EndsMeasure(DirectionKind kind) => kind is DirectionKind.DaCapo or DirectionKind.DalSegno or DirectionKind.ToCoda or DirectionKind.Fine;

    private static IEnumerable<(PlacedMeasure Measure, Direction Direction, MarkOrigin Origin)> All(SystemFrame frame)
    {
        foreach (var measure in frame.Measures)
        {
            var directions = measure.Plan.Context.Measure.Directions;
            for (var i = 0; i < directions.Length; i++) yield return (measure, directions[i], new MarkOrigin(frame.Index, measure.Plan.Context.Index, -1, i));
        }
    }
}

using System.Collections.Frozen;
using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws a system whose columns have their x: each staff with what belongs to it, then the staves under each other, then what joins them.</summary>
internal sealed class SystemEngraver(Score score, EngravingOptions options)
{
    // From the bottom line of the staff to the top line of the tab at least; more when something needs it.
    private const double LeastStaffDistance = 4;

    // White between the ink that belongs to the staff and the ink that belongs to the tab.
    private const double StaffGap = 0.8;

    // The same where rows of text stand between them, which belong to the staff.
    private const double RowsGap = 1.1;

    // Ink of staff and tab that is this near sideways counts as one above the other.
    private const double SidePadding = 0.3;

    private readonly TextSizes _sizes = new(options.StaffSpace);
    private readonly bool _hasPops = score.Measures.SelectMany(m => m.Voices).SelectMany(v => v.Events).Any(e => e.Stroke == Stroke.Pop);

    private readonly FrozenSet<(int Measure, int Voice, int Event)> _stringNumbers = StringNumbers.Of(score);
    private readonly HeldTechniques _held = new(score);

    private bool HasStaff => score.Layout != StaffLayout.Tab;
    private bool HasTab => score.Layout is StaffLayout.StaffAndTab or StaffLayout.Tab;
    private int Strings => score.Instrument.StringCount;

    /// <summary>Draws a system.</summary>
    public EngravedSystem Engrave(SystemFrame frame)
    {
        var staff = HasStaff ? DrawStaff(frame) : null;
        var tab = HasTab ? DrawTab(frame) : null;
        var tabTop = 0.0;
        if (staff is not null && tab is not null)
        {
            tabTop = Math.Max(StaffSteps.BottomLine + LeastStaffDistance, staff.Lower.ToSkyline().DistanceTo(tab.Upper.ToSkyline(), score.ShowDegrees || score.ShowCounts ? RowsGap : StaffGap, SidePadding));
        }
        var spans = new List<StaffSpan>();
        if (staff is not null) spans.Add(StaffSpan.Staff(0));
        if (tab is not null) spans.Add(StaffSpan.Tab(tabTop, Strings));
        var whole = new StaffCanvas();
        if (staff is not null) whole.AddAll(staff.Marks);
        if (tab is not null) whole.AddAll(tabTop == 0 ? tab.Marks : tab.Marks.Select(m => m.Transform(1, 0, tabTop)));
        whole.AddAll(BarlineDrawer.Draw(frame, spans));
        DrawAbove(frame, whole);
        if (score.ShowRomans) HarmonyRows.DrawRomans(frame, whole, spans[^1].Bottom, _sizes);
        return Finish(frame, whole, spans);
    }

    private StaffCanvas DrawStaff(SystemFrame frame)
    {
        var canvas = new StaffCanvas();
        StaffDrawer.DrawLines(frame, canvas);
        StaffDrawer.DrawSigns(frame, 0, canvas);
        NoteDrawer.Draw(frame, canvas);
        CentredSigns.Draw(frame, canvas, StaffSteps.Middle, 0, withRests: true);
        SlideDrawer.Draw(frame, canvas);
        TieDrawer.Draw(frame, canvas);
        ArticulationDrawer.Draw(frame, canvas);
        SlurDrawer.DrawLegato(frame, canvas);
        if (score.ShowFingers) FingerDrawer.DrawOverStaff(frame, canvas);
        StringNumberDrawer.Draw(frame, canvas, _stringNumbers);
        TupletDrawer.Draw(frame, canvas);
        SlurDrawer.DrawPhrases(frame, canvas);
        if (!HasTab)
        {
            BendDrawer.DrawOverStaff(frame, canvas, _sizes);
            TechniqueSpans.Draw(frame, canvas, _held, StaffSteps.BottomLine, _sizes, 0);
            NoteRows.DrawStrokes(frame, canvas, StaffSteps.BottomLine, _sizes, 0);
        }
        ArticulationDrawer.DrawFermatas(frame, canvas, StaffSteps.BottomLine);
        DrawRows(frame, canvas, StaffSteps.BottomLine);
        return canvas;
    }

    private StaffCanvas DrawTab(SystemFrame frame)
    {
        var canvas = new StaffCanvas();
        var bottom = TabRhythm.BottomLine(Strings);
        TabDrawer.Draw(frame, canvas, Strings, _sizes);
        StaffDrawer.DrawSigns(frame, 1, canvas);
        CentredSigns.Draw(frame, canvas, bottom / 2, 1, withRests: !HasStaff);
        if (!HasStaff)
        {
            TabRhythmDrawer.Draw(frame, canvas, Strings, _sizes);
            TabTies.Draw(frame, canvas, Strings, _sizes);
        }
        var letters = TabJoins.Draw(frame, canvas, bottom, _sizes, _hasPops);
        BendDrawer.DrawOnTab(frame, canvas, _sizes);
        if (!HasStaff)
        {
            ArticulationDrawer.DrawBesideTab(frame, canvas, bottom);
            if (score.ShowFingers) FingerDrawer.DrawOverTab(frame, canvas, Math.Min(0, letters.Top), Math.Max(bottom, letters.Bottom));
        }
        TechniqueSpans.Draw(frame, canvas, _held, bottom, _sizes, 1);
        NoteRows.DrawStrokes(frame, canvas, bottom, _sizes, 1);
        if (HasStaff) return canvas;
        SlurDrawer.DrawBesideTab(frame, canvas, bottom);
        ArticulationDrawer.DrawFermatas(frame, canvas, bottom);
        DrawRows(frame, canvas, HasStemBelow(frame) ? TabRhythm.StemEnd(Strings, above: false) : bottom);
        return canvas;
    }

    // Whole notes have none, and the rows come up to the tab.
    private static bool HasStemBelow(SystemFrame frame) =>
        frame.Events.Any(e => !e.Plan.Event.IsRest && e.Plan.HasStem && (e.Plan.Voice > 0 || !e.Measure.Plan.HasTwoVoices));

    private void DrawRows(SystemFrame frame, StaffCanvas canvas, double bottomLine)
    {
        foreach (var above in (bool[])[true, false])
        {
            var open = DynamicsRow.OpenAt(score, frame.Measures[0].Plan.Context.Index, above);
            DynamicsRow.Draw(frame, canvas, above, above ? 0 : bottomLine, open, overBarlines: !above && HasStaff && HasTab, _sizes);
        }
        if (score.ShowDegrees) NoteRows.DrawDegrees(frame, canvas, bottomLine, _sizes);
        if (score.ShowCounts) NoteRows.DrawCounts(frame, canvas, bottomLine, _sizes);
    }

    // From the staff outward: measure number, chord symbols, words, endings, rehearsal mark and tempo.
    private void DrawAbove(SystemFrame frame, StaffCanvas canvas)
    {
        if (options.ShowMeasureNumbers) MeasureNumbers.Draw(frame, canvas, _sizes);
        var baseline = HarmonyRows.DrawChords(frame, canvas, score, _sizes);
        DirectionDrawer.DrawWords(frame, canvas, baseline, _sizes);
        EndingDrawer.Draw(frame, canvas, measure => EndingDrawer.IsOpenAt(score, measure), _sizes);
        DirectionDrawer.DrawHeads(frame, canvas, score, options, _sizes);
    }

    private static EngravedSystem Finish(SystemFrame frame, StaffCanvas whole, List<StaffSpan> spans)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>(whole.Marks.Count);
        foreach (var mark in whole.Marks) marks.Add(mark with { Origin = mark.Origin with { System = frame.Index } });
        var drawing = new Drawing(marks.MoveToImmutable());
        var bounds = drawing.Bounds;
        return new EngravedSystem
        {
            Drawing = drawing,
            Top = bounds.Top,
            Bottom = bounds.Bottom,
            StaffTop = spans[0].Top,
            StaffBottom = spans[^1].Bottom,
            NaturalWidth = frame.Springs.NaturalWidth,
            LeastWidth = frame.Springs.LeastWidth,
            Width = frame.Width,
            StretchRatio = frame.Springs.Ratio(frame.Width),
            FirstMeasure = frame.Measures[0].Plan.Context.Index,
            LastMeasure = frame.Measures[^1].Plan.Context.LastIndex,
            Upper = whole.Upper.ToSkyline(),
            Lower = whole.Lower.ToSkyline(),
        };
    }
}

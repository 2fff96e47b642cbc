using System.Collections.Frozen;
using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Gathers what starts at each moment of a measure, with the ink it takes up in each lane.</summary>
internal sealed class ColumnBuilder(Score score, TextSizes sizes)
{
    // Room that joins need beside their note, so that they can be seen.
    private const double TieRoom = 0.8;
    // In a tab alone a tie ends at the stem of a note without a number: as far behind it ends what the next number keeps its white from.
    private const double TabTieEnd = -0.4;
    private const double ArcRoom = 0.8;
    // Over a tab that stands alone the letter of an arc and an accent at its start stand side by side.
    private const double SignedArcRoom = 2.4;
    private const double BendRoom = 1.6;

    // Signs in the middle of a measure keep this much white on each side.
    private const double CentredGap = 1.2;

    // A multi-bar rest is at least this long.
    private const double MultiBarRestWidth = 9;

    private readonly FrozenSet<(int Measure, int Voice, int Event)> _stringNumbers = StringNumbers.Of(score);

    private bool HasStaff => score.Layout != StaffLayout.Tab;
    private bool HasTab => score.Layout is StaffLayout.StaffAndTab or StaffLayout.Tab;

    /// <summary>The columns of a measure.</summary>
    public MeasureColumns Build(MeasurePlan plan)
    {
        var events = plan.Voices.SelectMany(v => v.Events).Where(e => !e.IsHidden).ToList();
        var onsets = new SortedSet<Fraction> { Fraction.Zero };
        foreach (var e in events) onsets.Add(e.Event.Onset);
        foreach (var harmony in plan.Context.Harmonies) onsets.Add(harmony.Offset);
        var directions = plan.Context.Measure.Directions;
        foreach (var direction in directions) if (DynamicsRow.Room([direction], sizes) is not null && direction.Offset < plan.Length) onsets.Add(direction.Offset);
        var columns = ImmutableArray.CreateBuilder<Column>(onsets.Count);
        foreach (var onset in onsets)
        {
            var boxes = ImmutableArray.CreateBuilder<LaneBox>();
            foreach (var e in events.Where(e => e.Event.Onset == onset && !e.IsCentred)) AddEvent(boxes, e, events, plan.HasTwoVoices);
            AddRows(boxes, events, onset);
            foreach (var harmony in plan.Context.Harmonies.Where(h => h.Offset == onset)) AddHarmony(boxes, harmony);
            foreach (var row in directions.Where(d => d.Offset == onset).GroupBy(DynamicsRow.IsAbove))
            {
                if (DynamicsRow.Room(row, sizes) is { } room) boxes.Add(new LaneBox(row.Key ? Lane.DynamicAbove : Lane.Dynamic, room));
            }
            columns.Add(new Column(onset, Shortest(plan, events, onset), boxes.ToImmutable()));
        }
        return new MeasureColumns(plan, columns.ToImmutable(), LeastWidth(plan, events));
    }

    private static Fraction Shortest(MeasurePlan plan, List<EventPlan> events, Fraction at)
    {
        var shortest = plan.Length;
        foreach (var e in events)
        {
            if (e.Event.Onset <= at && at < e.Event.End && !e.IsCentred) shortest = Fraction.Min(shortest, e.Event.Value.Duration);
        }
        return shortest;
    }

    private static double LeastWidth(MeasurePlan plan, List<EventPlan> events) => plan.Kind switch
    {
        MeasureKind.MultiBarRest => MultiBarRestWidth,
        MeasureKind.RepeatSign => Ink.Glyph("repeat1Bar").Bounds.Width + (2 * CentredGap),
        _ => events.Any(e => e.IsCentred) ? Ink.Glyph("restWhole").Bounds.Width + (2 * CentredGap) : 0,
    };

    private void AddEvent(ImmutableArray<LaneBox>.Builder boxes, EventPlan e, List<EventPlan> events, bool twoVoices)
    {
        if (HasStaff)
        {
            foreach (var mark in e.Marks)
            {
                // A rest under a beam may end up anywhere on its way.
                if (e.IsUnderBeam) boxes.Add(new LaneBox(Lane.Staff, mark.Bounds with { Top = double.NegativeInfinity, Bottom = double.PositiveInfinity }));
                else foreach (var box in InkCover.Of(mark)) boxes.Add(new LaneBox(Lane.Staff, box));
            }
            if (!e.Heads.IsEmpty) AddStem(boxes, e);
            foreach (var sign in ArticulationDrawer.Rooms(e, twoVoices)) boxes.Add(new LaneBox(Lane.Staff, sign));
            if (score.ShowFingers && !e.Heads.IsEmpty) AddFingers(boxes, e, twoVoices);
        }
        if (HasTab)
        {
            foreach (var mark in FretNumbers.Of(e, sizes, showTied: e.Event.Onset == Fraction.Zero)) boxes.Add(new LaneBox(Lane.Tab, mark.Bounds));
            if (!HasStaff)
            {
                AddTabRhythm(boxes, e);
                AddTieEnds(boxes, e);
            }
        }
        AddRooms(boxes, e, events, twoVoices);
    }

    private static void AddStem(ImmutableArray<LaneBox>.Builder boxes, EventPlan e)
    {
        if (!e.HasStem) return;
        var half = Ink.Defaults.StemThickness / 2;
        var stem = new Box(e.StemX - half, Math.Min(e.StemTip, e.StemRoot), e.StemX + half, Math.Max(e.StemTip, e.StemRoot));
        // How far the beam is, is not known yet: what follows keeps off its stems wherever it ends.
        if (e.IsBeamed) stem = e.Stem == StemDirection.Up ? stem with { Top = double.NegativeInfinity } : stem with { Bottom = double.PositiveInfinity };
        boxes.Add(new LaneBox(Lane.Staff, stem));
        if (e.FlagBounds is { } flag) boxes.Add(new LaneBox(Lane.Staff, flag));
    }

    // The accidental of a note close behind may reach over the head: not into the numeral there, which would have to rise above it.
    private static void AddFingers(ImmutableArray<LaneBox>.Builder boxes, EventPlan e, bool twoVoices)
    {
        var above = e.Voice == 0;
        var tip = e.Edge(above, e.StemTip);
        var box = FingerDrawer.Room(e.Event, ArticulationDrawer.Axis(e, above, twoVoices), above ? Math.Min(0, tip) : Math.Max(StaffSteps.BottomLine, tip), above);
        if (!box.IsEmpty) boxes.Add(new LaneBox(Lane.Staff, box));
    }

    // Below a tab that stands alone: dots and flags beside the stem, rests in its place.
    private void AddTabRhythm(ImmutableArray<LaneBox>.Builder boxes, EventPlan e)
    {
        foreach (var mark in TabRhythm.MarksOf(e, score.Instrument.StringCount, sizes)) boxes.Add(new LaneBox(Lane.Tab, mark.Bounds));
    }

    private static void AddTieEnds(ImmutableArray<LaneBox>.Builder boxes, EventPlan e)
    {
        if (e.Event.Onset == Fraction.Zero || FretNumbers.LeadsOn(e)) return;
        foreach (var tone in e.Event.Tones)
        {
            if (!tone.TieStop || tone.Position is not { } position) continue;
            var y = FretNumbers.LineY(position.String);
            var half = FretNumbers.LineDistance / 2;
            boxes.Add(new LaneBox(Lane.Tab, new Box(e.Centre + TabTieEnd, y - half, e.Centre + TabTieEnd, y + half)));
        }
    }

    private void AddRooms(ImmutableArray<LaneBox>.Builder boxes, EventPlan e, List<EventPlan> events, bool twoVoices)
    {
        var note = e.Event;
        if (note.IsRest) return;
        // A tied note shows no number, but what joins it or leaves it starts beside its place.
        var tab = HasTab ? Box.Around(boxes.Where(b => b.Lane == Lane.Tab).Select(b => b.Box).Concat(FretNumbers.Of(e, sizes, showTied: true).Select(m => m.Bounds))) : Box.Empty;
        void Room(double left, double right, bool staff = true, bool upward = false, bool beyondFlag = false, double? onTab = null)
        {
            if (HasStaff && staff)
            {
                var isSlide = left == SlideDrawer.Room || right == SlideDrawer.Room;
                var (inkLeft, inkRight) = SlideDrawer.Reach(e, isSlide ? events : []);
                // A slide starts beyond the flag of a stem that points up, and a tie on that side.
                if ((isSlide || beyondFlag) && e.Stem == StemDirection.Up && e.FlagBounds is { } flag) inkRight = Math.Max(inkRight, flag.Right);
                boxes.Add(new LaneBox(Lane.Staff, new Box(inkLeft - left, e.TopHead - SlideDrawer.Rise, inkRight + right, e.BottomHead + SlideDrawer.Rise)));
            }
            var (tabLeft, tabRight) = (left > 0 ? onTab ?? left : 0, right > 0 ? onTab ?? right : 0);
            if (!tab.IsEmpty) boxes.Add(new LaneBox(Lane.Tab, new Box(tab.Left - tabLeft, upward ? double.NegativeInfinity : tab.Top, tab.Right + tabRight, tab.Bottom)));
        }
        // A tie that ends here lies over or under the head: a slide into the next note keeps off it.
        if (HasStaff && note.Tones.Any(t => t.TieStop)) boxes.Add(new LaneBox(Lane.Staff, new Box(e.Left, e.TopHead - SlideDrawer.Rise, e.Right, e.BottomHead + SlideDrawer.Rise)));
        if (note.SlideIn != LooseSlide.None) Room(SlideDrawer.Room, 0, onTab: TabJoins.LooseRoom);
        if (note.Connection == Connection.Slide) Room(0, SlideDrawer.Room, onTab: TabJoins.SlideRoom);
        else if (note.SlideOut != LooseSlide.None) Room(0, SlideDrawer.Room, onTab: TabJoins.LooseRoom);
        if (note.Connection is Connection.HammerOn or Connection.PullOff) Room(0, ArcRoom, onTab: HasStaff || !ArticulationDrawer.RoomsBesideTab(e).Any() ? ArcRoom : SignedArcRoom);
        if (note.Tones.Any(t => t.TieStart)) Room(0, TieRoom, beyondFlag: twoVoices || e.Heads.Length > 1);
        // The arrow of a bend goes up past the strings above its own.
        if (note.BendHalfSteps is not null) Room(0, BendRoom + BendDrawer.Aside(e, events), staff: !HasTab, upward: true);
    }

    private void AddRows(ImmutableArray<LaneBox>.Builder boxes, List<EventPlan> events, Fraction onset)
    {
        foreach (var e in events.Where(e => e.Event.Onset == onset))
        {
            if (score.ShowDegrees)
            {
                foreach (var tone in e.Event.Tones.Where(t => t.Degree is not null && !t.TieStop)) AddCentred(boxes, Lane.Degree, DegreeText.Layout(tone.Degree!.Value, sizes.Row).Bounds, e.Centre);
            }
            if (score.ShowCounts && e.Event.Count is { } count) AddCentred(boxes, Lane.Count, RowTexts.Count(count, sizes).Bounds, e.Centre);
            if (_stringNumbers.Contains((e.Origin.Measure, e.Origin.Voice, e.Origin.Event))) AddCentred(boxes, Lane.StringNumber, StringNumberDrawer.Room(e.Event), e.Centre);
            if (!HasStaff) foreach (var sign in ArticulationDrawer.RoomsBesideTab(e)) boxes.Add(new LaneBox(Lane.Articulation, sign));
            if (StrokeSigns.Of(e.Event.Stroke, sizes) is { } stroke) AddCentred(boxes, Lane.Stroke, stroke.Bounds, e.Centre);
        }
    }

    private void AddHarmony(ImmutableArray<LaneBox>.Builder boxes, HarmonyMark harmony)
    {
        var symbol = ChordSymbolText.Layout(harmony.Chord, sizes.Chord).Bounds;
        boxes.Add(new LaneBox(Lane.Chord, symbol));
        if (!harmony.Frame.IsEmpty) boxes.Add(new LaneBox(Lane.Chord, ChordFrame.Layout(harmony, score.Instrument, sizes).Bounds));
        if (score.ShowRomans && harmony.Roman is { } roman) boxes.Add(new LaneBox(Lane.Roman, RomanText.Layout(roman, sizes.Roman).Bounds));
    }

    private static void AddCentred(ImmutableArray<LaneBox>.Builder boxes, Lane lane, Box bounds, double centre)
    {
        if (bounds.IsEmpty) return;
        boxes.Add(new LaneBox(lane, new Box(centre - (bounds.Width / 2), bounds.Top, centre + (bounds.Width / 2), bounds.Bottom)));
    }
}

using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws slides on the staff: to the next note, from and to nowhere.</summary>
internal static class SlideDrawer
{
    private const double Thickness = 0.16;
    private const double Gap = 0.25;
    private const double LooseLength = 1.1;
    private const double LooseRise = 0.9;

    /// <summary>A slide rises and falls this far from the heads at the most: ink of the other voice there is in its way.</summary>
    public const double Rise = 1;

    /// <summary>Room for a slide between the ink on its sides, so long that it is not taken for a dot.</summary>
    public const double Room = 1.4;

    // A slide over a leap is easily missed when it is short: it has this much more room for each space between its heads, up to the most.
    private const double RoomPerSpace = 0.2;
    private const double MostMoreRoom = 1;

    // Between heads on one line or space the slide still slants.
    private const double LeastSlant = 0.5;

    /// <summary>Draws all slides.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas)
    {
        foreach (var voice in frame.Voices)
        {
            for (var i = 0; i < voice.Length; i++)
            {
                var e = voice[i];
                if (e.Plan.Heads.IsEmpty) continue;
                DrawLoose(canvas, e, isReached: IsReached(voice, i));
                if (e.Plan.Event.Connection != Connection.Slide || i + 1 >= voice.Length || voice[i + 1].Plan.Heads.IsEmpty) continue;
                DrawBetween(canvas, e, voice[i + 1]);
            }
        }
    }

    private static void DrawBetween(StaffCanvas canvas, PlacedEvent from, PlacedEvent to)
    {
        var start = from.X + RightTowards(from.Plan, to.Plan, EventsOf(from)) + Gap;
        var end = LeftInk(to) - Gap;
        if (end <= start) return;
        for (var i = 0; i < Math.Min(from.Plan.Heads.Length, to.Plan.Heads.Length); i++)
        {
            var (a, b) = (from.Plan.Heads[i], to.Plan.Heads[i]);
            var (y1, y2) = (a.Y, b.Y);
            if (a.Step == b.Step)
            {
                var rise = Math.Sign(b.Tone.Pitch.MidiNumber - a.Tone.Pitch.MidiNumber) * LeastSlant / 2;
                (y1, y2) = (y1 + rise, y2 - rise);
            }
            // The line starts and ends beside the heads, on the straight way between their middles.
            var slope = (y2 - y1) / (to.Centre - from.Centre);
            var line = Line(start, y1 + (slope * (start - from.Centre)), end, y2 - (slope * (to.Centre - end)), from.Plan.Origin);
            // Where the other voice has notes or their ledger lines on its way it is broken.
            canvas.AddAll(LineGaps.Break(line, canvas.Marks.Where(m => m.Role is MarkRole.Notehead or MarkRole.LedgerLine or MarkRole.Accidental or MarkRole.Dot && m.Origin.Voice != line.Origin.Voice)).ToList());
        }
    }

    // The flag hangs in the way of a line that goes to its side.
    private static double RightTowards(EventPlan from, EventPlan to, IEnumerable<EventPlan> events)
    {
        var right = Reach(from, events).Right;
        const double flagGap = Gap + (LeastSlant / 2);
        var passesFlag = from.Stem == StemDirection.Up ? to.TopHead < from.FlagBounds?.Bottom + flagGap : to.BottomHead > from.FlagBounds?.Top - flagGap;
        return passesFlag && from.FlagBounds is { } flag ? Math.Max(right, flag.Right) : right;
    }

    /// <summary>Least distance of the columns of two notes of a measure that a slide joins, however far above or below each other they stand.</summary>
    /// <param name="from">The note it starts from.</param>
    /// <param name="to">The note it leads to.</param>
    /// <param name="events">All events of the measure.</param>
    public static double Distance(EventPlan from, EventPlan to, IReadOnlyList<EventPlan> events) =>
        RightTowards(from, to, events) + Room + Math.Min(MostMoreRoom, RoomPerSpace * Math.Abs(to.TopHead - from.TopHead)) - Reach(to, events).Left;

    private static double LeftInk(PlacedEvent e) => e.X + Reach(e.Plan, EventsOf(e)).Left;

    private static double RightInk(PlacedEvent e) => e.X + Reach(e.Plan, EventsOf(e)).Right;

    private static IEnumerable<EventPlan> EventsOf(PlacedEvent e) => e.Measure.Plan.Voices.SelectMany(v => v.Events);

    /// <summary>How far the ink of a note reaches to both sides: heads, brackets, ledger lines, signs and dots, and what stands beside them in the other voice.</summary>
    /// <param name="e">The note.</param>
    /// <param name="events">All events of its measure.</param>
    public static (double Left, double Right) Reach(EventPlan e, IEnumerable<EventPlan> events)
    {
        var (top, bottom) = (e.TopHead - Rise, e.BottomHead + Rise);
        var beside = events.Where(o => o.Event.Onset == e.Event.Onset && o.Voice != e.Voice && !o.IsCentred).SelectMany(o => o.Marks).Where(m => m.Bounds.Top < bottom && m.Bounds.Bottom > top);
        var ink = e.Marks.Concat(beside).Select(m => m.Bounds).ToList();
        return (ink.Min(b => b.Left), ink.Max(b => b.Right));
    }

    // A flag hangs where the line to its side of the head would start.
    private static double FlagRight(PlacedEvent e) => e.X + (e.Plan.FlagBounds?.Right ?? double.NegativeInfinity);

    /// <summary>Whether the note before slides to an event: it is not slid into from nowhere as well.</summary>
    public static bool IsReached(IReadOnlyList<PlacedEvent> voice, int index) => index > 0 && voice[index - 1].Plan.Event.Connection == Connection.Slide;

    private static void DrawLoose(StaffCanvas canvas, PlacedEvent e, bool isReached)
    {
        var (into, outOf) = (isReached ? LooseSlide.None : e.Plan.Event.SlideIn, e.Plan.Event.Connection == Connection.Slide ? LooseSlide.None : e.Plan.Event.SlideOut);
        foreach (var head in e.Plan.Heads)
        {
            if (into != LooseSlide.None)
            {
                var end = LeftInk(e) - Gap;
                canvas.Add(Line(end - LooseLength, head.Y + (into == LooseSlide.Below ? LooseRise : -LooseRise), end, head.Y, e.Plan.Origin));
            }
            if (outOf != LooseSlide.None)
            {
                var start = RightInk(e) + Gap;
                if (e.IsUp == (outOf == LooseSlide.Above)) start = Math.Max(start, FlagRight(e) + Gap);
                canvas.Add(Line(start, head.Y, start + LooseLength, head.Y + (outOf == LooseSlide.Below ? LooseRise : -LooseRise), e.Plan.Origin));
            }
        }
    }

    private static LineMark Line(double x1, double y1, double x2, double y2, MarkOrigin origin) =>
        new(new Point(x1, y1), new Point(x2, y2), Thickness) { Role = MarkRole.Slide, Origin = origin };
}

using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws the ties of a system, halves at its ends included.</summary>
internal static class TieDrawer
{
    // An outer tie starts a little inside the edge of the head it leaves, an inner one a little outside.
    private const double OuterInset = 0.35;
    private const double InnerGap = 0.15;

    // An outer tie on the side of a stem runs through none: it begins right of it and ends left of it (handbook practice, from memory), with this much white.
    private const double StemGap = 0.15;

    // Half the width of the end of a slash, and a little more.
    private const double SlashEnd = 0.6;

    // Over a staccato dot it starts at the edge.
    private const double InsetBesideDot = 0.15;

    // Half a tie at the start or end of a system is at least this long and keeps clear of clef, key and barline.
    private const double HalfTie = 1.4;
    private const double EdgeGap = 0.2;

    // An accidental of the note behind may reach under the tie's second head: the tie then ends this much at a time sooner.
    private const double AccidentalGap = 0.2;
    private const double EndStep = 0.1;
    private const double ShortestTie = 1;

    // A tie on the side of the flag of its note begins to the right of it (handbook practice, from memory), with this much white; so does
    // one that would touch a dot of its note.
    private const double FlagGap = 0.2;
    private const double StartStep = 0.1;
    private const double ShortestBesideFlag = 0.7;

    /// <summary>Draws all ties.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas)
    {
        foreach (var voice in frame.Voices)
        {
            for (var i = 0; i < voice.Length; i++)
            {
                var e = voice[i];
                var next = i + 1 < voice.Length ? voice[i + 1] : null;
                for (var t = 0; t < e.Plan.Heads.Length; t++)
                {
                    var head = e.Plan.Heads[t];
                    if (head.Tone.TieStart) DrawFrom(frame, canvas, e, t, next);
                    if (head.Tone.TieStop && frame.BeginsWith(e)) DrawInto(frame, canvas, e, t);
                }
            }
        }
    }

    private static void DrawFrom(SystemFrame frame, StaffCanvas canvas, PlacedEvent from, int index, PlacedEvent? to)
    {
        var head = from.Plan.Heads[index];
        var isMixed = IsMixed(from, to);
        var (outer, above) = isMixed ? (true, true) : Side(from, index);
        var inset = from.Plan.Event.Articulations.HasFlag(Articulations.Staccato) ? InsetBesideDot : OuterInset;
        var start = outer ? from.X + head.Right - inset : RightOfSecond(from, head) + InnerGap;
        var target = to is null ? -1 : IndexOf(to, head);
        double end;
        if (target < 0) end = Math.Max(start + HalfTie, frame.Boundaries[^1].X + frame.Boundaries[^1].Boundary.Left - EdgeGap);
        else end = outer ? to!.X + to.Plan.Heads[target].Left + OuterInset : LeftOfSecond(to!, to!.Plan.Heads[target]) - InnerGap;
        if (target < 0 && to is not null) end = Math.Min(end, start + HalfTie);
        // A slash leans: a tie below leads from foot to foot, one above from top to top.
        if (head.Tone.Head == Notehead.Slash && !above) start = Math.Min(start, from.X + head.Left + SlashEnd);
        if (head.Tone.Head == Notehead.Slash && above && target >= 0) end = Math.Max(end, to!.X + to.Plan.Heads[target].Right - SlashEnd);
        if (outer && HasStemOn(from, above)) start = Math.Max(start, from.StemX + StemRoom);
        if (outer && target >= 0 && HasStemOn(to!, above)) end = Math.Min(end, to!.StemX - StemRoom);
        var isFree = from.Plan.Heads.Length == 1 && !from.Measure.Plan.HasTwoVoices;
        CurveMark Tie(double left, double right, bool up) => Shape(outer, left, right, StepOf(head, up), up, from.Plan.Origin);
        start = BesideFlagAndDots(canvas, from, head, start, end, left => Tie(left, end, above));
        var (tie, turned) = InRoom(canvas, start, end, isFree, (right, turned) => Tie(start, right, above != turned));
        canvas.AddAll(TieAtSigns.Pass(canvas, tie, above != turned, (left, right) => Tie(left, right, above != turned)));
    }

    // Where the stems of two single notes point opposite ways the tie lies above (handbook practice, from memory): below it would run through the second stem. Over a flag there is no room for it.
    private static bool IsMixed(PlacedEvent from, PlacedEvent? to) =>
        to is not null && !from.Measure.Plan.HasTwoVoices && from.Plan is { HasStem: true, Heads.Length: 1 } && to.Plan is { HasStem: true, Heads.Length: 1 } && from.IsUp != to.IsUp
        && (from.Plan.FlagBounds is null || !from.IsUp);

    private static double StemRoom => StemGap + (Ink.Defaults.StemThickness / 2);

    private static bool HasStemOn(PlacedEvent e, bool above) => e.Plan.HasStem && e.IsUp == above;

    private static double BesideFlagAndDots(StaffCanvas canvas, PlacedEvent from, HeadPlan head, double start, double end, Func<double, CurveMark> shape)
    {
        if (from.Plan.FlagBounds is null && from.Plan.Event.Value.Dots == 0) return start;
        var right = Math.Max(RightOfDots(from, head), from.X + (from.Plan.FlagBounds?.Right ?? 0));
        var latest = Math.Min(right + FlagGap, end - ShortestBesideFlag);
        var room = new InkRoom(canvas, start - FlagGap, end, m => m.Role is MarkRole.Flag or MarkRole.Dot && m.Origin == from.Plan.Origin);
        while (start < latest && !room.IsFree(shape(start), FlagGap)) start = Math.Min(start + StartStep, latest);
        return start;
    }

    // Sooner, or on the other side where the tie is free to, rather than into an accidental.
    private static (CurveMark Tie, bool Turned) InRoom(StaffCanvas canvas, double start, double end, bool isFree, Func<double, bool, CurveMark> shape)
    {
        var usual = shape(end, false);
        var room = new InkRoom(canvas, start, end + AccidentalGap, m => m.Role == MarkRole.Accidental);
        if (room.IsFree(usual, AccidentalGap)) return (usual, false);
        foreach (var turned in isFree ? (ReadOnlySpan<bool>)[false, true] : [false])
        {
            for (var right = end; right >= Math.Min(end, start + ShortestTie); right -= EndStep)
            {
                if (shape(right, turned) is var tie && room.IsFree(tie, AccidentalGap)) return (tie, turned);
            }
        }
        return (usual, false);
    }

    private static void DrawInto(SystemFrame frame, StaffCanvas canvas, PlacedEvent to, int index)
    {
        var head = to.Plan.Heads[index];
        var (outer, above) = Side(to, index);
        var end = outer ? to.X + head.Left + OuterInset : LeftOfSecond(to, head) - InnerGap;
        if (outer && HasStemOn(to, above)) end = Math.Min(end, to.StemX - StemRoom);
        var start = Math.Min(end - HalfTie, Math.Max(frame.Boundaries[0].Boundary.Right + EdgeGap, end - (2 * HalfTie)));
        start = Math.Max(start, frame.Boundaries[0].Boundary.Right + EdgeGap);
        canvas.Add(InRoom(canvas, start, end, isFree: false, (right, _) => Shape(outer, start, right, StepOf(head, above), above, to.Plan.Origin)).Tie);
    }

    // A slash is twice as tall as a head.
    private static int StepOf(HeadPlan head, bool above) => head.Tone.Head != Notehead.Slash ? head.Step : head.Step + (above ? 1 : -1);

    private static CurveMark Shape(bool outer, double start, double end, int step, bool above, MarkOrigin origin) =>
        outer ? TieShape.Outer(start, end, step, above, origin) : TieShape.Inner(start, end, step, above, origin);

    // A single note's tie curves away from its stem; in two voices to the side of the voice. In a chord the upper ties curve up
    // and the lower ones down, and only the outermost one on the side without a stem lies outside the heads.
    private static (bool Outer, bool Above) Side(PlacedEvent e, int index)
    {
        var count = e.Plan.Heads.Length;
        var twoVoices = e.Measure.Plan.HasTwoVoices;
        if (count == 1) return (true, twoVoices ? e.Plan.Voice == 0 : !e.IsUp);
        var above = index >= (twoVoices && count == 2 ? 1 : LowestAbove(e));
        var outermost = above ? index == count - 1 : index == 0;
        return (outermost && (e.IsUp != above || !e.Plan.HasStem), above);
    }

    // Index of the lowest head whose tie curves up: half of them do, unless the ties of a second have to part.
    private static int LowestAbove(PlacedEvent e)
    {
        var heads = e.Plan.Heads;
        var half = heads.Length % 2 == 1 && !e.IsUp ? heads.Length / 2 : (heads.Length + 1) / 2;
        for (var distance = 0; distance < heads.Length; distance++)
        {
            foreach (var index in (ReadOnlySpan<int>)[half + distance, half - distance])
            {
                if (index > 0 && index < heads.Length && heads[index].Step - heads[index - 1].Step == 1) return index;
            }
        }
        return half;
    }

    // A head on the other side of the stem stands in the way of the tie a second above or below it.
    private static double LeftOfSecond(PlacedEvent e, HeadPlan head)
    {
        var left = e.X + head.Left;
        foreach (var other in e.Plan.Heads) if (Math.Abs(other.Step - head.Step) <= 1) left = Math.Min(left, e.X + other.Left);
        return left;
    }

    private static double RightOfSecond(PlacedEvent e, HeadPlan head)
    {
        var right = RightOfDots(e, head);
        foreach (var other in e.Plan.Heads) if (Math.Abs(other.Step - head.Step) <= 1) right = Math.Max(right, e.X + other.Right);
        return right;
    }

    private static double RightOfDots(PlacedEvent e, HeadPlan head)
    {
        var right = e.X + head.Right;
        foreach (var mark in e.Plan.Marks) if (mark.Role == MarkRole.Dot) right = Math.Max(right, e.X + mark.Bounds.Right);
        return right;
    }

    private static int IndexOf(PlacedEvent to, HeadPlan head)
    {
        for (var i = 0; i < to.Plan.Heads.Length; i++)
        {
            if (to.Plan.Heads[i].Tone.TieStop && to.Plan.Heads[i].Tone.Pitch == head.Tone.Pitch) return i;
        }
        return -1;
    }
}

namespace SheetPress.Engraving;

/// <summary>Draws slurs on the staff: phrasing slurs, and one over each chain of hammer-ons and pull-offs.</summary>
internal static class SlurDrawer
{
    // Ends stand off the heads and stems by this much.
    private const double EndGap = 0.4;

    // White between the arc and the notes under it.
    private const double NoteGap = 0.4;
    private const double AccidentalGap = 0.35;
    private const double SideGap = 0.3;
    private const double MostFloat = 0.3;

    // Beside an end that stands over the number of a tuplet the other one may move out this far, to be level with it.
    private const double MostFloatOverTuplet = 1.5;
    private const double BaseHeight = 0.5;
    private const double HeightPerSpace = 0.08;
    private const double MostHeight = 1.8;
    private const double HeightStep = 0.15;

    // Over a peak a long arc is arched up to this share of its length before its ends leave their notes.
    private const double HighestArch = 0.3;
    private const double EndStep = 0.1;
    private const int MostSteps = 30;

    // An arc that has to be raised by more steps than this looks for room on the other side; what it meets there keeps this white.
    private const int ManySteps = 4;

    // One end alone moves out no further than this many steps.
    private const int MostMoves = 8;

    // The arc on the side of the heads may stand off by this much more than one on the side of the stems.
    private const double HeadSideWorth = 2.5;

    private const double InkGap = 0.2;

    // Notes this near to the ends of the arc are its own; ties that begin or end with it lie inside.
    private const double EndReach = 1.3;
    private const double TieReach = 1;

    // Halves at the ends of a system keep clear of clef and barline.
    private const double EdgeGap = 0.3;

    /// <summary>Draws the slurs of hammer-ons and pull-offs, which lie next to their notes.</summary>
    public static void DrawLegato(SystemFrame frame, StaffCanvas canvas)
    {
        foreach (var voice in frame.Voices)
        {
            foreach (var (first, last) in SlurSpans.LegatoChains(voice)) DrawSlur(frame, canvas, voice, first, last);
        }
    }

    /// <summary>Draws phrasing slurs, outside fingers and articulations.</summary>
    public static void DrawPhrases(SystemFrame frame, StaffCanvas canvas)
    {
        foreach (var voice in frame.Voices)
        {
            foreach (var (first, last) in SlurSpans.Phrases(voice)) DrawSlur(frame, canvas, voice, first, last);
        }
    }

    /// <summary>Draws phrasing slurs over a tab that stands alone, those of a lower voice below it.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The tab.</param>
    /// <param name="bottomLine">y of its bottom line.</param>
    public static void DrawBesideTab(SystemFrame frame, StaffCanvas canvas, double bottomLine)
    {
        foreach (var voice in frame.Voices)
        {
            foreach (var (first, last) in SlurSpans.Phrases(voice))
            {
                var start = first < 0 ? frame.Boundaries[0].Boundary.Right + EdgeGap : voice[first].Centre;
                var end = last >= voice.Length ? frame.Boundaries[^1].X - EdgeGap : voice[last].Centre;
                var height = Math.Min(MostHeight, BaseHeight + (HeightPerSpace * (end - start)));
                var (origin, above) = (voice[Math.Max(0, first)].Plan.Origin with { Staff = 1 }, voice[Math.Max(0, first)].Plan.Voice == 0);
                var y = above ? -EndGap : bottomLine + EndGap;
                canvas.Place([Arc.Of(new Point(start, y), new Point(end, y), height, above, MarkRole.Slur, origin)], above, EndGap);
            }
        }
    }

    private static void DrawSlur(SystemFrame frame, StaffCanvas canvas, IReadOnlyList<PlacedEvent> voice, int first, int last)
    {
        var (from, to) = (Math.Max(0, first), Math.Min(voice.Count - 1, last));
        var notes = Enumerable.Range(from, to - from + 1).Select(i => voice[i]).Where(e => !e.Plan.Heads.IsEmpty).ToList();
        if (notes.Count == 0) return;
        var above = IsAbove(notes);
        var raised = Raised(frame, canvas, voice, first, last, notes, above);
        // Room on the other side, under the beam, is better than an arc that towers; but the side of the heads, where all stems agree, is worth some way.
        if (raised.Steps > ManySteps && !notes.Exists(e => e.Measure.Plan.HasTwoVoices))
        {
            var other = Raised(frame, canvas, voice, first, last, notes, !above);
            if (other.Unease + (notes.TrueForAll(e => e.IsUp != above) ? HeadSideWorth : 0) < raised.Unease) raised = other;
        }
        canvas.Add(raised.Arc);
    }

    // The arc on a side, by how many steps it had to be raised to clear what is under it, and how far its ends are from their notes and from level in all.
    private static (CurveMark Arc, int Steps, double Unease) Raised(SystemFrame frame, StaffCanvas canvas, IReadOnlyList<PlacedEvent> voice, int first, int last, List<PlacedEvent> notes, bool above)
    {
        var (from, to) = (Math.Max(0, first), Math.Min(voice.Count - 1, last));
        var away = above ? -1 : 1;
        var start = first < 0 ? new Point(frame.Boundaries[0].Boundary.Right + EdgeGap, OpenY(notes, above)) : End(notes[0], above);
        var end = last >= voice.Count ? new Point(frame.Boundaries[^1].X - EdgeGap, OpenY(notes, above)) : End(notes[^1], above);
        var (startNote, endNote) = (start.Y, end.Y);
        var origin = notes[0].Plan.Origin;
        // The ends stand outside the fingers and tuplets of their notes.
        var outer = new InkRoom(canvas, start.X - EndGap, end.X + EndGap, m => m.Role is MarkRole.Finger or MarkRole.Tuplet);
        start = start with { Y = outer.Beyond(start.X - InkGap, start.X + InkGap, start.Y - (away * EndGap), above) + (away * EndGap) };
        end = end with { Y = outer.Beyond(end.X - InkGap, end.X + InkGap, end.Y - (away * EndGap), above) + (away * EndGap) };
        var near = start;
        var tuplets = canvas.Marks.Where(m => m.Role == MarkRole.Tuplet).Select(m => m.Bounds).ToList();
        bool IsOverTuplet(Point arcEnd) => tuplets.Exists(t => t.Left < arcEnd.X + InkGap && t.Right > arcEnd.X - InkGap && Math.Abs((above ? t.Top : t.Bottom) - arcEnd.Y) < 2 * EndGap);
        var mostFloat = IsOverTuplet(start) || IsOverTuplet(end) ? MostFloatOverTuplet : MostFloat;
        (start, end) = Slanted(near, end, away, mostFloat);
        if (last + 1 < voice.Count && BeforeAccidentals(end, notes[^1], voice[last + 1], above) is var moved && moved != end) (start, end) = Slanted(near, moved, away, mostFloat);
        var height = Math.Min(MostHeight, BaseHeight + (HeightPerSpace * (end.X - start.X)));
        var accidentals = Accidentals(voice, from, to);
        var (startX, endX) = (start.X, end.X);
        var room = new InkRoom(canvas, start.X - InkGap, end.X + InkGap, m => IsInWay(m, startX, endX));
        CurveMark? found = null;
        var steps = 0;
        for (; found is null; steps++)
        {
            // An arc bulges a little more at first; then the end that stands further out moves on, or the other, or the whole of it,
            // so that it does not tower over what it clears.
            var (bulges, moves) = (Math.Min(steps, ManySteps), Math.Max(0, steps - ManySteps));
            CurveMark Arched(int atStart, int atEnd, double arch) => Arc.Of(
                start.Offset(0, away * EndStep * (bulges + (2 * atStart))), end.Offset(0, away * EndStep * (bulges + (2 * atEnd))), arch, above, MarkRole.Slur, origin);
            CurveMark Moved(int atStart, int atEnd) => Arched(atStart, atEnd, height + (HeightStep * (bulges + (moves / 3.0))));
            bool IsClear(CurveMark arc) => Clears(arc, notes, accidentals, above) && room.IsFree(arc, InkGap);
            var endIsOuter = (end.Y - start.Y) * away > 0;
            CurveMark[] arcs = moves is 0 or > MostMoves ? [Moved(moves, moves)] : endIsOuter ? [Moved(0, moves), Moved(moves, 0), Moved(moves, moves)] : [Moved(moves, 0), Moved(0, moves), Moved(moves, moves)];
            var arch = Math.Min(height + (HeightStep * (bulges + (2 * moves))), HighestArch * (end.X - start.X));
            found = Array.Find([Arched(0, 0, arch), .. arcs], IsClear) ?? (steps == MostSteps ? arcs[^1] : null);
        }
        return (found, steps - 1, Math.Abs(found.Start.Y - startNote) + Math.Abs(found.End.Y - endNote) + Math.Abs(found.End.Y - found.Start.Y));
    }

    private static bool IsInWay(Mark mark, double start, double end)
    {
        var bounds = mark.Bounds;
        bool Reaches(double x, double reach) => bounds.Left < x + reach && bounds.Right > x - reach;
        return mark.Role switch
        {
            MarkRole.Accidental or MarkRole.Articulation or MarkRole.Slide or MarkRole.Tuplet or MarkRole.Finger or MarkRole.Rest => true,
            MarkRole.Notehead or MarkRole.Stem or MarkRole.Flag or MarkRole.Beam or MarkRole.Dot => !Reaches(start, EndReach) && !Reaches(end, EndReach),
            MarkRole.Tie or MarkRole.Slur when mark is CurveMark arc =>
                Math.Abs(arc.Start.X - start) >= TieReach && Math.Abs(arc.End.X - end) >= TieReach && Math.Abs(arc.End.X - start) >= TieReach && Math.Abs(arc.Start.X - end) >= TieReach,
            _ => false,
        };
    }

    // Outer ends on one side of a stem may lie far apart: the arc keeps a gentle slant, the inner end moves out, but no further from
    // its note than the eye connects them.
    private static (Point Start, Point End) Slanted(Point start, Point end, int away, double mostFloat)
    {
        var most = Math.Max(Math.Max(1, (end.X - start.X) * 0.35), Math.Abs(end.Y - start.Y) - mostFloat);
        if (Math.Abs(end.Y - start.Y) <= most) return (start, end);
        return (end.Y - start.Y) * away > 0 ? (start with { Y = end.Y - (away * most) }, end) : (start, end with { Y = start.Y - (away * most) });
    }

    // On the side of the heads when all stems agree; above otherwise. In two voices on the side of the voice.
    private static bool IsAbove(List<PlacedEvent> notes)
    {
        if (notes.Exists(e => e.Measure.Plan.HasTwoVoices)) return notes[0].Plan.Voice == 0;
        return !notes.TrueForAll(e => e.IsUp);
    }

    private static Point End(PlacedEvent e, bool above)
    {
        var atStem = e.Plan.HasStem && e.IsUp == above;
        return new Point(atStem ? e.StemX : e.Centre, EndY(e, above));
    }

    // Where a slur goes on in another system its end stays outside all of its notes, so that it does not seem to close.
    private static double OpenY(List<PlacedEvent> notes, bool above) => above ? notes.Min(e => EndY(e, above)) : notes.Max(e => EndY(e, above));

    private static double EndY(PlacedEvent e, bool above) => e.Edge(above) + (above ? -EndGap : EndGap);

    private static bool Clears(CurveMark arc, List<PlacedEvent> notes, IReadOnlyList<(Box Box, bool IsBehind)> accidentals, bool above)
    {
        foreach (var (box, isBehind) in accidentals)
        {
            if (box.Right <= arc.Start.X + 0.1 || box.Left >= arc.End.X - 0.1) continue;
            // The arc falls steeply to its ends: a little beside the sign it may not be lower either.
            var (a, b) = (YAt(arc, Math.Max(box.Left - SideGap, arc.Start.X)), YAt(arc, Math.Min(box.Right + SideGap, arc.End.X)));
            var (outside, inside) = (Math.Max(a, b) <= box.Top - AccidentalGap, Math.Min(a, b) >= box.Bottom + AccidentalGap);
            // That of the note behind the last may also stand on the far side of the arc.
            if (!(above ? outside : inside) && !(isBehind && (above ? inside : outside))) return false;
        }
        foreach (var (e, i) in notes.Select((e, i) => (e, i)))
        {
            // A steep arc comes nearer to the heads at its ends than to those it passes.
            var gap = i == 0 || i == notes.Count - 1 ? InkGap : NoteGap;
            foreach (var x in (ReadOnlySpan<double>)[e.Left, e.Centre, e.Right])
            {
                if (x <= arc.Start.X + 0.1 || x >= arc.End.X - 0.1) continue;
                var y = YAt(arc, x);
                var edge = e.Edge(above);
                if (above ? y > edge - gap : y < edge + gap) return false;
            }
        }
        return true;
    }

    // An accidental of the note behind that reaches over the last note: the arc ends a little sooner, or outside it.
    private static Point BeforeAccidentals(Point end, PlacedEvent last, PlacedEvent behind, bool above)
    {
        foreach (var mark in behind.Plan.Marks)
        {
            if (mark.Role != MarkRole.Accidental) continue;
            var box = mark.Bounds.Transform(1, behind.X, 0);
            if (end.Y <= box.Top - AccidentalGap || end.Y >= box.Bottom + AccidentalGap || box.Left - SideGap >= end.X) continue;
            end = box.Left - SideGap >= last.Left
                ? end with { X = box.Left - SideGap }
                : end with { Y = above ? box.Top - AccidentalGap : box.Bottom + AccidentalGap };
        }
        return end;
    }

    // Of the notes under the arc but the first, before which it starts, and of the one behind the last.
    private static List<(Box Box, bool IsBehind)> Accidentals(IReadOnlyList<PlacedEvent> voice, int from, int to)
    {
        var boxes = new List<(Box, bool)>();
        for (var i = from + 1; i <= Math.Min(voice.Count - 1, to + 1); i++)
        {
            foreach (var mark in voice[i].Plan.Marks)
            {
                if (mark.Role == MarkRole.Accidental) boxes.AddRange(InkCover.Of(mark).Select(b => (b.Transform(1, voice[i].X, 0), i > to)));
            }
        }
        return boxes;
    }

    private static double YAt(CurveMark arc, double x)
    {
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 20; i++)
        {
            var middle = (low + high) / 2;
            if (arc.At(middle).X < x) low = middle;
            else high = middle;
        }
        return arc.At(low).Y;
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws what joins fret numbers: slides as slanted lines, hammer-ons and pull-offs as arcs with a small letter.</summary>
internal static class TabJoins
{
    /// <summary>Room for a slide to the next number, so long that it is seen between numbers of two digits.</summary>
    public const double SlideRoom = 2;

    /// <summary>Room for a slide from or to nowhere, so that a piece of the string is seen between its free end and the next number.</summary>
    public const double LooseRoom = 1.75;

    private const double LineThickness = 0.16;

    // A slide on one string rises or falls by this much either side of its line.
    private const double SlideRise = 0.5;
    private const double SlideGap = 0.25;

    // One from or to nowhere leaves its line to one side, half the way to the next: across its line it would seem to lead to the next number.
    private const double LooseLength = 1;
    private const double LooseStart = 0.15;
    private const double LooseRise = 0.85;

    // A loose slide is moved in such steps, at most so far, where it would touch a number on the next string.
    private const double ClearStep = 0.1;
    private const double MostClear = 1.5;
    private static readonly ImmutableArray<double> ShorterSlides = [1, 0.8, 0.6, 0.45];

    // Arcs start over the numbers, this far from their ink.
    private const double ArcGap = 0.25;
    private const double ArcHeight = 0.55;
    private const double ArcPerSpace = 0.05;
    private const double MostArc = 1.2;

    // An arc is flatter where a flag would touch it.
    private const double LeastArc = 0.35;
    private const double ArcStep = 0.05;
    private const double FlagGap = 0.2;
    private const double LetterGap = 0.2;
    private const double NumberGap = 0.15;

    /// <summary>Draws all joins of a tab.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The tab.</param>
    /// <param name="bottomLine">y of its bottom line.</param>
    /// <param name="sizes">Sizes of text.</param>
    /// <param name="besidePops">Whether notes of the exercise are popped: a single P at an arc would be read as one of their letters.</param>
    /// <returns>The box around the letters of all arcs; empty where there are none.</returns>
    public static Box Draw(SystemFrame frame, StaffCanvas canvas, double bottomLine, TextSizes sizes, bool besidePops)
    {
        var letters = new List<(RowItem Letter, double Y, bool Above)>();
        foreach (var voice in frame.Voices)
        {
            for (var i = 0; i < voice.Length; i++)
            {
                var e = voice[i];
                if (e.Plan.Event.IsRest) continue;
                DrawLoose(canvas, e, isReached: SlideDrawer.IsReached(voice, i), sizes);
                if (i + 1 >= voice.Length || voice[i + 1].Plan.Event.IsRest) continue;
                switch (e.Plan.Event.Connection)
                {
                    case Connection.Slide:
                        DrawSlide(canvas, e, voice[i + 1], sizes);
                        break;
                    case Connection.HammerOn:
                        DrawArc(frame, canvas, e, voice[i + 1], besidePops ? "HO" : "H", sizes, letters);
                        break;
                    case Connection.PullOff:
                        DrawArc(frame, canvas, e, voice[i + 1], besidePops ? "PO" : "P", sizes, letters);
                        break;
                    default:
                        break;
                }
            }
        }
        var boxes = new List<Box>();
        foreach (var (letter, y, above) in letters)
        {
            List<Mark> marks = [.. letter.MarksAt(y)];
            var box = Box.Around(marks.Select(m => m.Bounds));
            var room = new InkRoom(canvas, box.Left - NumberGap, box.Right + NumberGap, _ => true);
            // Where stems and beams stand around the arc its letter stays between them.
            if ((above ? box.Bottom < 0 : box.Top > bottomLine) && marks.TrueForAll(m => room.IsFree(m, NumberGap))) canvas.AddAll(marks);
            else box = box.Transform(1, 0, canvas.Place(marks, above, LetterGap));
            boxes.Add(box);
        }
        return Box.Around(boxes);
    }

    /// <summary>The box of the number of a tone, or null when it shows none.</summary>
    public static Box? NumberBox(PlacedEvent e, FretPosition position, TextSizes sizes)
    {
        var y = FretNumbers.LineY(position.String);
        foreach (var mark in FretNumbers.Of(e.Plan, sizes, showTied: true))
        {
            var box = mark.Bounds;
            if (box.Top < y && y < box.Bottom) return box.Transform(1, e.X, 0);
        }
        return null;
    }

    private static void DrawSlide(StaffCanvas canvas, PlacedEvent from, PlacedEvent to, TextSizes sizes)
    {
        for (var i = 0; i < Math.Min(from.Plan.Event.Tones.Length, to.Plan.Event.Tones.Length); i++)
        {
            if (from.Plan.Event.Tones[i].Position is not { } a || to.Plan.Event.Tones[i].Position is not { } b) continue;
            if (NumberBox(from, a, sizes) is not { } left || NumberBox(to, b, sizes) is not { } right) continue;
            var rise = a.String != b.String ? 0 : Math.Sign(b.Fret - a.Fret) * SlideRise;
            var line = Slide(left.Right + SlideGap, FretNumbers.LineY(a.String) + rise, right.Left - SlideGap, FretNumbers.LineY(b.String) - rise, from.Plan.Origin);
            canvas.AddAll(LineGaps.Break(line, canvas.Marks.Where(m => m.Role == MarkRole.FretNumber && m.Origin.Voice != line.Origin.Voice)));
        }
    }

    private static void DrawLoose(StaffCanvas canvas, PlacedEvent e, bool isReached, TextSizes sizes)
    {
        foreach (var tone in e.Plan.Event.Tones)
        {
            if (tone.Position is not { } position || NumberBox(e, position, sizes) is not { } box) continue;
            var y = FretNumbers.LineY(position.String);
            if (e.Plan.Event.SlideIn != LooseSlide.None && !isReached)
            {
                var side = e.Plan.Event.SlideIn == LooseSlide.Below ? 1 : -1;
                DrawClear(canvas, Slide(box.Left - SlideGap - LooseLength, y + (side * LooseRise), box.Left - SlideGap, y + (side * LooseStart), e.Plan.Origin), -ClearStep);
            }
            if (e.Plan.Event.SlideOut != LooseSlide.None && e.Plan.Event.Connection != Connection.Slide)
            {
                var side = e.Plan.Event.SlideOut == LooseSlide.Below ? 1 : -1;
                DrawClear(canvas, Slide(box.Right + SlideGap, y + (side * LooseStart), box.Right + SlideGap + LooseLength, y + (side * LooseRise), e.Plan.Origin), ClearStep);
            }
        }
    }

    // A number on the next string that is wider, such as one in brackets, would touch the slide: it stands beside both, shorter where
    // another number follows closely.
    private static void DrawClear(StaffCanvas canvas, LineMark slide, double step)
    {
        var numbers = new InkRoom(canvas, slide.Bounds.Left - MostClear, slide.Bounds.Right + MostClear, m => m.Role == MarkRole.FretNumber);
        foreach (var share in ShorterSlides)
        {
            var clear = step > 0 ? slide with { To = Along(slide.From, slide.To, share) } : slide with { From = Along(slide.To, slide.From, share) };
            for (var moved = 0.0; moved < MostClear; moved += ClearStep, clear = (LineMark)clear.Transform(1, step, 0))
            {
                if (!numbers.IsFree(clear, NumberGap)) continue;
                canvas.Add(clear);
                return;
            }
        }
        canvas.Add(slide);
    }

    private static Point Along(Point from, Point to, double share) => new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));

    private static LineMark Slide(double x1, double y1, double x2, double y2, MarkOrigin origin) =>
        new(new Point(x1, y1), new Point(x2, y2), LineThickness) { Role = MarkRole.Slide, Origin = origin with { Staff = 1 } };

    private static void DrawArc(SystemFrame frame, StaffCanvas canvas, PlacedEvent from, PlacedEvent to, string letter, TextSizes sizes, List<(RowItem, double, bool)> letters)
    {
        if (NumbersOf(from, sizes) is not { } left || NumbersOf(to, sizes) is not { } right) return;
        var origin = from.Plan.Origin with { Staff = 1 };
        var (start, end) = (from.Centre, to.Centre);
        var height = Math.Min(MostArc, ArcHeight + (ArcPerSpace * (end - start)));
        CurveMark On(bool above)
        {
            var y = above ? Math.Min(left.Top, right.Top) - ArcGap : Math.Max(left.Bottom, right.Bottom) + ArcGap;
            return Arc.Of(new Point(start, y), new Point(end, y), height, above, MarkRole.Slur, origin);
        }
        // The lower of two voices has its arcs below. Where the numbers of the other voice stand in its way an arc goes to the other side.
        var room = new InkRoom(canvas, start, end, m => m.Role == MarkRole.FretNumber);
        var isAbove = !from.Measure.Plan.HasTwoVoices || from.Plan.Voice == 0;
        if (!room.IsFree(On(isAbove), NumberGap) && room.IsFree(On(!isAbove), NumberGap)) isAbove = !isAbove;
        var flags = new InkRoom(canvas, start - FlagGap, end + FlagGap, m => m.Role == MarkRole.Flag);
        while (height > LeastArc && !flags.IsFree(On(isAbove), FlagGap)) height -= ArcStep;
        var arc = On(isAbove);
        canvas.Add(arc);
        var text = new SymbolBuilder(MarkRole.Technique).Text(letter, TextFont.Sans, sizes.Small).Build();
        var item = RowItem.Centred(text, (start + end) / 2, origin);
        item = item with { X = item.X + BarlineRoom.Move(frame, text.Bounds.Transform(1, item.X, 0)) };
        var off = height + (arc.MiddleThickness / 2) + LetterGap;
        letters.Add((item, isAbove ? arc.Start.Y - off : arc.Start.Y + off - text.Bounds.Top, isAbove));
    }

    private static Box? NumbersOf(PlacedEvent e, TextSizes sizes)
    {
        Box? ink = null;
        foreach (var tone in e.Plan.Event.Tones)
        {
            if (tone.Position is { } position && NumberBox(e, position, sizes) is { } box) ink = ink?.Union(box) ?? box;
        }
        return ink;
    }
}

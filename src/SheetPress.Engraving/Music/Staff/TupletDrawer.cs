using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws tuplets: a number on the beam, a bracket where there is no beam of the same notes, on the side of the stems.</summary>
internal static class TupletDrawer
{
    private const double NumberScale = 0.85;
    private const double NumberGap = 0.35;
    private const double BracketGap = 0.5;

    // White to a finger, which the number would be read with.
    private const double FingerGap = 0.65;
    private const double NumberSide = 0.2;

    // A bracket comes this near to the one before it, so that both stand at one height.
    private const double BracketSide = 0.16;
    private const double Hook = 0.7;

    // White between the number and the ends of the bracket beside it.
    private const double NumberSpace = 0.35;

    // A bracket slants with its outer notes, but less.
    private const double SlantShare = 0.5;
    private const double MostSlant = 1;

    // A smaller slant looks like a slip.
    private const double LeastSlant = 0.4;

    /// <summary>Draws the tuplets of the staff.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas)
    {
        foreach (var measure in frame.Measures)
        {
            for (var v = 0; v < measure.Voices.Length; v++)
            {
                var plan = measure.Plan.Voices[v];
                foreach (var tuplet in plan.Tuplets.OrderByDescending(t => t.Level))
                {
                    var events = measure.Voices[v][tuplet.First..(tuplet.Last + 1)];
                    var above = IsAbove(events, v, measure.Plan.HasTwoVoices);
                    var isBeam = IsBeam(plan, tuplet) && !events.Any(e => e.Plan.HasStem && e.IsUp != above);
                    Draw(canvas, events, tuplet.Actual, isBeam, above, e => e.Edge(above));
                }
            }
        }
    }

    /// <summary>Draws the tuplets of the rhythm above or below a tab that stands alone.</summary>
    public static void DrawBesideTab(PlacedMeasure measure, int voice, StaffCanvas canvas, bool above, double stemEnd)
    {
        var plan = measure.Plan.Voices[voice];
        foreach (var tuplet in plan.Tuplets.OrderByDescending(t => t.Level))
        {
            var events = measure.Voices[voice][tuplet.First..(tuplet.Last + 1)];
            Draw(canvas, events, tuplet.Actual, IsBeam(plan, tuplet), above, _ => stemEnd);
        }
    }

    // A tuplet with another inside has a bracket around it, so that its number is not taken for the other's.
    private static bool IsBeam(VoicePlan plan, TupletSpan tuplet) =>
        plan.Groups.Contains(new BeamGroup(tuplet.First, tuplet.Last)) && !plan.Tuplets.Any(t => t.Level > tuplet.Level && t.First >= tuplet.First && t.Last <= tuplet.Last);

    private static void Draw(StaffCanvas canvas, IReadOnlyList<PlacedEvent> events, int number, bool isBeam, bool above, Func<PlacedEvent, double> edge)
    {
        var (first, last) = (events[0], events[^1]);
        var origin = first.Plan.Origin;
        var digits = Number(number, origin);
        var size = digits.Bounds;
        if (isBeam)
        {
            var (left, right) = (Outer(first, above), Outer(last, above));
            var middle = (left + right) / 2;
            // On a slanted beam the number stands off the beam at its own place, not at its ends.
            var beam = (EdgeOf(first, edge) + EdgeOf(last, edge)) / 2;
            var y = above ? beam - NumberGap - size.Bottom : beam + NumberGap - size.Top;
            canvas.Place(digits.At(middle - (size.Width / 2) - size.Left, y).Marks, above, NumberGap, NumberSide, IsFinger, FingerGap);
            return;
        }
        canvas.Place(Bracket(events, digits, above, edge, origin), above, BracketGap, BracketSide, IsFinger, FingerGap);
    }

    private static bool IsFinger(Mark mark) => mark.Role == MarkRole.Finger;

    private static double Outer(PlacedEvent e, bool above) => e.Plan.HasStem && e.Plan.Heads.Length > 0 && e.IsUp == above ? e.StemX : e.Centre;

    private static double EdgeOf(PlacedEvent e, Func<PlacedEvent, double> edge) => e.Plan.Event.IsRest ? StaffSteps.Middle : edge(e);

    private static List<Mark> Bracket(IReadOnlyList<PlacedEvent> events, SymbolLayout digits, bool above, Func<PlacedEvent, double> edge, MarkOrigin origin)
    {
        var away = above ? -1 : 1;
        var (left, right) = (events[0].Left, events[^1].Right);
        var notes = events.Where(e => !e.Plan.Event.IsRest).ToList();
        var slant = Slant(notes, above, edge);
        // Brackets stay outside the staff.
        var y = (above ? 0 : StaffSteps.BottomLine) + (away * BracketGap) + (slant * away > 0 ? 0 : -slant);
        var (leftY, rightY) = (y, y + slant);
        var (middle, size) = ((left + right) / 2, digits.Bounds);
        var middleY = (leftY + rightY) / 2;
        var thickness = Ink.Defaults.TupletBracketThickness;
        double At(double x) => leftY + (slant * (x - left) / (right - left));
        LineMark Line(double x1, double y1, double x2, double y2) => new(new Point(x1, y1), new Point(x2, y2), thickness) { Role = MarkRole.Tuplet, Origin = origin };
        var (gapLeft, gapRight) = (middle - (size.Width / 2) - NumberSpace, middle + (size.Width / 2) + NumberSpace);
        var marks = new List<Mark>(digits.At(middle - (size.Width / 2) - size.Left, middleY - ((size.Top + size.Bottom) / 2)).Marks);
        marks.Add(Line(left, leftY, left, leftY - (away * Hook)));
        marks.Add(Line(right, rightY, right, rightY - (away * Hook)));
        if (gapLeft > left) marks.Add(Line(left - (thickness / 2), leftY, gapLeft, At(gapLeft)));
        if (gapRight < right) marks.Add(Line(gapRight, At(gapRight), right + (thickness / 2), rightY));
        return marks;
    }

    // Stems of different lengths or directions tilt no bracket against the line of its notes, and two notes make no line:
    // a slanted bracket as short as theirs looks crooked.
    private static double Slant(List<PlacedEvent> notes, bool above, Func<PlacedEvent, double> edge)
    {
        var rise = notes.Count < 3 ? 0 : edge(notes[^1]) - edge(notes[0]);
        // Beside a tab, where there are no heads to look at, all stems end level.
        if (rise == 0) return 0;
        double Head(PlacedEvent e) => above ? e.Plan.TopHead : e.Plan.BottomHead;
        return (Head(notes[^1]) - Head(notes[0])) * rise <= 0 || Math.Abs(rise * SlantShare) < LeastSlant ? 0 : Math.Clamp(rise * SlantShare, -MostSlant, MostSlant);
    }

    private static SymbolLayout Number(int number, MarkOrigin origin)
    {
        var builder = new SymbolBuilder(MarkRole.Tuplet);
        foreach (var digit in number.ToString(CultureInfo.InvariantCulture)) builder.Glyph($"tuplet{digit}", NumberScale);
        var layout = builder.Build();
        return new SymbolLayout(new Drawing([.. layout.Drawing.Marks.Select(m => m with { Origin = origin })]), layout.Advance);
    }

    private static bool IsAbove(IReadOnlyList<PlacedEvent> events, int voice, bool twoVoices)
    {
        if (twoVoices) return voice == 0;
        var notes = events.Where(e => !e.Plan.Event.IsRest).ToList();
        return notes.Count == 0 || notes.Count(e => e.IsUp) * 2 >= notes.Count;
    }
}

using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Draws bends as a curved arrow from the number (or head) up over the staff, with their amount.</summary>
internal static class BendDrawer
{
    private const double Thickness = 0.14;
    private const double Start = 0.2;
    private const double Width = 1.0;
    private const double Rise = 1.2;
    private const double ArrowWidth = 0.6;
    private const double ArrowLength = 0.75;
    private const double TextGap = 0.25;
    private const double Gap = 0.4;

    // Where both voices bend at once the arrow of the lower stands this much further off, its amount beside that of the upper.
    private const double SecondAside = 2.6;

    // White to what crosses the arrow, and into how many pieces it is parted to find the place.
    private const double CrossingGap = 0.25;
    private const int Pieces = 40;

    // How far the tip of an arrow is raised at a time, and how often at most.
    private const double Step = 0.25;
    private const int MostSteps = 12;

    // One, two and three quarters of a whole step.
    private const string Fractions = "¼½¾";

    /// <summary>Draws the bends of a tab, from their numbers.</summary>
    public static void DrawOnTab(SystemFrame frame, StaffCanvas canvas, TextSizes sizes)
    {
        foreach (var e in frame.Events)
        {
            if (e.Plan.Event.BendHalfSteps is not { } amount || NumberEnd(e, sizes) is not { } from) continue;
            var origin = e.Plan.Origin with { Staff = 1 };
            var (x, y) = (from.X + Start, from.Y);
            var arrow = x + Width + Aside(e.Plan, e.Measure.Plan.Voices.SelectMany(v => v.Events));
            var tip = FreeTip(canvas, arrow, Math.Min(-Rise, y - (2 * Rise)), origin);
            foreach (var mark in Arrow(x, y, arrow, tip, origin).ToList()) canvas.AddAll(mark is CurveMark curve ? Interrupted(canvas, curve) : [mark]);
            var text = Text(amount, arrow, tip, sizes, origin).ToList();
            var aside = BarlineRoom.Move(frame, Box.Around(text.Select(m => m.Bounds)));
            canvas.Place([.. text.Select(m => m.Transform(1, aside, 0))], above: true, TextGap);
        }
    }

    /// <summary>Draws bends over a staff without tab, clear of everything on it.</summary>
    public static void DrawOverStaff(SystemFrame frame, StaffCanvas canvas, TextSizes sizes)
    {
        foreach (var e in frame.Events)
        {
            if (e.Plan.Event.BendHalfSteps is not { } amount || e.Plan.Heads.IsEmpty) continue;
            const double tip = -Gap - (2 * Rise);
            List<Mark> marks = [.. Arrow(e.Centre, -Gap, e.Centre + Width, tip, e.Plan.Origin), .. Text(amount, e.Centre + Width, tip, sizes, e.Plan.Origin)];
            canvas.Place(marks, above: true, Gap);
        }
    }

    /// <summary>How much further than others the arrow of a bent note stands from its number: beside that of a note of the upper voice that is bent with it.</summary>
    /// <param name="e">The note.</param>
    /// <param name="events">All events of its measure.</param>
    public static double Aside(EventPlan e, IEnumerable<EventPlan> events) =>
        events.Any(o => o.Voice < e.Voice && o.Event.Onset == e.Event.Onset && o.Event.BendHalfSteps is not null) ? SecondAside : 0;

    // The arrow ends beyond a tie of the other voice or the letter of another join that lies where its head would be.
    private static double FreeTip(StaffCanvas canvas, double arrow, double tip, MarkOrigin origin)
    {
        var room = new InkRoom(canvas, arrow - ArrowWidth - CrossingGap, arrow + ArrowWidth + CrossingGap, Crosses);
        for (var step = 0; step < MostSteps && !room.IsFree(Head(arrow, tip, origin), CrossingGap); step++) tip -= Step;
        return tip;
    }

    private static bool Crosses(Mark mark) => mark.Role is MarkRole.Slide or MarkRole.Tie or MarkRole.Slur || mark is TextMark { Role: MarkRole.Technique };

    // The arrow is broken where a slide or a tie of the other voice passes.
    private static List<Mark> Interrupted(StaffCanvas canvas, CurveMark arrow)
    {
        var room = new InkRoom(canvas, arrow.Bounds.Left - CrossingGap, arrow.Bounds.Right + CrossingGap, Crosses);
        var parts = new List<Mark>();
        var begun = -1;
        for (var i = 0; i <= Pieces; i++)
        {
            var isFree = i < Pieces && room.IsFree(arrow.Part((double)i / Pieces, (i + 1.0) / Pieces), CrossingGap);
            if (isFree && begun < 0) begun = i;
            if (isFree || begun < 0) continue;
            parts.Add(arrow.Part((double)begun / Pieces, (double)i / Pieces));
            begun = -1;
        }
        return parts;
    }

    private static IEnumerable<Mark> Arrow(double x, double y, double arrow, double tip, MarkOrigin origin)
    {
        var end = tip + ArrowLength;
        yield return new CurveMark(new Point(x, y), new Point(x + ((arrow - x) * 0.8), y), new Point(arrow, y + ((end - y) * 0.4)), new Point(arrow, end), Thickness, Thickness) { Role = MarkRole.Technique, Origin = origin };
        yield return Head(arrow, tip, origin);
    }

    private static PolygonMark Head(double arrow, double tip, MarkOrigin origin)
    {
        var end = tip + ArrowLength;
        ImmutableArray<Point> corners = [new(arrow - (ArrowWidth / 2), end), new(arrow + (ArrowWidth / 2), end), new(arrow, tip)];
        return new PolygonMark(corners) { Role = MarkRole.Technique, Origin = origin };
    }

    private static IEnumerable<Mark> Text(double amount, double x, double tip, TextSizes sizes, MarkOrigin origin)
    {
        var words = Amount(amount);
        // The figures of a fraction are much smaller than other text of its size.
        var size = words.AsSpan().ContainsAny(Fractions) ? sizes.Fraction : sizes.Small;
        var text = new SymbolBuilder(MarkRole.Technique).Text(words, TextFont.Sans, size).Build();
        return RowItem.Centred(text, x, origin).MarksAt(tip - TextGap - text.Bounds.Bottom);
    }

    private static Point? NumberEnd(PlacedEvent e, TextSizes sizes)
    {
        foreach (var tone in e.Plan.Event.Tones)
        {
            if (tone.Position is { } position && TabJoins.NumberBox(e, position, sizes) is { } box) return new Point(box.Right, FretNumbers.LineY(position.String));
        }
        return null;
    }

    // Amounts in whole steps, as players read them.
    private static string Amount(double halfSteps)
    {
        var quarters = (int)Math.Round(halfSteps * 2);
        var whole = quarters / 4;
        var rest = quarters % 4 == 0 ? "" : Fractions[(quarters % 4) - 1].ToString();
        if (quarters == 4) return "full";
        return whole == 0 ? rest : whole.ToString(System.Globalization.CultureInfo.InvariantCulture) + rest;
    }
}

using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>
/// Draws articulations after the handbooks (from memory): staccato and tenuto beside the head on the side without the stem, in
/// spaces of the staff; accents outside the staff on that side; strong accents and fermatas above. In two voices all stand on
/// the side of the voice: at the end of a stem a staccato dot alone over the stem, everything else over the head, as fingers do.
/// </summary>
internal static class ArticulationDrawer
{
    private const double Gap = 0.3;
    private const double Beside = 0.2;
    private const double FermataGap = 0.5;

    // More white than on a staff, whose heads are smaller than the numbers on the outer line.
    private const double TabGap = 0.45;

    // Near to a string a tenuto would be taken for a piece of its line, and over a number for a part of it.
    private const double TabTenutoGap = 0.6;

    // In the staff a sign keeps this much white from ties, accidentals and the notes beside its own, enough on a staff set a fifth smaller too.
    private const double InkGap = 0.19;

    // How far a wide sign is moved off the accidental of its own note: too little to be seen.
    private const double Aside = 0.05;

    private const string Tenuto = "articTenuto";

    private static readonly (Articulations Kind, string Name)[] Signs =
    [
        (Articulations.Staccato, "articStaccato"), (Articulations.Tenuto, Tenuto), (Articulations.Accent, "articAccent"), (Articulations.Marcato, "articMarcato"),
    ];

    /// <summary>Draws the articulations that stand next to their notes.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas)
    {
        foreach (var e in frame.Events.Where(e => !e.Plan.Heads.IsEmpty))
        {
            var twoVoices = e.Measure.Plan.HasTwoVoices;
            int? near = null;
            foreach (var (kind, name) in SignsOf(e.Plan.Event))
            {
                var above = IsAbove(e.Plan, kind, twoVoices);
                if (IsNear(kind)) near = DrawNear(canvas, e, name, above, near ?? OuterStep(e.Plan, above));
                else DrawOutside(canvas, e, name, above);
            }
        }
    }

    /// <summary>
    /// Where the signs of a note will stand if nothing is in their way, from its column: what follows keeps clear of them, since an
    /// accidental beside a sign would drive it off its note.
    /// </summary>
    /// <param name="e">The note.</param>
    /// <param name="twoVoices">Whether the staff holds two voices.</param>
    public static IEnumerable<Box> Rooms(EventPlan e, bool twoVoices)
    {
        if (e.Heads.IsEmpty) yield break;
        int? near = null;
        foreach (var (kind, name) in SignsOf(e.Event))
        {
            var above = IsAbove(e, kind, twoVoices);
            if (IsNear(kind) && IsByHead(e, above))
            {
                near = NextSpace(near ?? OuterStep(e, above), above, name);
                yield return InSpace(e, name, above, near.Value).Bounds;
                continue;
            }
            var edge = e.Edge(above, e.StemTip);
            yield return AtRest(e, name, above, IsNear(kind) ? edge : Outside(edge, above)).Bounds;
        }
    }

    /// <summary>
    /// x from the column on which the signs of an event stand on a side: the middle of the head, but of the stem where a staccato dot alone
    /// stands at its end. A finger beside that dot would be read as a number with a point.
    /// </summary>
    /// <param name="e">The event.</param>
    /// <param name="above">The side.</param>
    /// <param name="twoVoices">Whether its measure has two voices.</param>
    public static double Axis(EventPlan e, bool above, bool twoVoices) =>
        e.Event.Articulations == Articulations.Staccato && IsAbove(e, Articulations.Staccato, twoVoices) == above && !IsByHead(e, above) ? e.StemX : e.Centre;

    private static IEnumerable<(Articulations Kind, string Name)> SignsOf(ScoreEvent note) => Signs.Where(s => note.Articulations.HasFlag(s.Kind));

    private static bool IsAbove(EventPlan e, Articulations kind, bool twoVoices) =>
        twoVoices ? e.Voice == 0 : kind == Articulations.Marcato || e.Stem == StemDirection.Down;

    private static bool IsNear(Articulations kind) => kind is Articulations.Staccato or Articulations.Tenuto;

    private static int OuterStep(EventPlan e, bool above) => e.Heads[above ? ^1 : 0].Step;

    private static bool IsByHead(EventPlan e, bool above) => !e.HasStem || (e.Stem == StemDirection.Up) != above;

    // The step of the next space off a head or another sign; outside the staff a space away, but for a tenuto not where a ledger line
    // would be, which it would be taken for.
    private static int NextSpace(int step, bool above, string name)
    {
        var away = above ? 1 : -1;
        var next = step + (2 * away);
        return StaffSteps.IsLine(next) && (IsInsideStaff(next) || name == Tenuto) ? next + away : next;
    }

    private static bool IsInsideStaff(int step) => Math.Abs(step) <= StaffSteps.TopLineStep;

    private static GlyphMark InSpace(EventPlan e, string name, bool above, int step)
    {
        var bounds = Ink.Glyph(name + (above ? "Above" : "Below")).Bounds;
        return Ink.Centred(name + (above ? "Above" : "Below"), e.Centre, StaffSteps.Y(step) - ((bounds.Top + bounds.Bottom) / 2), MarkRole.Articulation, e.Origin);
    }

    // A sign beyond an edge, with x from the column.
    private static GlyphMark AtRest(EventPlan e, string name, bool above, double edge) =>
        Ink.Centred(name + (above ? "Above" : "Below"), e.Centre, edge + (above ? -Gap : Gap), MarkRole.Articulation, e.Origin);

    private static double Outside(double edge, bool above) => above ? Math.Min(0, edge) : Math.Max(StaffSteps.BottomLine, edge);

    /// <summary>The same in the row beside a tab that stands alone, where y is without meaning.</summary>
    public static IEnumerable<Box> RoomsBesideTab(EventPlan e) =>
        e.Event.IsRest ? [] : SignsOf(e.Event).Where(s => s.Kind != Articulations.Staccato).Select(s => Ink.Centred(s.Name + "Above", e.Centre, 0, MarkRole.Articulation, e.Origin).Bounds);

    /// <summary>Draws articulations over a tab that stands alone, for a lower voice below it, the shortest marks nearest to the numbers.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The tab.</param>
    /// <param name="bottomLine">y of its bottom line.</param>
    public static void DrawBesideTab(SystemFrame frame, StaffCanvas canvas, double bottomLine)
    {
        foreach (var e in frame.Events.Where(e => !e.Plan.Event.IsRest))
        {
            foreach (var (kind, name) in SignsOf(e.Plan.Event))
            {
                var above = e.Plan.Voice == 0;
                var gap = kind == Articulations.Tenuto ? TabTenutoGap : TabGap;
                var mark = Ink.Centred(name + (above ? "Above" : "Below"), e.Centre, above ? -gap : bottomLine + gap, MarkRole.Articulation, e.Plan.Origin with { Staff = 1 });
                var move = canvas.Place([mark], above, Gap, Beside, m => m.Role != MarkRole.Articulation, gap);
                e.AddArticulation(above, mark.Bounds.Transform(1, 0, move));
            }
        }
    }

    /// <summary>Draws fermatas, which stand outside everything that belongs to the notes.</summary>
    public static void DrawFermatas(SystemFrame frame, StaffCanvas canvas, double bottomLine)
    {
        foreach (var e in frame.Events.Where(e => e.Plan.Event.Articulations.HasFlag(Articulations.Fermata)))
        {
            var above = e.Plan.Voice == 0;
            var mark = Ink.Centred(above ? "fermataAbove" : "fermataBelow", e.Centre, above ? -FermataGap : bottomLine + FermataGap, MarkRole.Articulation, e.Plan.Origin);
            canvas.Place([mark], above, FermataGap);
        }
    }

    // In the next space off the head; outside the staff a space away. Returns the step it took.
    private static int DrawNear(StaffCanvas canvas, PlacedEvent e, string name, bool above, int step)
    {
        if (!IsByHead(e.Plan, above))
        {
            var glyph = name + (above ? "Above" : "Below");
            var bounds = Ink.Glyph(glyph).Bounds;
            var edge = e.StemTip + (above ? -Gap - bounds.Bottom : Gap - bounds.Top);
            var x = e.X + Axis(e.Plan, above, e.Measure.Plan.HasTwoVoices);
            Place(canvas, e, Ink.Centred(glyph, x, edge, MarkRole.Articulation, e.Plan.Origin), above);
            return step;
        }
        // Ties, accidentals and close neighbours keep their place: the sign goes on to the next space that is free.
        var place = step;
        while (true)
        {
            place = NextSpace(place, above, name);
            var mark = InSpace(e.Plan, name, above, place).Transform(1, e.X, 0);
            if (!IsInsideStaff(place))
            {
                PlaceByNote(canvas, e, mark, above);
                return place;
            }
            if (FreeBy(canvas, mark, InkGap, m => IsInWay(m, e)) is not { } free) continue;
            Add(canvas, e, free, above);
            return place;
        }
    }

    // The sign where it is, or a hair aside of the accidental of its own note; null where neither has room.
    private static Mark? FreeBy(StaffCanvas canvas, Mark mark, double reach, Func<Mark, bool> isInWay)
    {
        var room = new InkRoom(canvas, mark.Bounds.Left - reach, mark.Bounds.Right + reach + Aside, isInWay);
        if (room.IsFree(mark, InkGap)) return mark;
        var beside = mark.Transform(1, Aside, 0);
        return room.IsFree(beside, InkGap) ? beside : null;
    }

    private static bool IsInWay(Mark mark, PlacedEvent e) => mark.Role switch
    {
        MarkRole.Tie or MarkRole.Accidental => true,
        MarkRole.Notehead or MarkRole.LedgerLine or MarkRole.Stem or MarkRole.Flag or MarkRole.Beam or MarkRole.Dot or MarkRole.Rest or MarkRole.Slide or MarkRole.Articulation => mark.Origin != e.Plan.Origin,
        _ => false,
    };

    private static void Place(StaffCanvas canvas, PlacedEvent e, Mark mark, bool above)
    {
        var move = canvas.Place([mark], above, Gap, Beside);
        e.AddArticulation(above, mark.Bounds.Transform(1, 0, move));
    }

    private static void DrawOutside(StaffCanvas canvas, PlacedEvent e, string name, bool above) =>
        PlaceByNote(canvas, e, AtRest(e.Plan, name, above, Outside(e.Edge(above), above)).Transform(1, e.X, 0), above);

    // Where it has room next to its note it stands there, also under the accidental of a high note that follows.
    private static void PlaceByNote(StaffCanvas canvas, PlacedEvent e, Mark mark, bool above)
    {
        if (FreeBy(canvas, mark, Gap, _ => true) is { } free) Add(canvas, e, free, above);
        else Place(canvas, e, mark, above);
    }

    private static void Add(StaffCanvas canvas, PlacedEvent e, Mark mark, bool above)
    {
        canvas.Add(mark);
        e.AddArticulation(above, mark.Bounds);
    }
}

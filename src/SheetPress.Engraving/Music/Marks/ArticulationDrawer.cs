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

    // Near to a string a tenuto would be taken for a piece of its line, and over a number for a part of it.
    private const double TabTenutoGap = 0.6;

    // In the staff a sign keeps this much white from ties, accidentals and the notes beside its own.
    private const double InkGap = 0.16;

    private static readonly (Articulations Kind, string Name)[] Signs =
    [
        (Articulations.Staccato, "articStaccato"), (Articulations.Tenuto, "articTenuto"), (Articulations.Accent, "articAccent"), (Articulations.Marcato, "articMarcato"),
    ];

    /// <summary>Draws the articulations that stand next to their notes.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas)
    {
        foreach (var e in frame.Events.Where(e => !e.Plan.Heads.IsEmpty))
        {
            var set = e.Plan.Event.Articulations;
            if (set == Articulations.None) continue;
            var twoVoices = e.Measure.Plan.HasTwoVoices;
            var above = twoVoices ? e.Plan.Voice == 0 : !e.IsUp;
            var step = above ? e.Plan.Heads[^1].Step : e.Plan.Heads[0].Step;
            var byHead = !e.Plan.HasStem || e.IsUp != above;
            if (set.HasFlag(Articulations.Staccato)) step = Near(canvas, e, "articStaccato", above, step, byHead);
            if (set.HasFlag(Articulations.Tenuto)) Near(canvas, e, "articTenuto", above, step, byHead);
            if (set.HasFlag(Articulations.Accent)) DrawOutside(canvas, e, "articAccent", above);
            if (set.HasFlag(Articulations.Marcato)) DrawOutside(canvas, e, "articMarcato", !twoVoices || above);
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
        foreach (var (kind, name) in WideSigns(e.Event))
        {
            var above = twoVoices ? e.Voice == 0 : kind == Articulations.Marcato || e.Stem == StemDirection.Down;
            var edge = e.Edge(above, e.StemTip);
            yield return AtRest(e, name, above, kind == Articulations.Tenuto ? edge : Outside(edge, above)).Bounds;
        }
    }

    // A sign beyond an edge, with x from the column.
    private static GlyphMark AtRest(EventPlan e, string name, bool above, double edge) =>
        Ink.Centred(name + (above ? "Above" : "Below"), e.Centre, edge + (above ? -Gap : Gap), MarkRole.Articulation, e.Origin);

    private static double Outside(double edge, bool above) => above ? Math.Min(0, edge) : Math.Max(StaffSteps.BottomLine, edge);

    /// <summary>The same in the row beside a tab that stands alone, where y is without meaning.</summary>
    public static IEnumerable<Box> RoomsBesideTab(EventPlan e) =>
        WideSigns(e.Event).Select(s => Ink.Centred(s.Name + "Above", e.Centre, 0, MarkRole.Articulation, e.Origin).Bounds);

    private static IEnumerable<(Articulations Kind, string Name)> WideSigns(ScoreEvent note) =>
        Signs.Where(s => s.Kind != Articulations.Staccato && !note.IsRest && note.Articulations.HasFlag(s.Kind));

    /// <summary>Draws articulations over a tab that stands alone, for a lower voice below it, the shortest marks nearest to the numbers.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The tab.</param>
    /// <param name="bottomLine">y of its bottom line.</param>
    public static void DrawBesideTab(SystemFrame frame, StaffCanvas canvas, double bottomLine)
    {
        foreach (var e in frame.Events.Where(e => !e.Plan.Event.IsRest))
        {
            foreach (var (kind, name) in Signs)
            {
                if (!e.Plan.Event.Articulations.HasFlag(kind)) continue;
                var above = e.Plan.Voice == 0;
                var gap = kind == Articulations.Tenuto ? TabTenutoGap : Gap;
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
    private static int Near(StaffCanvas canvas, PlacedEvent e, string name, bool above, int step, bool byHead)
    {
        var away = above ? 1 : -1;
        var glyph = name + (above ? "Above" : "Below");
        var bounds = Ink.Glyph(glyph).Bounds;
        var middle = (bounds.Top + bounds.Bottom) / 2;
        if (!byHead)
        {
            var edge = e.StemTip + (above ? -Gap - bounds.Bottom : Gap - bounds.Top);
            var x = e.Plan.Event.Articulations == Articulations.Staccato ? e.StemX : e.Centre;
            Place(canvas, e, Ink.Centred(glyph, x, edge, MarkRole.Articulation, e.Plan.Origin), above);
            return step;
        }
        // Ties, accidentals and close neighbours keep their place: the sign goes on to the next space that is free.
        var place = step;
        bool insideStaff;
        Mark mark;
        do
        {
            place += 2 * away;
            insideStaff = Math.Abs(place) <= StaffSteps.TopLineStep;
            if (insideStaff && StaffSteps.IsLine(place)) place += away;
            mark = Ink.Centred(glyph, e.Centre, StaffSteps.Y(place) - middle, MarkRole.Articulation, e.Plan.Origin);
        }
        while (insideStaff && !new InkRoom(canvas, mark.Bounds.Left - InkGap, mark.Bounds.Right + InkGap, m => IsInWay(m, e)).IsFree(mark, InkGap));
        if (insideStaff)
        {
            canvas.Add(mark);
            e.AddArticulation(above, mark.Bounds);
        }
        else
        {
            Place(canvas, e, mark, above);
        }
        return place;
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

    // Where it has room next to its note it stands there, also under the accidental of a high note that follows.
    private static void DrawOutside(StaffCanvas canvas, PlacedEvent e, string name, bool above)
    {
        var mark = AtRest(e.Plan, name, above, Outside(e.Edge(above), above)).Transform(1, e.X, 0);
        if (!new InkRoom(canvas, mark.Bounds.Left - Gap, mark.Bounds.Right + Gap, _ => true).IsFree(mark, InkGap))
        {
            Place(canvas, e, mark, above);
            return;
        }
        canvas.Add(mark);
        e.AddArticulation(above, mark.Bounds);
    }
}

using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws fretting fingers as small numerals, the highest tone on top: above the staff, for a lower voice below it.</summary>
internal static class FingerDrawer
{
    // White to the staff or note.
    private const double Gap = 0.4;
    private const double TabGap = 0.45;

    // White to a stem beside the numeral: more than there is beside the stem of its own note, so that a numeral
    // goes over a stem that rises above the staff and is never squeezed in beside it.
    private const double Beside = 0.35;

    // White to a tenuto, which would underline the numeral, and to numbers of frets and tuplets, which would be read with it.
    private const double ReadGap = 0.8;

    // The finger of a bent note stands over the arrow: beside it the arrow would seem to begin at the finger.
    private const double BesideBend = 1;

    // More than notes keep from each other: the accidental of a note close behind would be read with it.
    private const double SideRoom = 0.2;

    /// <summary>Draws the fingers of a staff, each as near to its note as it can be.</summary>
    public static void DrawOverStaff(SystemFrame frame, StaffCanvas canvas)
    {
        foreach (var e in frame.Events)
        {
            var above = e.Plan.Voice == 0;
            DrawRow(canvas, [e], above ? 0 : StaffSteps.BottomLine, staff: 0, above);
        }
    }

    /// <summary>Draws the fingers of a tab that stands alone, each side in one row; a note that is bent has its own over the arrow.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The tab.</param>
    /// <param name="top">y of what no finger above the tab is below: its top line, or the letters over it.</param>
    /// <param name="bottom">The same below the tab.</param>
    public static void DrawOverTab(SystemFrame frame, StaffCanvas canvas, double top, double bottom)
    {
        foreach (var above in (bool[])[true, false])
        {
            var side = frame.Events.Where(e => (e.Plan.Voice == 0) == above).ToLookup(e => e.Plan.Event.BendHalfSteps is null);
            DrawRow(canvas, side[true], above ? top : bottom, staff: 1, above);
            foreach (var bent in side[false]) DrawRow(canvas, [bent], above ? top : bottom, staff: 1, above, above ? BesideBend : Beside);
        }
    }

    private static void DrawRow(StaffCanvas canvas, IEnumerable<PlacedEvent> events, double edge, int staff, bool above, double beside = Beside)
    {
        var stacks = events.Select(e => (Event: e, Marks: Stack(e.Plan.Event, staff == 0 ? e.X + ArticulationDrawer.Axis(e.Plan, above, e.Measure.Plan.HasTwoVoices) : e.Centre, edge, above, e.Plan.Origin with { Staff = staff }))).Where(s => s.Marks.Count > 0).ToList();
        if (stacks.Count == 0) return;
        var move = canvas.Place([.. stacks.SelectMany(s => s.Marks)], above, staff == 0 ? Gap : TabGap, beside, IsReadWith, ReadGap);
        foreach (var (e, marks) in stacks)
        {
            foreach (var mark in marks) e.AddArticulation(above, mark.Bounds.Transform(1, 0, move));
        }
    }

    private static bool IsReadWith(Mark mark) => mark.Role == MarkRole.FretNumber
        || mark is GlyphMark { Role: MarkRole.Tuplet } or GlyphMark { Role: MarkRole.Articulation, Glyph.Name: "articTenutoAbove" or "articTenutoBelow" };

    /// <summary>The box of the fingers of an event beyond an edge, empty where it has none.</summary>
    /// <param name="note">The event.</param>
    /// <param name="centre">x of their middle.</param>
    /// <param name="edge">y of the outermost ink of staff and note.</param>
    /// <param name="above">Whether they stand above it.</param>
    public static Box Room(ScoreEvent note, double centre, double edge, bool above)
    {
        var box = Box.Around(Stack(note, centre, edge, above, default).Select(m => m.Bounds));
        return box.IsEmpty ? box : box with { Left = box.Left - SideRoom, Right = box.Right + SideRoom };
    }

    private static List<Mark> Stack(ScoreEvent note, double centre, double edge, bool above, MarkOrigin origin) =>
        ToneStack.Of(note, NameOf, centre, edge + (above ? -Gap : Gap), above, origin);

    private static string? NameOf(Tone tone) => tone.Finger is { } finger ? string.Create(CultureInfo.InvariantCulture, $"fingering{finger}") : null;
}

using System.Collections.Frozen;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws the numbers of strings in circles, outside the fingers: above the staff, for a lower voice below it.</summary>
internal static class StringNumberDrawer
{
    // Circles as wide as a note head, so that they are not louder than the fingers.
    private const double Scale = 0.7;
    private const double Gap = 0.35;
    private const double Beside = 0.3;

    /// <summary>Draws the numbers of a system.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The staff.</param>
    /// <param name="shown">The events that have one, by measure, voice and event.</param>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, FrozenSet<(int Measure, int Voice, int Event)> shown)
    {
        foreach (var e in frame.Events)
        {
            var origin = e.Plan.Origin;
            if (!shown.Contains((origin.Measure, origin.Voice, origin.Event))) continue;
            var above = origin.Voice == 0;
            canvas.Place(Stack(e.Plan.Event, e.X + ArticulationDrawer.Axis(e.Plan, above, e.Measure.Plan.HasTwoVoices), above, origin), above, Gap, Beside);
        }
    }

    /// <summary>The room that they take beside each other.</summary>
    public static Box Room(ScoreEvent note) => Box.Around(Stack(note, 0, above: true, default).Select(m => m.Bounds));

    private static List<Mark> Stack(ScoreEvent note, double centre, bool above, MarkOrigin origin) =>
        ToneStack.Of(note, NameOf, centre, above ? -Gap : StaffSteps.BottomLine + Gap, above, origin, Scale);

    private static string? NameOf(Tone tone) => tone.Position is { } position ? string.Create(CultureInfo.InvariantCulture, $"guitarString{position.String}") : null;
}

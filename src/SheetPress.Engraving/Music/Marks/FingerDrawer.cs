using System.Globalization;

namespace SheetPress.Engraving;

/// <summary>Draws fretting fingers as small numerals, the highest tone on top: above the staff, for a lower voice below it.</summary>
internal static class FingerDrawer
{
    // White to the staff or note, and between the numerals of a chord.
    private const double Gap = 0.3;
    private const double StackGap = 0.2;

    // White to a stem beside the numeral: more than there is beside the stem of its own note, so that a numeral
    // goes over a stem that rises above the staff and is never squeezed in beside it.
    private const double Beside = 0.35;

    /// <summary>Draws the fingers of a staff.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The staff or tab.</param>
    /// <param name="bottomLine">y of its bottom line.</param>
    /// <param name="staff">Index of the staff, for the origin.</param>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, double bottomLine, int staff)
    {
        foreach (var e in frame.Events)
        {
            var above = e.Plan.Voice == 0;
            var tones = e.Plan.Event.Tones.Where(t => t.Finger is not null && !t.TieStop).ToList();
            if (tones.Count == 0) continue;
            var marks = new List<Mark>();
            var y = above ? -Gap : bottomLine + Gap;
            // Outward from the staff: above it the lowest tone comes first, below it the highest.
            if (!above) tones.Reverse();
            foreach (var tone in tones)
            {
                var name = string.Create(CultureInfo.InvariantCulture, $"fingering{tone.Finger}");
                var bounds = Ink.Glyph(name).Bounds;
                marks.Add(Ink.Centred(name, e.Centre, above ? y - bounds.Bottom : y - bounds.Top, MarkRole.Finger, e.Plan.Origin with { Staff = staff }));
                y += (above ? -1 : 1) * (bounds.Height + StackGap);
            }
            var move = canvas.Place(marks, above, Gap, Beside);
            foreach (var mark in marks) e.AddArticulation(above, mark.Bounds.Transform(1, 0, move));
        }
    }
}

using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Glyphs for the tones of an event over each other, outward from the staff: above it the lowest tone comes first, below it the highest.</summary>
internal static class ToneStack
{
    // White between them.
    private const double Gap = 0.2;

    /// <summary>The glyphs of the tones that are struck.</summary>
    /// <param name="note">The event.</param>
    /// <param name="glyphOf">Name of the glyph of a tone; null for none.</param>
    /// <param name="centre">x of their middle.</param>
    /// <param name="near">y of the near end of the first.</param>
    /// <param name="above">Whether they stand above the staff.</param>
    /// <param name="origin">Origin of the marks.</param>
    /// <param name="scale">Size of the glyphs.</param>
    public static List<Mark> Of(ScoreEvent note, Func<Tone, string?> glyphOf, double centre, double near, bool above, MarkOrigin origin, double scale = 1)
    {
        var marks = new List<Mark>();
        foreach (var tone in above ? note.Tones : note.Tones.Reverse())
        {
            if (tone.TieStop || glyphOf(tone) is not { } name) continue;
            var bounds = Ink.Glyph(name).Bounds;
            marks.Add(Ink.Centred(name, centre, near - ((above ? bounds.Bottom : bounds.Top) * scale), MarkRole.Finger, origin, scale));
            near += (above ? -1 : 1) * ((bounds.Height * scale) + Gap);
        }
        return marks;
    }
}

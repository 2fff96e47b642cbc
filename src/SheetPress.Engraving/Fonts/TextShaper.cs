namespace SheetPress.Engraving;

/// <summary>
/// Shapes text with HarfBuzz: kerning on, ligatures off, so that every glyph keeps its characters in the PDF. The default
/// figures of all shipped faces are tabular (one width, no kerning), so numbers stand in columns without more ado.
/// Safe for any number of threads.
/// </summary>
public static class TextShaper
{
    private static readonly ShapeCache<TextRun> Runs = new();
    private static readonly ShapeCache<IReadOnlyList<TextRun>> Texts = new();

    /// <summary>Shapes text in one font; characters the font lacks make runs of their own in a fallback font of the system.</summary>
    /// <remarks>
    /// A character that no font has becomes the font's empty box (glyph 0); <see cref="MissingCharacters"/> finds them on
    /// the finished document. The signs for flat, sharp and natural are not in the text fonts: set them as glyphs of the music font.
    /// </remarks>
    /// <param name="text">Text without line breaks.</param>
    /// <param name="font">The font.</param>
    /// <returns>Runs from left to right, none for an empty text; each starts where the one before it ends.</returns>
    public static IReadOnlyList<TextRun> Shape(string text, TextFont font) => Texts.Get(text, font, ShapeByCoverage);

    /// <summary>Shapes text that is known to be in the font (fret numbers, words of the program) as exactly one run; characters the font lacks become empty boxes.</summary>
    /// <param name="text">Text without line breaks.</param>
    /// <param name="font">The font.</param>
    public static TextRun Run(string text, TextFont font) => Runs.Get(text, font, ShapeAsOne);

    /// <summary>Width of a text in em.</summary>
    public static double Measure(string text, TextFont font)
    {
        var width = 0.0;
        foreach (var run in Shape(text, font))
        {
            width += run.Advance;
        }
        return width;
    }

    private static TextRun ShapeAsOne(string text, TextFont font)
    {
        var shaped = TextFace.Of(font).Shape(text);
        return new TextRun(text, font, shaped.Glyphs, shaped.Advance, shaped.Ink);
    }

    private static IReadOnlyList<TextRun> ShapeByCoverage(string text, TextFont font)
    {
        if (text.Length == 0)
        {
            return [];
        }
        var runs = new List<TextRun>();
        foreach (var (part, fallback) in FallbackFonts.Split(text, font))
        {
            if (fallback is null)
            {
                runs.Add(ShapeAsOne(part, font));
            }
            else
            {
                var shaped = fallback.Face.Shape(part);
                runs.Add(new TextRun(part, font, shaped.Glyphs, shaped.Advance, shaped.Ink, fallback.Name));
            }
        }
        return runs;
    }
}

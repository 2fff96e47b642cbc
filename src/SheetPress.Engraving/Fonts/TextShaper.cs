namespace SheetPress.Engraving;

/// <summary>
/// Shapes text with HarfBuzz: kerning on, ligatures off, so that every glyph keeps its characters in the PDF. The default
/// figures of all shipped faces are tabular (one width, no kerning), so numbers stand in columns without more ado.
/// Safe for any number of threads.
/// </summary>
public static class TextShaper
{
    /// <summary>A text that begins with it is written from right to left; it is no part of what is drawn.</summary>
    internal const string RightToLeftMark = "\u200F";

    private static readonly ShapeCache<TextRun> Runs = new();
    private static readonly ShapeCache<IReadOnlyList<TextRun>> Texts = new();

    /// <summary>Shapes text in one font; characters the font lacks make runs of their own in a fallback font of the system.</summary>
    /// <remarks>
    /// A character that no font has becomes the font's empty box (glyph 0); <see cref="MissingCharacters"/> finds them on
    /// the finished document. The signs for flat, sharp and natural are not in the text fonts: set them as glyphs of the music font.
    /// </remarks>
    /// <param name="text">Text without line breaks; what is written to the left stands as <see cref="BidiLevels"/> has it, by the direction of its first strong character.</param>
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
        if (BidiClasses.HasRightToLeft(text))
        {
            return ShapeInOrder(text, font);
        }
        var runs = new List<TextRun>();
        foreach (var (part, fallback) in FallbackFonts.Split(text, font))
        {
            runs.Add(ShapePart(part, font, fallback, rightToLeft: null));
        }
        return runs;
    }

    // Parts of one direction and one font, in the order in which they stand.
    private static List<TextRun> ShapeInOrder(string text, TextFont font)
    {
        var levels = BidiLevels.Of(text, BidiLevels.BaseLevel(text));
        var parts = new List<(string Part, FallbackFont? Fallback)>();
        var partLevels = new List<byte>();
        for (var start = 0; start < text.Length;)
        {
            var end = start;
            while (end < text.Length && levels[end] == levels[start])
            {
                end++;
            }
            // The mark of direction has said what it had to say.
            var stretch = text[start..end].Replace(RightToLeftMark, "", StringComparison.Ordinal);
            if (stretch.Length > 0)
            {
                parts.AddRange(FallbackFonts.Split(stretch, font));
            }
            while (partLevels.Count < parts.Count)
            {
                partLevels.Add(levels[start]);
            }
            start = end;
        }
        var runs = new List<TextRun>(parts.Count);
        foreach (var i in BidiLevels.VisualOrder([.. partLevels]))
        {
            runs.Add(ShapePart(parts[i].Part, font, parts[i].Fallback, partLevels[i] % 2 == 1));
        }
        return runs;
    }

    private static TextRun ShapePart(string part, TextFont font, FallbackFont? fallback, bool? rightToLeft)
    {
        var shaped = (fallback?.Face ?? TextFace.Of(font)).Shape(part, rightToLeft);
        return new TextRun(part, font, shaped.Glyphs, shaped.Advance, shaped.Ink, fallback?.Name);
    }
}

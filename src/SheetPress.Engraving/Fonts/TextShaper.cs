namespace SheetPress.Engraving;

/// <summary>Shapes text with HarfBuzz: kerning on, standard ligatures off, so that every glyph keeps its character in the PDF.</summary>
public static class TextShaper
{
    /// <summary>Shapes text in one font; characters the font lacks make runs of their own in a fallback font.</summary>
    /// <param name="text">Text without line breaks.</param>
    /// <param name="font">The font.</param>
    public static IReadOnlyList<TextRun> Shape(string text, TextFont font) => throw new NotImplementedException();

    /// <summary>Width of a text in em.</summary>
    public static double Measure(string text, TextFont font) => Shape(text, font).Sum(r => r.Advance);
}

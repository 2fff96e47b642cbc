namespace SheetPress.Engraving;

/// <summary>The room a line of text takes from top to bottom: its leading, or more when a piece stands out of it.</summary>
public static class LineBox
{
    /// <summary>Distance from the top of the line to its baseline.</summary>
    public static double Baseline(SetLine line, TextStyle style) => Math.Max(Half(style) + (TextStyle.Ascent * style.Size), line.Ascent);

    /// <summary>Height of the line.</summary>
    public static double Height(SetLine line, TextStyle style) =>
        Baseline(line, style) + Math.Max(Half(style) + (TextStyle.Descent * style.Size), line.Descent);

    // Leading beyond ascent and descent, above and below in equal parts.
    private static double Half(TextStyle style) => (style.Leading - ((TextStyle.Ascent + TextStyle.Descent) * style.Size)) / 2;
}

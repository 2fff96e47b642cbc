namespace SheetPress.Engraving;

/// <summary>How one kind of text looks: size, distance of lines, and the faces for its emphases.</summary>
public sealed record TextStyle
{
    /// <summary>Length of a typographic point in millimetres: an inch of 25.4 mm has 72.</summary>
    public const double Point = 25.4 / 72;

    /// <summary>The smallest em that may be printed, seven points, in millimetres.</summary>
    public const double SmallestSize = 7 * Point;

    /// <summary>Share of the em above the baseline that a line of text takes (ascenders).</summary>
    public const double Ascent = 0.74;

    /// <summary>Share of the em below the baseline that a line of text takes (descenders).</summary>
    public const double Descent = 0.24;

    /// <summary>Length of the em in millimetres.</summary>
    public double Size { get; }

    /// <summary>Distance of two baselines in millimetres.</summary>
    public double Leading { get; }

    /// <summary>Face of plain text.</summary>
    public TextFont Upright { get; }

    /// <summary>Face of emphasis.</summary>
    public TextFont Italic { get; }

    /// <summary>Face of strong emphasis.</summary>
    public TextFont Strong { get; }

    /// <summary>Face of code.</summary>
    public static TextFont Code => TextFont.Sans;

    /// <summary>Makes a style.</summary>
    /// <param name="points">Size in points, 7 or more.</param>
    /// <param name="leadingPoints">Distance of baselines in points, not below the size.</param>
    /// <param name="upright">Face of plain text.</param>
    /// <param name="italic">Face of emphasis.</param>
    /// <param name="strong">Face of strong emphasis.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is below seven points or the leading below the size.</exception>
    public TextStyle(double points, double leadingPoints, TextFont upright, TextFont italic, TextFont strong)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 7);
        ArgumentOutOfRangeException.ThrowIfLessThan(leadingPoints, points);
        Size = points * Point;
        Leading = leadingPoints * Point;
        Upright = upright;
        Italic = italic;
        Strong = strong;
    }

    /// <summary>Face of both emphases at once, of the family of <see cref="Strong"/>.</summary>
    public TextFont StrongItalic => Strong is TextFont.SerifSemiBold or TextFont.SerifBold ? TextFont.SerifSemiBoldItalic : TextFont.SansSemiBoldItalic;

    /// <summary>The face of an emphasis; code wins over the others.</summary>
    public TextFont FontOf(Emphasis emphasis) =>
        emphasis.HasFlag(Emphasis.Code) ? Code
        : emphasis.HasFlag(Emphasis.Strong | Emphasis.Italic) ? StrongItalic
        : emphasis.HasFlag(Emphasis.Strong) ? Strong
        : emphasis.HasFlag(Emphasis.Italic) ? Italic
        : Upright;
}

/// <summary>Emphasis of a stretch of text; values can be joined.</summary>
[Flags]
public enum Emphasis
{
    /// <summary>Plain.</summary>
    None = 0,
    /// <summary>Emphasis.</summary>
    Italic = 1,
    /// <summary>Strong emphasis.</summary>
    Strong = 2,
    /// <summary>Code: set as written.</summary>
    Code = 4,
    /// <summary>Underlined.</summary>
    Underlined = 8,
}

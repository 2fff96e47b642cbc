namespace SheetPress.Engraving;

/// <summary>The text faces that are shipped with the program.</summary>
public enum TextFont
{
    /// <summary>Source Serif 4 Regular.</summary>
    Serif,
    /// <summary>Source Serif 4 Italic.</summary>
    SerifItalic,
    /// <summary>Source Serif 4 SemiBold.</summary>
    SerifSemiBold,
    /// <summary>Source Serif 4 Bold.</summary>
    SerifBold,
    /// <summary>Source Sans 3 Regular.</summary>
    Sans,
    /// <summary>Source Sans 3 Italic.</summary>
    SansItalic,
    /// <summary>Source Sans 3 SemiBold.</summary>
    SansSemiBold,
    /// <summary>Source Sans 3 Bold.</summary>
    SansBold,
    /// <summary>Source Serif 4 SemiBold Italic.</summary>
    SerifSemiBoldItalic,
    /// <summary>Source Sans 3 SemiBold Italic.</summary>
    SansSemiBoldItalic,
}

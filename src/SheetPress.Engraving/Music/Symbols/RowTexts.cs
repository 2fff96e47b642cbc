namespace SheetPress.Engraving;

/// <summary>Texts of the rows under a staff.</summary>
internal static class RowTexts
{
    private const TextFont CountFont = TextFont.SansItalic;

    /// <summary>A counting syllable.</summary>
    public static SymbolLayout Count(string syllable, TextSizes sizes) => new SymbolBuilder(MarkRole.Count).Text(syllable, CountFont, sizes.Row).Build();
}

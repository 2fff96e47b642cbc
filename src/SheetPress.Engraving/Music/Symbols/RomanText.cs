namespace SheetPress.Engraving;

/// <summary>Roman numerals (ii7, ♭VII, V7/ii) as text and glyphs.</summary>
public static class RomanText
{
    /// <summary>Lays out a roman numeral given in plain text, with b and # (or ♭ and ♯) for accidentals.</summary>
    /// <param name="roman">The numeral, as in "ii7", "bVIImaj7", "V7/ii".</param>
    /// <param name="size">Em of the numeral, in the unit of the drawing.</param>
    public static SymbolLayout Layout(string roman, double size) => throw new NotImplementedException();
}

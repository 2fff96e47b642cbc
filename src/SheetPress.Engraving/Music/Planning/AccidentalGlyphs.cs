namespace SheetPress.Engraving;

/// <summary>SMuFL names of accidentals.</summary>
internal static class AccidentalGlyphs
{
    /// <summary>The glyph of an alteration in half steps, from -3 to 3; beyond that the nearest is taken.</summary>
    public static string Name(int alteration) => alteration switch
    {
        <= -3 => "accidentalTripleFlat",
        -2 => "accidentalDoubleFlat",
        -1 => "accidentalFlat",
        0 => "accidentalNatural",
        1 => "accidentalSharp",
        2 => "accidentalDoubleSharp",
        _ => "accidentalTripleSharp",
    };
}

using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>Degree names (R, ♭3, ♯11) as text and glyphs.</summary>
public static class DegreeText
{
    /// <summary>Lays out a degree name.</summary>
    /// <param name="degree">The degree.</param>
    /// <param name="size">Em of the numeral, in the unit of the drawing.</param>
    public static SymbolLayout Layout(Degree degree, double size) => throw new NotImplementedException();
}

using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>Chord symbols as text and glyphs.</summary>
public static class ChordSymbolText
{
    /// <summary>Lays out a chord symbol; null is "N.C.".</summary>
    /// <param name="chord">The chord.</param>
    /// <param name="size">Em of the root letter, in the unit of the drawing.</param>
    public static SymbolLayout Layout(Chord? chord, double size) => throw new NotImplementedException();
}

using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>Symbols of music as pieces of a line of text.</summary>
public static class SymbolPiece
{
    /// <summary>A chord symbol; null is "N.C.".</summary>
    /// <param name="chord">The chord.</param>
    /// <param name="size">Em of the root letter in millimetres; more is taken where the small parts would come out below seven points.</param>
    public static TextPiece Of(Chord? chord, double size) => Of(ChordSymbolText.Layout(chord, Readable(size)), size);

    /// <summary>A degree.</summary>
    /// <param name="degree">The degree.</param>
    /// <param name="size">Em of the numeral in millimetres.</param>
    public static TextPiece Of(Degree degree, double size) => Of(DegreeText.Layout(degree, size), size);

    /// <summary>A roman numeral.</summary>
    /// <param name="roman">The numeral in plain text.</param>
    /// <param name="size">Em of the numeral in millimetres; more is taken where its small parts would come out below seven points.</param>
    public static TextPiece OfRoman(string roman, double size) => Of(RomanText.Layout(roman, HasSmallParts(roman) ? Readable(size) : size), size);

    // A numeral alone stands in the size of the words around it.
    private static bool HasSmallParts(string roman)
    {
        foreach (var c in roman) if (c is not ('I' or 'V' or 'i' or 'v' or '/' or '♭' or '♯' or 'b' or '#')) return true;
        return false;
    }

    // Romans and chord symbols share the size of their small parts.
    private static double Readable(double size) => Math.Max(size, TextStyle.SmallestSize / ChordSymbolText.SmallShare);

    private static TextPiece Of(SymbolLayout layout, double size)
    {
        var ink = layout.Bounds;
        return new TextPiece(
            layout.Drawing.Marks,
            layout.Advance,
            Math.Max(TextStyle.Ascent * size, ink.IsEmpty ? 0 : -ink.Top),
            Math.Max(TextStyle.Descent * size, ink.IsEmpty ? 0 : ink.Bottom));
    }
}

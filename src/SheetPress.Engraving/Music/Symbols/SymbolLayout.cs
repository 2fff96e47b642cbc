namespace SheetPress.Engraving;

/// <summary>A short symbol made of text and music glyphs, laid out from x = 0 on the baseline y = 0, in the unit its size was given in.</summary>
/// <param name="Drawing">The marks.</param>
/// <param name="Advance">Width that the symbol takes in a line of text.</param>
public sealed record SymbolLayout(Drawing Drawing, double Advance)
{
    /// <summary>A symbol of nothing.</summary>
    public static SymbolLayout Nothing { get; } = new(Drawing.Nothing, 0);

    /// <summary>The box of the ink; empty for a symbol of nothing.</summary>
    public Box Bounds { get; } = Drawing.Bounds;

    /// <summary>The marks moved to a place.</summary>
    public Drawing At(double x, double y) => Drawing.Transform(1, x, y);
}

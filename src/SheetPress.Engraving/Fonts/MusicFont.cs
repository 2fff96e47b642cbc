namespace SheetPress.Engraving;

/// <summary>The music font: glyphs by SMuFL name and the engraving defaults of its metadata. Immutable and shared.</summary>
public sealed class MusicFont
{
    private MusicFont()
    {
    }

    /// <summary>The font shipped with the program, loaded on first use.</summary>
    public static MusicFont Shipped => throw new NotImplementedException();

    /// <summary>The glyph of a SMuFL name.</summary>
    /// <exception cref="KeyNotFoundException">The font has no such glyph.</exception>
    public MusicGlyph this[string name] => throw new NotImplementedException();

    /// <summary>Line thicknesses and distances.</summary>
    public EngravingDefaults Defaults => throw new NotImplementedException();
}

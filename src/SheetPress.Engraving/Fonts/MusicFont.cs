using System.Collections.Concurrent;

namespace SheetPress.Engraving;

/// <summary>
/// The music font: glyphs by SMuFL name and the engraving defaults of its metadata. Shared and safe for any number of threads.
/// </summary>
/// <remarks>
/// A glyph is looked up in the metadata when it is first asked for: a sheet uses some sixty of the font's 3,400 glyphs,
/// and reading the whole metadata would cost more than all else at start.
/// </remarks>
public sealed class MusicFont
{
    private static readonly Lazy<MusicFont> Font = new(() => new MusicFont(new MusicFontMetadata()));

    private readonly MusicFontMetadata _metadata;
    private readonly ConcurrentDictionary<string, MusicGlyph> _glyphs = new(StringComparer.Ordinal);
    private readonly Lazy<EngravingDefaults> _defaults;

    private MusicFont(MusicFontMetadata metadata)
    {
        _metadata = metadata;
        _defaults = new Lazy<EngravingDefaults>(metadata.ReadDefaults);
    }

    /// <summary>The font shipped with the program, loaded on first use.</summary>
    public static MusicFont Shipped => Font.Value;

    /// <summary>The glyph of a SMuFL name.</summary>
    /// <exception cref="KeyNotFoundException">The font has no such glyph, or the list of code points lacks it.</exception>
    public MusicGlyph this[string name] => _glyphs.TryGetValue(name, out var glyph) ? glyph : _glyphs.GetOrAdd(name, _metadata.ReadGlyph(name));

    /// <summary>Line thicknesses and distances.</summary>
    public EngravingDefaults Defaults => _defaults.Value;
}

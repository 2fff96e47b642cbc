using System.Globalization;
using System.Text;
using SheetPress.Engraving;

namespace SheetPress.Publishing;

/// <summary>
/// The outlines that a page uses, each written once and named for its font and glyph, so that pages placed together in
/// one document share names only where they share outlines.
/// </summary>
internal sealed class SvgDefinitions
{
    private readonly StringBuilder _text = new();
    private readonly Dictionary<(string Face, ushort Glyph), string?> _names = [];
    private readonly Dictionary<string, GlyphOutlines> _textOutlines = new(StringComparer.Ordinal);

    /// <summary>The definitions so far.</summary>
    internal StringBuilder Text => _text;

    /// <summary>The name of the outline of a glyph of the music font; null when it has none.</summary>
    internal string? NameOf(MusicGlyph glyph) => NameOf("Music", GlyphOutlines.Music, GlyphOutlines.Music.Glyph(glyph.CodePoint));

    /// <summary>The name of the outline of a glyph of a text; null for a space.</summary>
    internal string? NameOf(TextRun run, ushort glyph) => NameOf(FaceName(run), OutlinesOf(run), glyph);

    /// <summary>Font units in the em of the font of a text.</summary>
    internal int UnitsPerEm(TextRun run) => OutlinesOf(run).UnitsPerEm;

    private static string FaceName(TextRun run) => run.FallbackFamily is { } path ? IdentifierOf(path) : run.Font.ToString();

    /// <summary>The file name of a system font with all that an identifier cannot hold left out.</summary>
    private static string IdentifierOf(string path) => string.Concat("System-", string.Concat(Path.GetFileName(path).Where(char.IsAsciiLetterOrDigit)));

    private GlyphOutlines OutlinesOf(TextRun run)
    {
        var face = FaceName(run);
        if (!_textOutlines.TryGetValue(face, out var outlines))
        {
            _textOutlines.Add(face, outlines = new GlyphOutlines(Typefaces.Of(run)));
        }
        return outlines;
    }

    private string? NameOf(string face, GlyphOutlines outlines, ushort glyph)
    {
        if (_names.TryGetValue((face, glyph), out var known))
        {
            return known;
        }
        var outline = outlines.Outline(glyph);
        string? name = null;
        if (!outline.IsEmpty)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{face}-{glyph}");
            _text.Append(CultureInfo.InvariantCulture, $"<path id=\"{name}\" d=\"{SvgPath.Data(outline)}\"/>\n");
        }
        _names.Add((face, glyph), name);
        return name;
    }
}

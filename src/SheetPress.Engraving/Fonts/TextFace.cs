using System.Diagnostics.CodeAnalysis;
using System.Runtime.InteropServices;
using HarfBuzzSharp;
using HarfBuzzBuffer = HarfBuzzSharp.Buffer;
using HarfBuzzFont = HarfBuzzSharp.Font;

namespace SheetPress.Engraving;

/// <summary>
/// One face opened by HarfBuzz. It is never changed after it is made, and HarfBuzz allows a font that does not change to
/// be used by many threads at once, so a face is shared by all of them.
/// </summary>
[SuppressMessage("Design", "CA1001", Justification = "A face lives as long as the process.")]
internal sealed class TextFace
{
    private static readonly TextFace?[] Shipped = new TextFace?[FontFile.TextFaces];

    // Standard ligatures are off so that every glyph stands for characters of its own in the PDF and a search finds them;
    // kerning, mark placement and the joining that some scripts need stay on.
    private static readonly Feature[] Features =
        [new(new Tag('l', 'i', 'g', 'a'), 0), new(new Tag('c', 'l', 'i', 'g'), 0), new(new Tag('d', 'l', 'i', 'g'), 0)];

    // The language chooses between letter forms; without this HarfBuzz would take it from the locale of the process.
    private static readonly Language English = new("en");

    private readonly HarfBuzzFont _font;
    private readonly double _unitsPerEm;

    private TextFace(Blob blob, int index)
    {
        blob.MakeImmutable();
        var face = new Face(blob, index);
        face.MakeImmutable();
        _unitsPerEm = face.UnitsPerEm;
        _font = new HarfBuzzFont(face);
        _font.SetFunctionsOpenType();
        Metrics = ReadMetrics();
    }

    /// <summary>Heights in em.</summary>
    internal TextMetrics Metrics { get; }

    /// <summary>The face of a shipped font, opened on first use.</summary>
    internal static TextFace Of(TextFont font)
    {
        ref var face = ref Shipped[(int)font];
        return Volatile.Read(ref face) ?? Interlocked.CompareExchange(ref face, FromFile(FontFile.Of(font)), null) ?? face;
    }

    /// <summary>Opens a font file of the system; index chooses a face of a collection.</summary>
    internal static TextFace FromPath(string path, int index) => new(Blob.FromFile(path), index);

    private static TextFace FromFile(FontFile file) => new(new Blob(file.Address, file.Length, MemoryMode.ReadOnly), 0);

    /// <summary>Whether the face has a glyph for a character.</summary>
    internal bool Has(int character) => _font.TryGetNominalGlyph(character, out _);

    /// <summary>Shapes a part of a text; glyphs keep the positions of their characters in the part.</summary>
    /// <param name="text">The part.</param>
    /// <param name="rightToLeft">Its direction; null for that of its script.</param>
    internal ShapedText Shape(string text, bool? rightToLeft = null)
    {
        using var buffer = new HarfBuzzBuffer();
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        if (rightToLeft is { } toLeft) buffer.Direction = toLeft ? Direction.RightToLeft : Direction.LeftToRight;
        buffer.Language = English;
        _font.Shape(buffer, Features);

        var infos = buffer.GetGlyphInfoSpan();
        var positions = buffer.GetGlyphPositionSpan();
        var glyphs = new TextGlyph[infos.Length];
        var (x, y) = (0, 0);
        var ink = Box.Empty;
        for (var i = 0; i < infos.Length; i++)
        {
            var (glyphX, glyphY) = ((x + positions[i].XOffset) / _unitsPerEm, -(y + positions[i].YOffset) / _unitsPerEm);
            glyphs[i] = new TextGlyph((ushort)infos[i].Codepoint, glyphX, glyphY, (int)infos[i].Cluster);
            if (_font.TryGetGlyphExtents(infos[i].Codepoint, out var extents) && extents is { Width: not 0, Height: not 0 })
            {
                // HarfBuzz: bearings from the origin with y upward, so the height of an outline is negative.
                var left = glyphX + (extents.XBearing / _unitsPerEm);
                var top = glyphY - (extents.YBearing / _unitsPerEm);
                ink = ink.Union(new Box(left, top, left + (extents.Width / _unitsPerEm), top - (extents.Height / _unitsPerEm)));
            }
            x += positions[i].XAdvance;
            y += positions[i].YAdvance;
        }
        return new ShapedText(ImmutableCollectionsMarshal.AsImmutableArray(glyphs), x / _unitsPerEm, ink);
    }

    private TextMetrics ReadMetrics()
    {
        // The OS/2 table of the bold faces gives the heights of the regular ones, so letters are measured instead.
        double Height(char letter) =>
            _font.TryGetNominalGlyph(letter, out var glyph) && _font.TryGetGlyphExtents(glyph, out var extents) ? extents.YBearing / _unitsPerEm : 0;
        double Metric(OpenTypeMetricsTag tag) => _font.OpenTypeMetrics.TryGetPosition(tag, out var value) ? value / _unitsPerEm : 0;
        return new TextMetrics(Metric(OpenTypeMetricsTag.HorizontalAscender), -Metric(OpenTypeMetricsTag.HorizontalDescender), Height('H'), Height('x'));
    }
}

using SheetPress.Engraving;
using SkiaSharp;

namespace SheetPress.Publishing;

/// <summary>The fonts of one PDF, each cut down to the glyphs that its pages use; Skia embeds a font as it gets it.</summary>
internal sealed class PdfFonts : IDisposable
{
    private readonly Dictionary<(TextFont Font, string? Fallback), SKTypeface> _typefaces = [];

    internal PdfFonts(SheetDocument document)
    {
        var used = new SortedDictionary<(TextFont Font, string? Fallback), SortedSet<ushort>>();
        foreach (var page in document.Pages)
        {
            foreach (var mark in page.Drawing.Marks)
            {
                if (mark is TextMark text)
                {
                    Collect(text.Run, used);
                }
            }
        }
        foreach (var (key, glyphs) in used)
        {
            _typefaces.Add(key, Open(key, glyphs));
        }
    }

    public void Dispose()
    {
        foreach (var typeface in _typefaces.Values)
        {
            typeface.Dispose();
        }
    }

    internal SKTypeface Of(TextRun run) => _typefaces[Key(run)];

    private static (TextFont Font, string? Fallback) Key(TextRun run) => run.FallbackFamily is { } path ? (default, path) : (run.Font, null);

    private static void Collect(TextRun run, SortedDictionary<(TextFont, string?), SortedSet<ushort>> used)
    {
        var key = Key(run);
        if (!used.TryGetValue(key, out var glyphs))
        {
            used.Add(key, glyphs = []);
        }
        foreach (var glyph in run.Glyphs)
        {
            glyphs.Add(glyph.GlyphId);
        }
    }

    private static SKTypeface Open((TextFont Font, string? Fallback) key, SortedSet<ushort> glyphs)
    {
        var whole = key.Fallback is { } path ? File.ReadAllBytes(path) : FontFile.Of(key.Font).Bytes;
        using var data = SKData.CreateCopy(FontSubset.Of(whole, glyphs));
        return SKTypeface.FromData(data) ?? throw new InvalidDataException("Skia cannot read a font that was cut down.");
    }
}

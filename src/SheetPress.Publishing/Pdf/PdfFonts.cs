using SheetPress.Engraving;
using SkiaSharp;

namespace SheetPress.Publishing;

/// <summary>The fonts of one PDF, each cut down to the glyphs that its pages use; Skia embeds a font as it gets it.</summary>
internal sealed class PdfFonts : IDisposable
{
    private readonly List<UsedFont> _fonts = [];

    internal PdfFonts(SheetDocument document)
    {
        foreach (var page in document.Pages)
        {
            foreach (var mark in page.Drawing.Marks)
            {
                if (mark is TextMark text)
                {
                    Collect(text.Run);
                }
            }
        }
        foreach (var font in _fonts)
        {
            font.Open();
        }
    }

    public void Dispose()
    {
        foreach (var font in _fonts)
        {
            font.Dispose();
        }
    }

    /// <summary>The font of a run of the document.</summary>
    internal SKTypeface Of(TextRun run) => Find(run)!.Typeface;

    private void Collect(TextRun run)
    {
        var font = Find(run);
        if (font is null)
        {
            _fonts.Add(font = new UsedFont(run.Font, run.FallbackFamily));
        }
        foreach (var glyph in run.Glyphs)
        {
            font.Glyphs[glyph.GlyphId] = true;
        }
    }

    private UsedFont? Find(TextRun run)
    {
        foreach (var font in _fonts)
        {
            if (font.Is(run))
            {
                return font;
            }
        }
        return null;
    }

    private sealed class UsedFont(TextFont shipped, string? fallback) : IDisposable
    {
        private SKTypeface? _typeface;

        /// <summary>True for each glyph that is used.</summary>
        internal bool[] Glyphs { get; } = new bool[ushort.MaxValue + 1];

        internal SKTypeface Typeface => _typeface ?? throw new InvalidOperationException("The font is not open.");

        public void Dispose() => _typeface?.Dispose();

        internal bool Is(TextRun run) => fallback is null ? run.FallbackFamily is null && run.Font == shipped : run.FallbackFamily == fallback;

        internal void Open()
        {
            var whole = fallback is { } path ? File.ReadAllBytes(path) : FontFile.Of(shipped).Bytes;
            using var data = SKData.CreateCopy(FontSubset.Of(whole, Glyphs));
            _typeface = SKTypeface.FromData(data) ?? throw new InvalidDataException("Skia cannot read a font that was cut down.");
        }
    }
}

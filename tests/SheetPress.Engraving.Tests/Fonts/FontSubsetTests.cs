namespace SheetPress.Engraving.Tests.Fonts;

/// <summary>Subsets are read back with HarfBuzz as fonts of their own.</summary>
public class FontSubsetTests
{
    private static bool[] Glyphs(params ushort[] used)
    {
        var glyphs = new bool[ushort.MaxValue + 1];
        foreach (var glyph in used)
        {
            glyphs[glyph] = true;
        }
        return glyphs;
    }

    [Fact]
    public void Kept_glyphs_keep_number_width_and_outline_and_the_others_are_empty()
    {
        var run = TextShaper.Run("Añ", TextFont.Sans);
        var (capital, accented) = (run.Glyphs[0].GlyphId, run.Glyphs[1].GlyphId);
        var whole = FontFile.Of(TextFont.Sans).Bytes.ToArray();
        var subset = FontSubset.Of(whole, Glyphs(capital, accented));
        subset.Length.ShouldBeLessThan(whole.Length / 10);

        using var before = new Opened(whole);
        using var after = new Opened(subset);
        foreach (var glyph in (ushort[])[capital, accented])
        {
            after.Font.GetHorizontalGlyphAdvance(glyph).ShouldBe(before.Font.GetHorizontalGlyphAdvance(glyph));
            before.Font.TryGetGlyphExtents(glyph, out var wanted).ShouldBeTrue();
            after.Font.TryGetGlyphExtents(glyph, out var found).ShouldBeTrue();
            found.Height.ShouldBe(wanted.Height);
            found.Width.ShouldBe(wanted.Width);
        }
        after.Font.TryGetNominalGlyph('A', out var mapped).ShouldBeTrue();
        mapped.ShouldBe(capital);
        after.Font.TryGetNominalGlyph('B', out _).ShouldBeFalse();
    }

    [Fact]
    public void The_same_glyphs_give_the_same_bytes()
    {
        var whole = FontFile.Of(TextFont.SerifItalic).Bytes.ToArray();
        var first = FontSubset.Of(whole, Glyphs(40, 41, 300));
        var others = new byte[8][];
        Parallel.For(0, others.Length, i => others[i] = FontSubset.Of(whole, Glyphs(300, 41, 40)));
        others.ShouldAllBe(o => o.SequenceEqual(first));
    }

    [Fact]
    public void What_is_no_font_is_refused() =>
        Should.Throw<InvalidDataException>(() => FontSubset.Of("not a font at all"u8, Glyphs(3)));

    private sealed class Opened : IDisposable
    {
        private readonly HarfBuzzSharp.Blob _blob;
        private readonly HarfBuzzSharp.Face _face;

        internal Opened(byte[] bytes)
        {
            _blob = HarfBuzzSharp.Blob.FromStream(new MemoryStream(bytes));
            _face = new HarfBuzzSharp.Face(_blob, 0);
            Font = new HarfBuzzSharp.Font(_face);
            Font.SetFunctionsOpenType();
        }

        internal HarfBuzzSharp.Font Font { get; }

        public void Dispose()
        {
            Font.Dispose();
            _face.Dispose();
            _blob.Dispose();
        }
    }
}

using System.Text;
using SheetPress.Engraving;

namespace SheetPress.Publishing.Tests.Painting;

public class GlyphOutlinesTests
{
    /// <summary>
    /// Ties the code points, which were written down, to the outlines that are drawn: the exact box of each outline is the
    /// one that the metadata of the font gives for the name. Tolerance: the metadata of two glyphs is off by 0.004.
    /// </summary>
    [Fact]
    public void The_outline_of_every_listed_glyph_fills_the_box_of_the_metadata()
    {
        var outlines = GlyphOutlines.Music;
        var count = 0;
        foreach (var line in Encoding.ASCII.GetString(FontFile.Named("smufl-code-points.txt").Bytes).Split('\n'))
        {
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }
            var glyph = MusicFont.Shipped[line.Split(' ')[0]];
            var box = outlines.Outline(outlines.Glyph(glyph.CodePoint)).TightBounds;
            (box.Left / outlines.UnitsPerStaffSpace).ShouldBe(glyph.Bounds.Left, 0.006, glyph.Name);
            (box.Top / outlines.UnitsPerStaffSpace).ShouldBe(glyph.Bounds.Top, 0.006, glyph.Name);
            (box.Right / outlines.UnitsPerStaffSpace).ShouldBe(glyph.Bounds.Right, 0.006, glyph.Name);
            (box.Bottom / outlines.UnitsPerStaffSpace).ShouldBe(glyph.Bounds.Bottom, 0.006, glyph.Name);
            count++;
        }
        count.ShouldBeGreaterThan(450);
    }

    [Fact]
    public void Outlines_are_in_whole_font_units()
    {
        var outline = GlyphOutlines.Music.Outline(GlyphOutlines.Music.Glyph(MusicFont.Shipped["gClef"].CodePoint));
        outline.PointCount.ShouldBeGreaterThan(20);
        outline.Points.ShouldAllBe(p => p.X == MathF.Round(p.X) && p.Y == MathF.Round(p.Y));
    }

    /// <summary>The ink box that HarfBuzz measured is the one that Skia draws, so what is measured is what is seen.</summary>
    [Fact]
    public void Measured_text_is_as_large_as_drawn_text()
    {
        foreach (var font in Enum.GetValues<TextFont>())
        {
            var run = TextShaper.Run("g", font);
            var outlines = new GlyphOutlines(Typefaces.Of(run));
            var box = outlines.Outline(run.Glyphs[0].GlyphId).TightBounds;
            ((double)box.Left / outlines.UnitsPerEm).ShouldBe(run.Bounds.Left, 0.002, font.ToString());
            ((double)box.Top / outlines.UnitsPerEm).ShouldBe(run.Bounds.Top, 0.002, font.ToString());
            ((double)box.Right / outlines.UnitsPerEm).ShouldBe(run.Bounds.Right, 0.002, font.ToString());
            ((double)box.Bottom / outlines.UnitsPerEm).ShouldBe(run.Bounds.Bottom, 0.002, font.ToString());
        }
    }
}

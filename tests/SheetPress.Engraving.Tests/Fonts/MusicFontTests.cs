using System.Text.Json;

namespace SheetPress.Engraving.Tests.Fonts;

public class MusicFontTests
{
    private static readonly JsonElement Metadata = JsonDocument.Parse(FontFile.Named("bravura-metadata.json").Bytes.ToArray()).RootElement;

    /// <summary>Source: W3C SMuFL 1.4, code points of single glyphs.</summary>
    [Theory]
    [InlineData("gClef", 0xE050)]
    [InlineData("fClef", 0xE062)]
    [InlineData("noteheadBlack", 0xE0A4)]
    [InlineData("noteheadHalf", 0xE0A3)]
    [InlineData("noteheadWhole", 0xE0A2)]
    [InlineData("noteheadXBlack", 0xE0A9)]
    [InlineData("accidentalFlat", 0xE260)]
    [InlineData("accidentalNatural", 0xE261)]
    [InlineData("accidentalSharp", 0xE262)]
    [InlineData("accidentalDoubleSharp", 0xE263)]
    [InlineData("accidentalDoubleFlat", 0xE264)]
    [InlineData("6stringTabClef", 0xE06D)]
    [InlineData("4stringTabClef", 0xE06E)]
    [InlineData("restQuarter", 0xE4E5)]
    [InlineData("4stringTabClefTall", 0xF40C)] // Beyond the standard: from the metadata of the font.
    public void Has_the_code_points_of_the_standard(string name, int codePoint) => MusicFont.Shipped[name].CodePoint.ShouldBe(codePoint);

    /// <summary>Read with the document reader of System.Text.Json, not with the search that the program uses.</summary>
    [Fact]
    public void Every_listed_glyph_has_the_metrics_of_the_metadata_with_y_turned_down()
    {
        var names = new MusicFontMetadata().ListedNames().ToArray();
        names.Length.ShouldBeGreaterThan(450);
        names.ShouldBeUnique();
        foreach (var name in names)
        {
            var glyph = MusicFont.Shipped[name];
            var box = Metadata.GetProperty("glyphBBoxes").GetProperty(name);
            var (northEast, southWest) = (box.GetProperty("bBoxNE"), box.GetProperty("bBoxSW"));
            glyph.Name.ShouldBe(name);
            glyph.Bounds.ShouldBe(new Box(southWest[0].GetDouble(), -northEast[1].GetDouble(), northEast[0].GetDouble(), -southWest[1].GetDouble()), name);
            glyph.Advance.ShouldBe(Metadata.GetProperty("glyphAdvanceWidths").GetProperty(name).GetDouble(), name);
            var anchors = Metadata.GetProperty("glyphsWithAnchors").TryGetProperty(name, out var found) ? found.EnumerateObject().ToArray() : [];
            glyph.Anchors.Count.ShouldBe(anchors.Length, name);
            foreach (var anchor in anchors)
            {
                glyph.Anchors[anchor.Name].ShouldBe(new Point(anchor.Value[0].GetDouble(), -anchor.Value[1].GetDouble()), name);
            }
        }
    }

    /// <summary>
    /// The code points are checked against the font file itself, read by HarfBuzz: each is mapped, and its outline has
    /// the advance which the metadata gives for the name, and a box around the one given there (HarfBuzz measures a curve
    /// by its control points, which lie on it or a little outside; the tests of the writers compare the exact outlines).
    /// </summary>
    [Fact]
    public void Every_listed_code_point_is_the_glyph_that_the_metadata_describes()
    {
        var file = FontFile.Music;
        using var blob = new HarfBuzzSharp.Blob(file.Address, file.Length, HarfBuzzSharp.MemoryMode.ReadOnly);
        using var face = new HarfBuzzSharp.Face(blob, 0);
        using var font = new HarfBuzzSharp.Font(face);
        font.SetFunctionsOpenType();
        var staffSpace = face.UnitsPerEm / 4.0; // SMuFL: four staff spaces to the em.

        foreach (var name in new MusicFontMetadata().ListedNames())
        {
            var glyph = MusicFont.Shipped[name];
            font.TryGetNominalGlyph(glyph.CodePoint, out var id).ShouldBeTrue(name);
            (font.GetHorizontalGlyphAdvance(id) / staffSpace).ShouldBe(glyph.Advance, 0.005, name);
            font.TryGetGlyphExtents(id, out var extents).ShouldBeTrue(name);
            var (left, top) = (extents.XBearing / staffSpace, -extents.YBearing / staffSpace);
            var (right, bottom) = (left + (extents.Width / staffSpace), top - (extents.Height / staffSpace));
            const double rounding = 0.01;
            const double outside = 0.35;
            (glyph.Bounds.Left - left).ShouldBeInRange(-rounding, outside, name);
            (glyph.Bounds.Top - top).ShouldBeInRange(-rounding, outside, name);
            (right - glyph.Bounds.Right).ShouldBeInRange(-rounding, outside, name);
            (bottom - glyph.Bounds.Bottom).ShouldBeInRange(-rounding, outside, name);
        }
    }

    [Fact]
    public void Engraving_defaults_are_those_of_the_metadata()
    {
        var properties = typeof(EngravingDefaults).GetProperties();
        properties.Length.ShouldBe(19);
        foreach (var property in properties)
        {
            var key = char.ToLowerInvariant(property.Name[0]) + property.Name[1..];
            property.GetValue(MusicFont.Shipped.Defaults).ShouldBe(Metadata.GetProperty("engravingDefaults").GetProperty(key).GetDouble(), key);
        }
    }

    /// <summary>Source: SMuFL, engravingDefaults of the reference font.</summary>
    [Fact]
    public void Staff_line_stem_and_beam_are_as_thick_as_the_standard_font_says()
    {
        var defaults = MusicFont.Shipped.Defaults;
        (defaults.StaffLineThickness, defaults.StemThickness, defaults.BeamThickness).ShouldBe((0.13, 0.12, 0.5));
    }

    [Fact]
    public void A_stem_going_up_starts_at_the_right_and_above_the_middle_of_the_head()
    {
        // In the metadata y is upward: a positive stemUpSE there is above the middle, a negative y here.
        var anchor = MusicFont.Shipped["noteheadBlack"].Anchors["stemUpSE"];
        anchor.X.ShouldBe(MusicFont.Shipped["noteheadBlack"].Bounds.Right, 0.001);
        anchor.Y.ShouldBeLessThan(0);
    }

    [Fact]
    public void An_unknown_glyph_is_named_in_the_error() =>
        Should.Throw<KeyNotFoundException>(() => MusicFont.Shipped["noteheadPurple"]).Message.ShouldContain("noteheadPurple");

    [Fact]
    public void A_glyph_is_one_object_however_many_threads_ask()
    {
        var glyphs = new MusicGlyph[64];
        Parallel.For(0, glyphs.Length, i => glyphs[i] = MusicFont.Shipped["coda"]);
        glyphs.ShouldAllBe(g => ReferenceEquals(g, MusicFont.Shipped["coda"]));
    }
}

using System.Text;
using CsCheck;

namespace SheetPress.Engraving.Tests.Fonts;

public class TextShaperTests
{
    public static TheoryData<TextFont> Fonts => [.. Enum.GetValues<TextFont>()];

    /// <summary>Source: common practice of type setting; A and V are kerned in all text faces.</summary>
    [Theory]
    [MemberData(nameof(Fonts))]
    public void Kerning_draws_A_and_V_together(TextFont font) =>
        TextShaper.Measure("AV", font).ShouldBeLessThan(TextShaper.Measure("A", font) + TextShaper.Measure("V", font) - 0.01);

    /// <summary>The faces do have these ligatures; with them a search for "fi" in the PDF would depend on the viewer.</summary>
    [Theory]
    [MemberData(nameof(Fonts))]
    public void There_are_no_ligatures(TextFont font)
    {
        foreach (var text in (string[])["fi", "fl", "ff", "ffi", "ft", "Th", "fj"])
        {
            TextShaper.Run(text, font).Glyphs.Select(g => g.GlyphId)
                .ShouldBe(text.Select(c => TextShaper.Run(c.ToString(), font).Glyphs.Single().GlyphId), text);
        }
    }

    /// <summary>What columns of numbers need: all figures of one width, and no kerning between them.</summary>
    [Theory]
    [MemberData(nameof(Fonts))]
    public void Figures_are_tabular(TextFont font)
    {
        var width = TextShaper.Measure("1", font);
        for (var n = 0; n < 100; n++)
        {
            // One figure of one italic face is a thousandth of an em narrower than the others.
            TextShaper.Measure($"{n:00}", font).ShouldBe(2 * width, 0.0021, $"{n:00}");
        }
    }

    /// <summary>Source: the hmtx tables of the font files (in 1/1000 em), listed with another program.</summary>
    [Theory]
    [InlineData(TextFont.Serif, "0", 0.529)]
    [InlineData(TextFont.SerifItalic, "0", 0.537)]
    [InlineData(TextFont.SerifSemiBold, "0", 0.547)]
    [InlineData(TextFont.SerifBold, "0", 0.569)]
    [InlineData(TextFont.Sans, "0", 0.497)]
    [InlineData(TextFont.SansItalic, "0", 0.479)]
    [InlineData(TextFont.SansSemiBold, "0", 0.513)]
    [InlineData(TextFont.SansBold, "0", 0.528)]
    public void A_figure_advances_as_the_file_says(TextFont font, string text, double advance) =>
        TextShaper.Measure(text, font).ShouldBe(advance, 1e-9);

    /// <summary>
    /// Source: the OS/2 and hhea tables of the font files, listed with another program. Cap height and x height of the
    /// tables are those of the regular weight, so those of the bold faces may be off by a little.
    /// </summary>
    [Theory]
    [InlineData(TextFont.Serif, 1.036, 0.335, 0.670, 0.475)]
    [InlineData(TextFont.SerifBold, 1.036, 0.335, 0.670, 0.475)]
    [InlineData(TextFont.Sans, 1.024, 0.400, 0.660, 0.486)]
    [InlineData(TextFont.SansBold, 1.024, 0.400, 0.660, 0.496)]
    public void Heights_are_those_of_the_file(TextFont font, double ascender, double descender, double capHeight, double xHeight)
    {
        var metrics = TextMetrics.Of(font);
        metrics.Ascender.ShouldBe(ascender);
        metrics.Descender.ShouldBe(descender);
        metrics.CapHeight.ShouldBe(capHeight, 0.015);
        metrics.XHeight.ShouldBe(xHeight, 0.03);
    }

    [Theory]
    [MemberData(nameof(Fonts))]
    public void Ink_of_a_capital_stands_on_the_baseline_and_is_as_high_as_the_face_says(TextFont font)
    {
        var run = TextShaper.Run("H", font);
        run.Bounds.Bottom.ShouldBe(0, 0.002);
        run.Bounds.Top.ShouldBe(-TextMetrics.Of(font).CapHeight, 1e-9);
        run.Bounds.Left.ShouldBeInRange(-0.02, 0.1);
        // The strokes of a slanted letter lean over its end.
        run.Bounds.Right.ShouldBeInRange(run.Advance - 0.1, run.Advance + 0.04);
    }

    [Fact]
    public void Ink_reaches_below_the_baseline_for_a_descender_and_is_empty_for_a_space()
    {
        TextShaper.Run("p", TextFont.Serif).Bounds.Bottom.ShouldBeGreaterThan(0.15);
        TextShaper.Run(" ", TextFont.Serif).Bounds.IsEmpty.ShouldBeTrue();
        TextShaper.Run(" ", TextFont.Serif).Advance.ShouldBeGreaterThan(0.1);
    }

    [Fact]
    public void An_empty_text_has_no_runs_and_no_width()
    {
        TextShaper.Shape("", TextFont.Serif).ShouldBeEmpty();
        TextShaper.Measure("", TextFont.Serif).ShouldBe(0);
        TextShaper.Run("", TextFont.Serif).Glyphs.ShouldBeEmpty();
    }

    /// <summary>The signs a lesson text needs beside letters; the flat, sharp and natural are set in the music font.</summary>
    [Theory]
    [MemberData(nameof(Fonts))]
    public void The_shipped_faces_set_Latin_Greek_and_Cyrillic_and_the_signs_of_a_lesson(TextFont font)
    {
        const string text = "Übung déjà vu żółty čas größer ñ Ω φ Ж я Δ ° ø × – — … “ ” ‘ ’ • → № ½";
        var run = TextShaper.Shape(text, font).ShouldHaveSingleItem();
        run.FallbackFamily.ShouldBeNull();
        run.Glyphs.ShouldAllBe(g => g.GlyphId != 0);
    }

    [Fact]
    public void An_accent_typed_as_a_combining_mark_is_set_as_the_accented_letter()
    {
        var composed = TextShaper.Run("é", TextFont.Serif);
        var typed = TextShaper.Run("e\u0301", TextFont.Serif);
        typed.Glyphs.Select(g => g.GlyphId).ShouldBe(composed.Glyphs.Select(g => g.GlyphId));
        typed.Advance.ShouldBe(composed.Advance);
    }

    [Fact]
    public void The_hyphen_that_does_not_break_and_narrow_spaces_need_no_other_font()
    {
        foreach (var font in Enum.GetValues<TextFont>())
        {
            var run = TextShaper.Shape("ii\u2011V 5\u202Fmm\u2009x", font).ShouldHaveSingleItem();
            run.Glyphs.ShouldAllBe(g => g.GlyphId != 0);
        }
    }

    [Fact]
    public void Glyphs_follow_each_other_at_the_pen_position_and_know_their_character()
    {
        var run = TextShaper.Run("Hon", TextFont.Serif);
        run.Glyphs.Select(g => g.Cluster).ShouldBe([0, 1, 2]);
        run.Glyphs.Select(g => g.Y).ShouldBe([0.0, 0.0, 0.0]);
        run.Glyphs[1].X.ShouldBe(TextShaper.Measure("H", TextFont.Serif), 0.02);
        run.Glyphs[2].X.ShouldBeLessThan(run.Advance);
    }

    [Fact]
    public void Runs_hold_the_whole_text_whatever_it_is() =>
        Gen.String.Sample(text =>
        {
            var runs = TextShaper.Shape(text, TextFont.Serif);
            string.Concat(runs.Select(r => r.Text)).ShouldBe(text);
            foreach (var run in runs)
            {
                run.Glyphs.ShouldAllBe(g => g.Cluster >= 0 && g.Cluster < run.Text.Length);
            }
            TextShaper.Measure(text, TextFont.Serif).ShouldBe(runs.Sum(r => r.Advance));
        }, iter: 300);

    [Fact]
    public void Many_threads_get_what_one_gets()
    {
        var words = Enumerable.Range(0, 2000).Select(i => $"word {i * 7919 % 2003} AVA").ToArray();
        var alone = words.Select(w => TextShaper.Run(w, TextFont.SansItalic).Advance).ToArray();
        var together = new double[words.Length];
        Parallel.For(0, words.Length, i => together[i] = TextShaper.Shape(words[i], TextFont.SansItalic).Single().Advance);
        together.ShouldBe(alone);
    }

    [Fact]
    public void Characters_that_no_font_has_become_boxes_and_are_reported_once()
    {
        // The last plane is for private use: no font of a system has a glyph there.
        const string text = "a\U0010FFF0b\U0010FFF0";
        var runs = TextShaper.Shape(text, TextFont.Serif);
        runs.SelectMany(r => r.Glyphs).Count(g => g.GlyphId == 0).ShouldBe(2);
        var marks = runs.Select(r => (Mark)new TextMark(r, new Point(10, 10), 4));
        var document = new SheetDocument { Title = "Boxes", Pages = [new Page(210, 297, new Drawing([.. marks]))] };
        MissingCharacters.In(document).ShouldBe([new Rune(0x10FFF0)]);
    }
}

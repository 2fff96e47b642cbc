namespace SheetPress.Engraving.Tests;

public class TextSetterTests
{
    [Theory]
    [InlineData("E♭", "csymAccidentalFlat")]
    [InlineData("F♯", "csymAccidentalSharp")]
    [InlineData("B♮", "csymAccidentalNatural")]
    [InlineData("B\U0001D12B", "csymAccidentalDoubleFlat")]
    [InlineData("C\U0001D12A", "csymAccidentalDoubleSharp")]
    [InlineData("B♭♭", "csymAccidentalDoubleFlat")]
    [InlineData("F♯♯", "csymAccidentalDoubleSharp")]
    [InlineData("♩ = 92", "metNoteQuarterUp")]
    [InlineData("♪ = 92", "metNote8thUp")]
    public void Signs_of_music_come_from_the_music_font(string text, string glyph)
    {
        var piece = TextSetter.Set(text, TextFont.Serif, 10);
        piece.Marks.OfType<GlyphMark>().ShouldHaveSingleItem().Glyph.Name.ShouldBe(glyph);
        foreach (var mark in piece.Marks.OfType<TextMark>()) mark.Run.FallbackFamily.ShouldBeNull();
    }

    /// <summary>Handbook rule, from memory: a triple sharp is a sharp before a double sharp.</summary>
    [Fact]
    public void Of_three_signs_the_first_stands_alone() =>
        TextSetter.Set("F♯♯♯", TextFont.Serif, 10).Marks.OfType<GlyphMark>().Select(m => m.Glyph.Name).ShouldBe(["csymAccidentalSharp", "csymAccidentalDoubleSharp"]);

    // The foot of an A reaches to its edge, where other letters have white of their own.
    [Fact]
    public void A_sign_stands_off_the_ink_of_any_letter_before_it()
    {
        foreach (var font in Enum.GetValues<TextFont>())
        {
            foreach (var letter in "ABCDEFG")
            {
                foreach (var sign in "♭♯")
                {
                    var marks = TextSetter.Set($"{letter}{sign}", font, 10).Marks;
                    (marks[1].Bounds.Left - marks[0].Bounds.Right).ShouldBeInRange(0.74, 1.5, $"{letter}{sign} {font}");
                }
            }
        }
    }

    [Fact]
    public void A_dot_after_a_note_belongs_to_it() =>
        TextSetter.Set("♩. = 60", TextFont.Serif, 10).Marks.OfType<GlyphMark>().Select(m => m.Glyph.Name).ShouldBe(["metNoteQuarterUp", "metAugmentationDot"]);

    // As in the tempo mark over music.
    [Theory]
    [InlineData("♩")]
    [InlineData("♪")]
    [InlineData("\U0001D15E")]
    public void A_note_stands_on_the_baseline(string note) =>
        TextSetter.Set(note + " = 92", TextFont.Serif, 10).Marks.OfType<GlyphMark>().ShouldHaveSingleItem().Bounds.Bottom.ShouldBe(0, 1e-6);

    [Fact]
    public void A_sign_is_as_high_as_the_capitals_beside_it()
    {
        // SMuFL gives the chord symbol accidentals the size of text whose em is four staff spaces.
        var flat = TextSetter.Set("♭", TextFont.Serif, 10).Marks.ShouldHaveSingleItem().Bounds;
        flat.Bottom.ShouldBe(0, 0.1);
        flat.Height.ShouldBeInRange(6, 8);
    }

    [Fact]
    public void Parts_stand_side_by_side_without_overlap()
    {
        var marks = TextSetter.Set("B♭ and F♯ minor", TextFont.Serif, 10).Marks;
        for (var i = 1; i < marks.Length; i++) marks[i - 1].Bounds.Right.ShouldBeLessThanOrEqualTo(marks[i].Bounds.Left + 0.3);
    }

    [Fact]
    public void Measure_agrees_with_setting()
    {
        foreach (var text in (string[])["plain words", "B♭7 and ♩ = 60", ""])
        {
            TextSetter.Measure(text, TextFont.Sans, 3).ShouldBe(TextSetter.Set(text, TextFont.Sans, 3).Width, 1e-9);
        }
    }

    [Fact]
    public void A_double_sharp_stands_at_the_height_of_a_sharp()
    {
        double Middle(string text) => TextSetter.Set(text, TextFont.Sans, 4).Marks.OfType<GlyphMark>().Select(g => (g.Bounds.Top + g.Bounds.Bottom) / 2).Single();
        Middle("F♯♯").ShouldBe(Middle("F♯"), 1e-6);
    }
}

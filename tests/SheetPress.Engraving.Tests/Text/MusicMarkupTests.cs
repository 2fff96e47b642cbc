using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

public class MusicMarkupTests
{
    [Fact]
    public void A_chord_in_brackets_is_set_as_music()
    {
        var parts = MusicMarkup.Read("from [Abmaj7] to [Dm7b5].");
        parts.Length.ShouldBe(5);
        parts[1].ShouldBe(new ChordInline(Chord.Parse("Abmaj7")));
        parts[3].ShouldBe(new ChordInline(Chord.Parse("Dm7b5")));
        parts[4].ShouldBe(new TextInline("."));
    }

    [Fact]
    public void Braces_hold_degrees() =>
        MusicMarkup.Read("{R b3 #11}").OfType<DegreeInline>().Select(d => d.Degree).ShouldBe([Degree.Root, new Degree(3, -1), new Degree(11, 1)]);

    [Fact]
    public void Brackets_hold_numerals_too() =>
        MusicMarkup.Read("[iiø7 | V7 | i]").OfType<RomanInline>().Select(r => r.Roman).ShouldBe(["iiø7", "V7", "i"]);

    [Fact]
    public void A_numeral_with_a_bass_and_a_degree_has_a_word_between() =>
        MusicMarkup.Read("[V7/3 of ii | V7/3/ii | V7/ii]").OfType<RomanInline>().Select(r => r.Roman).ShouldBe(["V7/3 of ii", "V7/3 of ii", "V7/ii"]);

    [Theory]
    [InlineData("[not music]")]
    [InlineData("[one of two]")]
    [InlineData("[Cm7 and more]")]
    [InlineData("{x}")]
    [InlineData("[]")]
    [InlineData("an [open bracket")]
    [InlineData("[a]")]
    [InlineData("[in]")]
    [InlineData("[video]")]
    public void What_is_no_music_stays_as_written(string text) => MusicMarkup.Read(text).ShouldHaveSingleItem().ShouldBe(new TextInline(text));

    [Fact]
    public void Emphasis_and_link_pass_on_to_every_part()
    {
        foreach (var part in MusicMarkup.Read("see [C]", Emphasis.Strong, "x"))
        {
            part.Emphasis.ShouldBe(Emphasis.Strong);
            part.Link.ShouldBe("x");
        }
    }
}

using System.Collections.Immutable;

namespace SheetPress.Engraving.Tests;

/// <summary>Set text with words written to the left: what stands where. Each order is that of the bidirectional algorithm, worked out by hand.</summary>
public class BidiTextTests
{
    private static readonly TextStyle Style = new(10, 13, TextFont.Serif, TextFont.SerifItalic, TextFont.SerifBold);

    [Theory]
    [InlineData("bass אבג דהו bass", "bass|דהו|אבג|bass")]
    [InlineData("bass (אבג) 12", "bass|(|אבג|)|12")]
    [InlineData("אבג 12 דהו", "דהו|12|אבג")]
    [InlineData("אבג bass line דהו.", ".|דהו|bass|line|אבג")]
    [InlineData("אבג 12–14, דהו", "דהו|,|14|–|12|אבג")]
    [InlineData("אבג E♭ דהו", "דהו|E|♭|אבג")]
    public void Words_stand_in_the_order_of_the_algorithm(string text, string wanted)
    {
        var line = ParagraphSetter.Set([new TextInline(text)], Style, 200).ShouldHaveSingleItem();
        Standing(line.Marks).ShouldBe(wanted.Replace("|", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Chords_in_a_paragraph_written_to_the_left_are_read_to_the_right()
    {
        var line = ParagraphSetter.Set(MusicMarkup.Read("אבג [Dm | G] דהו"), Style, 200).ShouldHaveSingleItem();
        string.Concat(line.Marks.OfType<TextMark>().Where(m => m.Role == MarkRole.ChordSymbol).OrderBy(m => m.Bounds.Left).Select(m => m.Run.Text)).ShouldBe("DmG");
    }

    [Fact]
    public void A_paragraph_that_begins_to_the_left_ends_ragged_at_the_left()
    {
        var lines = ParagraphSetter.Set([new TextInline(string.Join(' ', Enumerable.Repeat("אבג דהוז", 20)))], Style, 60);
        lines.Length.ShouldBeGreaterThan(1);
        foreach (var line in lines) line.Width.ShouldBe(60, 1e-6);
        lines[^1].Marks.Min(m => m.Bounds.Left).ShouldBeGreaterThan(0);
    }

    [Fact]
    public void A_shaped_text_is_in_order_as_a_whole()
    {
        string.Join('|', TextShaper.Shape("bass אבג: דהו bass", TextFont.Sans).Select(r => r.Text.Trim()).Where(t => t.Length > 0)).ShouldBe("bass|דהו|:|אבג|bass");
    }

    // Runs from left to right without their spaces; a bracket that is turned round keeps its character.
    private static string Standing(ImmutableArray<Mark> marks) =>
        string.Concat(marks.OrderBy(m => (m.Bounds.Left + m.Bounds.Right) / 2).Select(m => m is TextMark t ? t.Run.Text.Replace(" ", "", StringComparison.Ordinal) : "♭"));
}

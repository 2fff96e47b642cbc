using CsCheck;

namespace SheetPress.Engraving.Tests;

public class PlainParagraphsTests
{
    private static readonly string[] Words = ["word", "a", "[Cm7]", "[Dm7b5 | G7]", "{b3}", "[x]", "(y)", " ", " ", "  ", "\n", "\n\n", "♭", "#", "-", "1.", "|", ":", "*", "_x_", "~", "=", "!", ",", "https://example.org", "\"", "漢字", "、", "かな"];

    private static readonly Gen<string> Text =
        Gen.Int[0, Words.Length - 1].Select(i => Words[i])
            .Array[0, 14].Select(parts => string.Concat(parts));

    [Fact]
    public void What_it_reads_is_what_the_full_parser_reads()
    {
        var plain = 0;
        Text.Sample(text =>
        {
            if (PlainParagraphs.Read(text) is not { } blocks) return;
            Interlocked.Increment(ref plain);
            Show(blocks).ShouldBe(Show(MarkdownReader.ReadMarkup(text)));
        }, iter: 4000);
        plain.ShouldBeGreaterThan(200);
    }

    [Fact]
    public void Words_with_chords_need_no_more() =>
        PlainParagraphs.Read("The roots fall: [Cm7 | Fm7].\nAnd so on.\n\nThe {b7} falls.").ShouldNotBeNull().Length.ShouldBe(2);

    // Common practice: a line end in the source is a space, but there are none between the words of Japanese and Chinese.
    [Theory]
    [InlineData("one\ntwo", "one two")]
    [InlineData("低音を\nよく聴いて、\n「ベース」は", "低音をよく聴いて、「ベース」は")]
    [InlineData("左手\nand right", "左手 and right")]
    [InlineData("왼손\n오른손", "왼손 오른손")]
    public void A_line_end_is_a_space_in_scripts_that_have_spaces(string source, string text)
    {
        Show(PlainParagraphs.Read(source).ShouldNotBeNull()).ShouldBe(text);
        Show(MarkdownReader.ReadMarkup(source)).ShouldBe(text);
    }

    [Theory]
    [InlineData("*a*")]
    [InlineData("- a")]
    [InlineData("1. a")]
    [InlineData("[a](b)")]
    [InlineData("# a")]
    [InlineData("a\n---")]
    [InlineData("    code")]
    [InlineData("a  \nb")]
    public void Markup_is_left_to_the_full_parser(string text) => PlainParagraphs.Read(text).ShouldBeNull();

    private static string Show(IEnumerable<TextBlock> blocks) =>
        string.Join('\n', blocks.Select(b => b is ParagraphBlock p ? string.Concat(p.Inlines.Select(i => i is TextInline t ? t.Text : $"<{i}>")) : b.ToString()));
}

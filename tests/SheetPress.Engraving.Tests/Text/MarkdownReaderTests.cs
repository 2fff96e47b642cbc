using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

/// <summary>Markdown as CommonMark 0.31 has it, read into blocks.</summary>
public class MarkdownReaderTests
{
    [Fact]
    public void Strong_within_slanted_is_both()
    {
        var both = MarkdownReader.ReadInline("*slanted and **strong***").OfType<TextInline>().Single(t => t.Text.Contains("strong", StringComparison.Ordinal));
        both.Emphasis.ShouldBe(Emphasis.Italic | Emphasis.Strong);
        new PageStyle().Body.FontOf(both.Emphasis).ShouldBe(TextFont.SerifSemiBoldItalic);
        new PageStyle().Small.FontOf(both.Emphasis).ShouldBe(TextFont.SansSemiBoldItalic);
    }

    [Fact]
    public void Emphasis_nests()
    {
        var paragraph = MarkdownReader.Read("a *b **c***  `d`").ShouldHaveSingleItem().ShouldBeOfType<ParagraphBlock>();
        paragraph.Inlines.Select(i => (((TextInline)i).Text, i.Emphasis)).ShouldBe(
        [
            ("a ", Emphasis.None), ("b ", Emphasis.Italic), ("c", Emphasis.Italic | Emphasis.Strong), ("  ", Emphasis.None), ("d", Emphasis.Code),
        ]);
    }

    [Fact]
    public void Lists_nest_and_keep_their_first_number()
    {
        var list = MarkdownReader.Read("3. a\n4. b\n   - c\n").ShouldHaveSingleItem().ShouldBeOfType<ListBlock>();
        list.FirstNumber.ShouldBe(3);
        list.Items.Length.ShouldBe(2);
        list.Items[1][1].ShouldBeOfType<ListBlock>().FirstNumber.ShouldBeNull();
    }

    [Fact]
    public void A_table_has_a_header_and_alignments()
    {
        var table = MarkdownReader.Read("| a | b |\n|:--|--:|\n| c | [Cm7] |\n").ShouldHaveSingleItem().ShouldBeOfType<TableBlock>();
        table.Header.Length.ShouldBe(2);
        table.Alignments.ShouldBe([ColumnAlignment.Left, ColumnAlignment.Right]);
        table.Rows.ShouldHaveSingleItem()[1].ShouldHaveSingleItem().ShouldBe(new ChordInline(Chord.Parse("Cm7")));
    }

    [Fact]
    public void Quotes_rules_code_and_headings_are_blocks()
    {
        var blocks = MarkdownReader.Read("# H\n\n> q\n\n---\n\n    G|--5--|\n    D|-----|\n");
        blocks.Length.ShouldBe(4);
        blocks[0].ShouldBeOfType<HeadingBlock>().Level.ShouldBe(1);
        blocks[1].ShouldBeOfType<QuoteBlock>();
        blocks[2].ShouldBeOfType<RuleBlock>();
        blocks[3].ShouldBeOfType<CodeBlock>().Lines.ShouldBe(["G|--5--|", "D|-----|"]);
    }

    [Fact]
    public void Music_is_read_within_words_but_not_after_a_backslash_or_in_code()
    {
        var paragraph = MarkdownReader.Read("*over [G7]* but \\[G7] and `[G7]`").ShouldHaveSingleItem().ShouldBeOfType<ParagraphBlock>();
        paragraph.Inlines.OfType<ChordInline>().ShouldHaveSingleItem().Emphasis.ShouldBe(Emphasis.Italic);
        string.Concat(paragraph.Inlines.OfType<TextInline>().Select(t => t.Text)).ShouldBe("over  but [G7] and [G7]");
    }

    [Fact]
    public void A_link_keeps_its_target_and_a_picture_becomes_its_description()
    {
        var paragraph = MarkdownReader.Read("[x](https://example.org) ![a neck](neck.png)").ShouldHaveSingleItem().ShouldBeOfType<ParagraphBlock>();
        paragraph.Inlines[0].Link.ShouldBe("https://example.org");
        paragraph.Inlines[^1].ShouldBe(new TextInline(" a neck"));
    }

    [Fact]
    public void Html_is_text() =>
        MarkdownReader.ReadInline("a <b>c</b>").OfType<TextInline>().Select(t => t.Text).ShouldBe(["a <b>c</b>"]);

    [Theory]
    [InlineData("")]
    [InlineData("  \n\n ")]
    public void Nothing_is_no_block(string source) => MarkdownReader.Read(source).ShouldBeEmpty();
}

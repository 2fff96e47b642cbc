using System.Collections.Immutable;
using CsCheck;

namespace SheetPress.Engraving.Tests;

/// <summary>Where running text may break over pages: rules of the trade for widows, orphans and headings, as from memory of the typographic handbooks.</summary>
public class ProseSetterTests
{
    private static readonly Gen<string> Paragraph = Gen.Int[1, 60].Select(words => string.Join(' ', Enumerable.Repeat("word after word", words)));

    private static readonly Gen<string> Block = Gen.Frequency(
        (5, Paragraph),
        (2, Gen.Const("## A heading of some words")),
        (2, Gen.Int[1, 6].Select(items => string.Join('\n', Enumerable.Repeat("- an item of a list that goes on for more than one line, so that it has a first and a last", items)))),
        (1, Gen.Const("What follows is announced:\n\n- one\n- two\n- three")),
        (1, Gen.Int[1, 12].Select(rows => "| A | B |\n|---|---|\n" + string.Join('\n', Enumerable.Repeat("| a | b |", rows)))));

    [Fact]
    public void No_page_begins_or_ends_with_a_line_that_is_parted_from_its_like()
    {
        var prose = new ProseSetter(new PageStyle());
        Gen.Select(Block.Array[1, 12], Gen.Double[60, 150]).Sample((sources, height) =>
        {
            var blocks = MarkdownReader.Read(string.Join("\n\n", sources));
            var flow = prose.Set(blocks, 80);
            var kept = Kept(prose, blocks);
            foreach (var page in PageBreaker.Break(flow, height, 0)[..^1]) kept.ShouldNotContain(page.End);
        }, iter: 200);
    }

    [Theory]
    [InlineData(11.5, 10)]
    [InlineData(1.5, 0)]
    public void No_single_item_of_a_list_is_parted_from_the_others(double linesThatFit, int last)
    {
        // Twelve items of a line, and room to choose where they part: not eleven and one, not one and eleven.
        var prose = new ProseSetter(new PageStyle());
        var flow = prose.Set(MarkdownReader.Read("Word after word.\n\n" + string.Join('\n', Enumerable.Repeat("- item", 12))), 80);
        var line = flow[2].Height + flow[2].After.Natural;
        var above = new FlowBox(30 * line, []);
        var page = above.Height + flow[0].Height + flow[0].After.Natural + (linesThatFit * line);
        var below = new FlowBox(page - ((12.2 - last) * line), []);
        PageBreaker.Break([above, .. flow, below, above], page, 0)[0].End.ShouldBe(2 + last);
    }

    // Indices of boxes before which no page may begin: the second and the last line of a paragraph, and what follows a heading.
    private static HashSet<int> Kept(ProseSetter prose, ImmutableArray<TextBlock> blocks)
    {
        var kept = new HashSet<int>();
        var at = 0;
        foreach (var block in blocks)
        {
            var count = prose.Set([block], 80).Length;
            if (block is HeadingBlock && at + count < prose.Set(blocks, 80).Length) kept.Add(at + count);
            if (block is ParagraphBlock or HeadingBlock && count > 1)
            {
                kept.Add(at + 1);
                kept.Add(at + count - 1);
            }
            if (block is ParagraphBlock { Inlines: [TextInline { Text: "What follows is announced:" }] }) kept.Add(at + count);
            // The head of a table stays with its first row, and no page begins with the second line of a list's item.
            if (block is TableBlock) kept.Add(at + 1);
            if (block is ListBlock list)
            {
                var line = at;
                foreach (var item in list.Items)
                {
                    var lines = prose.Set(item, 80).Length;
                    if (lines == 2) kept.Add(line + 1);
                    line += prose.Set([new ListBlock(null, [item], false)], 80).Length;
                }
            }
            at += count;
        }
        return kept;
    }
}

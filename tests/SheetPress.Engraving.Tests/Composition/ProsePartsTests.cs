namespace SheetPress.Engraving.Tests;

public class ProsePartsTests
{
    [Theory]
    [InlineData("words\n\nmore", "2")]
    [InlineData("words\n\n# A\n\na\n\nb\n\n# B\n\nc", "1 3 2")]
    [InlineData("# A\n\n## B\n\na\n\n---\n\nb", "3 1 1")]
    [InlineData("---\n\na", "1 1")]
    [InlineData("", "")]
    public void A_text_is_divided_at_its_headings_and_rules(string source, string sizes)
    {
        var blocks = MarkdownReader.Read(source);
        var parts = ProseParts.Of(blocks);
        string.Join(' ', parts.Select(p => p.Length)).ShouldBe(sizes);
        parts.SelectMany(p => p).ShouldBe(blocks);
    }

    [Theory]
    [InlineData("- a\n- b", false)]
    [InlineData("- a\n  - b", true)]
    public void Lists_in_lists_are_told(string source, bool expected) => ProseParts.HasListInList(MarkdownReader.Read(source)).ShouldBe(expected);
}

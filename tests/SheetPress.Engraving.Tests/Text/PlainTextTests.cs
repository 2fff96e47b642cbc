namespace SheetPress.Engraving.Tests;

public class PlainTextTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("Plain words.", "Plain words.")]
    [InlineData("**Say** the *root* of [Bbm7b5]", "Say the root of B♭m7♭5")]
    [InlineData("{R b3 5} and [bVI] in [the book](https://example.org), [see below]", "R ♭3 5 and ♭VI in the book, [see below]")]
    public void Markup_becomes_characters(string source, string text) => PlainText.Of(source).ShouldBe(text);
}

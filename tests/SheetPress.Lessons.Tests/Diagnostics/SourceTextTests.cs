namespace SheetPress.Lessons.Tests;

public class SourceTextTests
{
    [Theory]
    [InlineData("", 0, 1, 1)]
    [InlineData("ab\ncd", 0, 1, 1)]
    [InlineData("ab\ncd", 2, 1, 3)]
    [InlineData("ab\ncd", 3, 2, 1)]
    [InlineData("ab\ncd", 99, 2, 3)]
    [InlineData("ab\ncd", -1, 1, 1)]
    [InlineData("ab\r\ncd", 4, 2, 1)]
    [InlineData("a😀b", 3, 1, 3)]
    [InlineData("a\n", 2, 2, 1)]
    public void Lines_and_columns_start_at_one(string text, int offset, int line, int column) =>
        new SourceText("x", text).PositionOf(offset).ShouldBe(new LinePosition(line, column));

    [Fact]
    public void Lines_come_without_their_ends()
    {
        var source = new SourceText("x", "ab\r\ncd\n\ne");
        source.LineCount.ShouldBe(4);
        Enumerable.Range(1, 4).Select(source.LineText).ShouldBe(["ab", "cd", "", "e"]);
    }

    [Fact]
    public void A_bag_keeps_one_finding_a_place_and_a_hundred_in_all()
    {
        var bag = new DiagnosticBag(new SourceText("x", new string('x', 500)));
        for (var i = 0; i < 150; i++) bag.Error("e", new SourceSpan(i, i + 1), "M.");
        bag.Error("e", new SourceSpan(0, 1), "M.");
        bag.Items.Count.ShouldBe(100);
        bag.LeftOut.ShouldBe(50);
        bag.HasErrors.ShouldBeTrue();
    }

    [Fact]
    public void Parts_of_a_located_text_stay_located()
    {
        var text = LocatedText.At("one, two  three", 10);
        text.Words().Select(w => (w.Value, w.Span)).ShouldBe([("one", new(10, 13)), ("two", new(15, 18)), ("three", new(20, 25))]);
        text.Slice(3, 6).Trim().Span.ShouldBe(new SourceSpan(13, 18));
        text.SpanOf(15, 0).ShouldBe(new SourceSpan(25, 25));
        var joined = LocatedText.Join([LocatedText.At("ab", 0), LocatedText.At("c", 9)], ' ');
        joined.Value.ShouldBe("ab c");
        joined.SpanOf(2, 1).ShouldBe(new SourceSpan(2, 9));
        joined.SpanOf(3, 1).ShouldBe(new SourceSpan(9, 10));
        LocatedText.At("x", 4).As("word").SpanOf(1, 2).ShouldBe(new SourceSpan(4, 5));
    }
}

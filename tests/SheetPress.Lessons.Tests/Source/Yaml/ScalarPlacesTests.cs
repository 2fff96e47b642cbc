using System.Text;
using CsCheck;

namespace SheetPress.Lessons.Tests;

/// <summary>Values of every YAML form, located: each character that is not white space has to stand in the source where it is said to.</summary>
public class ScalarPlacesTests
{
    private static ScalarNode Value(string yaml)
    {
        var bag = new DiagnosticBag(new SourceText("t.yaml", yaml));
        var root = YamlTreeReader.Read(bag.Source, bag);
        bag.Items.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        return root.ShouldNotBeNull().Entries[0].Value.ShouldBeOfType<ScalarNode>();
    }

    private static void CheckLetters(string yaml, LocatedText text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsWhiteSpace(text.Value[i])) continue;
            var span = text.SpanOf(i, 1);
            yaml[span.Start].ShouldBeOneOf(text.Value[i], '\\');
        }
    }

    // What each value is follows YAML 1.2.2, chapters 7 and 8.
    [Theory]
    [InlineData("a: plain text", "plain text", "plain «text»")]
    [InlineData("a: folded\n  over\n  lines", "folded over lines", "folded\n  over\n  «lines»")]
    [InlineData("a: 'it''s quoted'", "it's quoted", "'it''s «quoted»'")]
    [InlineData("a: 'two\n  lines'", "two lines", "'two\n  «lines»'")]
    [InlineData("a: \"q\\u266d and\\tx\"", "q♭ and\tx", "\"q\\u266d and\\t«x»\"")]
    [InlineData("a: \"join\\\n  ed word\"", "joined word", "\"join\\\n  ed «word»\"")]
    [InlineData("a: |\n  one two\n\n  three", "one two\n\nthree", "|\n  one two\n\n  «three»")]
    [InlineData("a: |\n    deep\n      deeper words", "deep\n  deeper words", "|\n    deep\n      deeper «words»")]
    [InlineData("a: >\n  one\n  two\n\n  three words", "one two\nthree words", ">\n  one\n  two\n\n  three «words»")]
    [InlineData("a: >-\r\n  one\r\n  two words\r\n", "one two words", ">-\r\n  one\r\n  two «words»\r\n")]
    [InlineData("a: |2  # remark\n  one two", "one two", "|2  # remark\n  one «two»")]
    [InlineData("a: 😀 smile", "😀 smile", "😀 «smile»")]
    public void Last_word_is_found_where_it_stands(string yaml, string value, string marked)
    {
        var text = Value(yaml).Text;
        text.Value.ShouldBe(value);
        CheckLetters(yaml, text);
        var expected = MarkedLesson.Of("a: " + marked.Replace("\r", "¶", StringComparison.Ordinal)).Places[0];
        text.Words()[^1].Span.ShouldBe(expected);
    }

    [Fact]
    public void Words_are_found_in_any_form_indentation_and_line_length()
    {
        var word = Gen.Char["abcdefgXYZ#b♭7/()'\""].Array[1, 5].Select(c => new string(c));
        Gen.Select(word.Array[1, 20], Gen.Int[0, 4], Gen.Int[1, 5], Gen.Int[1, 6]).Sample((words, form, indent, perLine) =>
        {
            words = [.. words.Select(w => form == 0 && (w[0] is '#' or '\'' or '"' || w.Contains('#', StringComparison.Ordinal)) ? "x" + w.Replace("#", "", StringComparison.Ordinal) : w)];
            var yaml = new StringBuilder("a: ").Append(form switch { 1 => "'", 2 => "\"", 3 => "|\n" + new string(' ', indent), 4 => ">\n" + new string(' ', indent), _ => "" });
            for (var i = 0; i < words.Length; i++)
            {
                if (i > 0) yaml.Append(i % perLine == 0 ? "\n" + new string(' ', indent) : " ");
                yaml.Append(form switch { 1 => words[i].Replace("'", "''", StringComparison.Ordinal), 2 => words[i].Replace("\"", "\\\"", StringComparison.Ordinal), _ => words[i] });
            }
            yaml.Append(form switch { 1 => "'", 2 => "\"", _ => "" });
            var text = Value(yaml.ToString()).Text;
            var found = text.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            found.ShouldBe(words);
            CheckLetters(yaml.ToString(), text);
        });
    }

    [Fact]
    public void A_byte_of_a_pair_is_one_escape()
    {
        var text = Value("a: \"\\U0001F600 x\"").Text;
        text.Value.ShouldBe("😀 x");
        text.SpanOf(0, 2).ShouldBe(new SourceSpan(4, 14));
        text.SpanOf(3, 1).ShouldBe(new SourceSpan(15, 16));
    }
}

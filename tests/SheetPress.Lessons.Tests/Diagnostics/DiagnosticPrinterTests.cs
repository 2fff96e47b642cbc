namespace SheetPress.Lessons.Tests;

public class DiagnosticPrinterTests
{
    private static string Print(string marked, string advice = "Do this.")
    {
        var lesson = MarkedLesson.Of(marked);
        var source = new SourceText("dir/a.yaml", lesson.Text);
        return DiagnosticPrinter.Print(new Diagnostic("some-code", Severity.Error, "It is wrong.", advice, source, lesson.Places[0]));
    }

    [Fact]
    public void Shows_place_code_line_underline_and_advice() => Print("one\n  two «three» four\n").ShouldBe(
        "dir/a.yaml:2:7: error[some-code]: It is wrong.\n      two three four\n          ^^^^^\n    Do this.\n");

    [Fact]
    public void Leaves_out_what_there_is_not()
    {
        Print("«»", "").ShouldBe("dir/a.yaml: error[some-code]: It is wrong.\n");
        Print("a\n«»\nb", "").ShouldBe("dir/a.yaml:2:1: error[some-code]: It is wrong.\n");
        Print("a«»", "").ShouldBe("dir/a.yaml:1:2: error[some-code]: It is wrong.\n    a\n     ^\n");
    }

    [Theory]
    [InlineData("\t«x»y", "        xy", "        ^")]
    [InlineData("ab\t«x»", "    ab  x", "        ^")]
    [InlineData("«a\tb» c", "    a   b c", "    ^^^^^")]
    [InlineData("音«楽» x", "    音楽 x", "      ^^")]
    [InlineData("e\u0301 «x»", "    e\u0301 x", "      ^")]
    [InlineData("😀 «x»", "    😀 x", "       ^")]
    [InlineData("B♭«m»", "    B♭m", "      ^")]
    public void Underlines_in_columns_of_the_terminal(string marked, string line, string underline)
    {
        var lines = Print(marked).Split('\n');
        lines[1].ShouldBe(line);
        lines[2].ShouldBe(underline);
    }

    [Fact]
    public void Underlines_only_the_first_of_several_lines() => Print("ab «cd\n  ef» g").Split('\n')[1..3].ShouldBe(["    ab cd", "       ^^"]);

    [Fact]
    public void Cuts_long_lines_around_the_place()
    {
        var lines = Print(new string('a', 300) + " «wrong» " + new string('b', 300)).Split('\n');
        lines[1].Length.ShouldBeLessThan(120);
        lines[1].ShouldContain(" wrong ");
        lines[1].IndexOf("wrong", StringComparison.Ordinal).ShouldBe(lines[2].IndexOf('^', StringComparison.Ordinal));
        lines[2].Trim().ShouldBe("^^^^^");
        Print("«" + new string('a', 300) + "»").Split('\n')[2].Trim().Length.ShouldBe(110);
    }

    [Fact]
    public void Warnings_say_so()
    {
        var source = new SourceText("a.yaml", "x");
        DiagnosticPrinter.Head(new Diagnostic("c", Severity.Warning, "Hm.", "", source, new SourceSpan(0, 1))).ShouldBe("a.yaml:1:1: warning[c]: Hm.");
    }
}

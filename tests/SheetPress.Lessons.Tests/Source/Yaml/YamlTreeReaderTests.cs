using System.Diagnostics;

namespace SheetPress.Lessons.Tests;

public class YamlTreeReaderTests
{
    private static IReadOnlyList<string> Codes(string text) => [.. MarkedLesson.Read(text.ReplaceLineEndings("\n")).Findings.Select(f => $"{f.Position.Line} {f.Code}")];

    [Fact]
    public void Goes_on_behind_each_fault()
    {
        Codes("""
            title: Blues: one
            key: H minor
            meter:4/4
            tempo: 'fast
            progression: | Cm7
            level: 9
            exercises:
              - style: rots
               rhythm: q
            practice: &x
            """).ShouldBe([
            "1 colon-in-value", "2 unknown-key", "3 no-space-after-colon", "4 unclosed-quote", "5 block-sign-with-text", "6 out-of-range",
            "8 unknown-style", "9 indentation", "10 sign-at-start"]);
    }

    [Fact]
    public void Says_nothing_more_about_what_it_could_not_read()
    {
        // Neither "no title" nor "no progression": both are there, only broken.
        Codes("title: A: b\nkey: C\nprogression: |: C :|\nexercises: [roots]\n").ShouldBe(["1 colon-in-value", "3 block-sign-with-text"]);
    }

    [Fact]
    public void Windows_line_ends_change_nothing()
    {
        var text = MarkedLesson.With("progression: |\n  Cm7 | Fm7 |\n  Qm7 | F7:9 |").Replace("\n", "\r\n", StringComparison.Ordinal);
        MarkedLesson.Read(text).Findings.Select(f => $"{f.Position.Line}:{f.Position.Column} {f.Code}").ShouldBe(["6:3 unknown-chord", "6:9 too-many-beats"]);
        MarkedLesson.Good(MarkedLesson.Tiny.ReplaceLineEndings("\r\n"));
    }

    [Theory]
    [InlineData("[", 200_000)]
    [InlineData("{a: ", 50_000)]
    [InlineData("- ", 100_000)]
    [InlineData("? ", 100_000)]
    [InlineData("a: |\n  x\n", 20_000)]
    [InlineData("a: 'x\n", 30_000)]
    [InlineData("a: b: c\n", 25_000)]
    [InlineData("&a *a ", 30_000)]
    [InlineData("!a ", 60_000)]
    [InlineData("a: \"\\u0041", 20_000)]
    [InlineData("- [\n", 50_000)]
    [InlineData("x: {\n", 40_000)]
    [InlineData("\n", 240_000)]
    [InlineData("a: #\n", 40_000)]
    [InlineData("a:\n", 60_000)]
    [InlineData("progression: C | ", 10_000)]
    public void Ends_soon_whatever_comes(string piece, int times)
    {
        var text = string.Concat(Enumerable.Repeat(piece, times));
        if (text.Length > SourceGuard.MaximumLength) text = text[..SourceGuard.MaximumLength];
        var watch = Stopwatch.StartNew();
        var (lesson, findings) = MarkedLesson.Read(text);
        lesson.ShouldBeNull();
        findings.ShouldNotBeEmpty();
        // No speed test: a reader that is not linear takes minutes here.
        watch.Elapsed.ShouldBeLessThan(TimeSpan.FromSeconds(20));
    }

    [Theory]
    [InlineData("- [", 9_000)]
    [InlineData("{a: ", 2_000)]
    [InlineData("[", 9_000)]
    public void Ends_soon_on_many_lines_of_brackets(string piece, int perLine)
    {
        var line = string.Concat(Enumerable.Repeat(piece, perLine))[..Math.Min(9_000, piece.Length * perLine)] + "\n";
        var text = "title: " + string.Concat(Enumerable.Repeat(line, 25));
        var watch = Stopwatch.StartNew();
        MarkedLesson.Read(text).Lesson.ShouldBeNull();
        watch.Elapsed.ShouldBeLessThan(TimeSpan.FromSeconds(20));
    }

    [Fact]
    public void References_cannot_blow_up()
    {
        var bomb = "a: &a [x, x]\n" + string.Concat(Enumerable.Range(1, 30).Select(i => $"b{i}: &b{i} [*{(i == 1 ? "a" : "b" + (i - 1))}, *{(i == 1 ? "a" : "b" + (i - 1))}]\n"));
        Codes(bomb).Count.ShouldBeLessThanOrEqualTo(DiagnosticBag.Limit);
    }
}

using System.Reflection;

namespace SheetPress.Lessons.Tests;

/// <summary>One case for each code: the tiny lesson with one thing changed, and exactly the marked place reported.</summary>
public class DiagnosticCaseTests
{
    [Fact]
    public void The_tiny_lesson_has_no_finding()
    {
        var (lesson, findings) = MarkedLesson.Read(MarkedLesson.Tiny);
        findings.ShouldBeEmpty();
        lesson.ShouldNotBeNull().Title.ShouldBe("Tiny");
    }

    [Theory]
    [MemberData(nameof(AllCases))]
    public void Finding_is_made_at_its_place(string code, string marked)
    {
        var lesson = MarkedLesson.Of(marked);
        var (read, findings) = MarkedLesson.Read(lesson.Text);
        findings.Select(f => (f.Code, f.Span)).ShouldBe(lesson.Places.Select(p => (code, p)), string.Join('\n', findings.Select(DiagnosticPrinter.Print)));
        (read is null).ShouldBe(findings.Any(f => f.Severity == Severity.Error));
        foreach (var finding in findings)
        {
            finding.Message.ShouldEndWith(".");
            if (finding.Advice.Length > 0) finding.Advice[^1].ShouldBeOneOf('.', '?');
            if (finding.Suggestion is { } suggestion) finding.Advice.ShouldContain(suggestion);
        }
    }

    [Fact]
    public void Every_code_has_a_case()
    {
        var codes = typeof(DiagnosticCodes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!).ToArray();
        codes.Distinct().Count().ShouldBe(codes.Length);
        string[] covered = [.. DiagnosticCases.All.Select(c => c.Code), .. DiagnosticCases.TestedElsewhere, .. DiagnosticCases.MadeByStyles];
        codes.Except(covered).ShouldBeEmpty();
        covered.Except(codes).ShouldBeEmpty();
    }

    public static IEnumerable<TheoryDataRow<string, string>> AllCases() => DiagnosticCases.All.Select(c => new TheoryDataRow<string, string>(c.Code, c.Lesson));
}

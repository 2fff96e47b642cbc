namespace SheetPress.Lessons.Tests;

public class StarterLessonTests
{
    [Theory]
    [InlineData("First steps")]
    [InlineData("Don't: stop # here")]
    [InlineData("''")]
    [InlineData("a\nb\tc")]
    [InlineData("♭ and 😀")]
    [InlineData("\uD800")]
    public void Reads_without_a_finding_under_any_title(string title)
    {
        var (lesson, findings) = MarkedLesson.Read(StarterLesson.Text(title));
        findings.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        lesson.ShouldNotBeNull().Exercises.Length.ShouldBe(3);
        if (!title.Any(char.IsControl) && !title.Any(char.IsSurrogate)) lesson.Title.ShouldBe(title);
    }

    [Fact]
    public void An_empty_or_endless_title_still_makes_a_lesson()
    {
        MarkedLesson.Good(StarterLesson.Text("")).Title.ShouldBe("A new lesson");
        MarkedLesson.Good(StarterLesson.Text(new string('x', 5000))).Title.Length.ShouldBe(100);
    }

    [Fact]
    public void What_it_shows_as_remarks_can_be_switched_on()
    {
        // Entries behind "# " in the first column, with their values: each must be readable when the author takes the sign away.
        var lines = StarterLesson.Text("On").Split('\n').Select(l =>
            l.StartsWith("# subtitle", StringComparison.Ordinal) || l.StartsWith("# author", StringComparison.Ordinal) || l.StartsWith("# feel", StringComparison.Ordinal)
            || l.StartsWith("# diagrams", StringComparison.Ordinal) || l.StartsWith("# practice", StringComparison.Ordinal) || l.StartsWith("#   -", StringComparison.Ordinal)
            || l.StartsWith("#     ", StringComparison.Ordinal) ? l[2..] : l);
        var lesson = MarkedLesson.Good(string.Join('\n', lines));
        lesson.Subtitle.ShouldNotBeEmpty();
        lesson.Author.ShouldNotBeEmpty();
        lesson.Feel.ShouldBe(SheetPress.Scores.Feel.SwingEighths);
        lesson.Diagrams.Length.ShouldBe(2);
        lesson.PracticePlan.Length.ShouldBe(2);
    }
}

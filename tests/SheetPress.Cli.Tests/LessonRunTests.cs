using SheetPress.Lessons;

namespace SheetPress.Cli.Tests;

public class LessonRunTests
{
    [Fact]
    public void Fault_of_the_program_becomes_an_error_of_the_lesson()
    {
        var bag = new DiagnosticBag(new SourceText("a.yaml", "title: A"));
        LessonRun.Guard(bag, () => throw new InvalidOperationException("odd")).ShouldBeFalse();
        bag.HasErrors.ShouldBeTrue();
        bag.Items[0].Message.ShouldContain("odd");
    }

    [Fact]
    public void Trouble_with_files_is_left_to_the_caller() =>
        Should.Throw<IOException>(() => LessonRun.Guard(new DiagnosticBag(new SourceText("a.yaml", "")), () => throw new IOException("full")));
}

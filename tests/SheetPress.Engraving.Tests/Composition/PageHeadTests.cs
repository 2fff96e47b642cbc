namespace SheetPress.Engraving.Tests;

public class PageHeadTests
{
    private static readonly HeadMark Notes = new("What is going on", "", IsExercise: false);
    private static readonly HeadMark First = new("1  Roots", "1", IsExercise: true);
    private static readonly HeadMark Third = new("3  Walking line", "3", IsExercise: true);

    [Fact]
    public void It_names_the_only_exercise_of_the_page() => Of(null, true, First).ShouldBe("1  Roots");

    [Fact]
    public void It_gives_the_range_when_there_are_more() => Of(Notes, true, First, Third).ShouldBe("Exercises 1–3");

    [Fact]
    public void An_exercise_that_runs_on_to_the_page_counts() => Of(First, false, Third).ShouldBe("Exercises 1–3");

    [Fact]
    public void One_that_ended_before_does_not() => Of(First, true, Third).ShouldBe("3  Walking line");

    [Fact]
    public void A_page_without_exercises_has_its_section() => Of(Notes, false).ShouldBe("What is going on");

    private static string Of(HeadMark? running, bool anew, params HeadMark[] begun) => PageHead.Of(running, anew, begun, new SheetLabels());
}

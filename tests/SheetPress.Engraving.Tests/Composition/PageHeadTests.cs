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

    [Fact]
    public void It_has_fewer_words_for_a_narrow_page()
    {
        PageHead.Of(null, true, [Third], new SheetLabels()).ShortText.ShouldBe("Exercise 3");
        PageHead.Of(null, true, [First, Third], new SheetLabels()).ShortText.ShouldBe("Exercises 1–3");
        PageHead.Of(Notes, false, [], new SheetLabels()).ShortText.ShouldBe("What is going on");
        PageHead.Of(Notes with { ShortText = "Theory" }, false, [], new SheetLabels()).ShortText.ShouldBe("Theory");
    }

    // In large print on A5 a head has room for some thirty letters: the title is called by its first words before it is cut, and what the
    // pages are about by fewer words.
    [Theory]
    [InlineData("Short steps", "Short steps")]
    [InlineData("Two chords a bar, and swinging", "Two chords a bar")]
    [InlineData("Two chords: a bar, and swinging", "Two chords: a bar")]
    [InlineData("A long walk through the circle of fourths", "A long walk through the circle of …")]
    [InlineData("A, B and C go out for a walk by the river", "A, B and C go out for a walk by …")]
    public void A_title_is_shortened_where_it_has_a_break(string title, string running) =>
        RunningMatter.Title(title, [new("The harmony at a glance", "Harmony")], PageStyle.LargePrint(PaperSize.A5)).ShouldBe(running);

    [Fact]
    public void A_title_stays_whole_where_there_is_room() =>
        RunningMatter.Title("Two chords a bar, and swinging", [new("The harmony at a glance", "Harmony")], new PageStyle()).ShouldBe("Two chords a bar, and swinging");

    private static string Of(HeadMark? running, bool anew, params HeadMark[] begun) => PageHead.Of(running, anew, begun, new SheetLabels()).Text;
}

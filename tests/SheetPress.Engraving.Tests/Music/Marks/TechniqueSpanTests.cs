using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

/// <summary>Words of playing techniques over a tab: usual practice.</summary>
public class TechniqueSpanTests
{
    private static List<TextMark> Words(string notes) =>
        [.. Drawn.System(ScoreText.Parse(notes)).Of(MarkRole.Technique).OfType<TextMark>()];

    [Fact]
    public void Words_of_a_system_share_a_baseline_also_where_one_has_to_clear_something()
    {
        var words = Words("E1:1!pm E1:2 G2:1!vi!lr | E1:1!pm E1:1!pm E1:1 E1:1");
        words.Count.ShouldBe(3);
        words.Select(w => Math.Round(w.Position.Y, 6)).Distinct().ShouldHaveSingleItem();
    }

    [Fact]
    public void Words_that_would_overlap_stand_in_rows()
    {
        var words = Words("E1:1/2!pm E1:1/2!pm E1:1/2!pm!lr E1:1/2!lr E1:2");
        words.Select(w => Math.Round(w.Position.Y, 6)).Distinct().Count().ShouldBe(2);
    }
}

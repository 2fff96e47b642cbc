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

    // Where a long bar is divided over two systems no barline ends the first: a word over its last note stands before the edge.
    [Theory]
    [InlineData("lr")]
    [InlineData("pm")]
    public void A_word_over_the_last_note_ends_with_the_system(string technique)
    {
        var score = ScoreText.Parse($"E1:1/4 F1:1/4 E1:1/4 F1:1/4!{technique} E1:1/4 F1:1/4 E1:1/4 F1:1/4 E1:2", layout: StaffLayout.Staff);
        var divided = MeasureDivider.Divide(score, [new Division(0, 1)], breaks: true);
        for (var width = 20; width <= 30; width++)
        {
            var system = ScoreEngraver.Engrave(divided, width, new EngravingOptions()).Systems[0];
            system.Of(MarkRole.Barline).ShouldBeEmpty();
            system.Of(MarkRole.Technique).OfType<TextMark>().ShouldHaveSingleItem().Bounds.Right.ShouldBeLessThanOrEqualTo(system.Width + 1e-6);
        }
    }
}

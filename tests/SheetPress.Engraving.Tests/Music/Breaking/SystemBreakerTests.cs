using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

/// <summary>How full the systems of an exercise are.</summary>
public class SystemBreakerTests
{
    // An accidental before every note: bars that give way so little that two of them hardly fit a line, and one alone is stretched.
    private static string DenseBar(int notes) => string.Concat(Enumerable.Repeat("G2:1/4 G#2:1/4 ", notes / 2));

    [Theory]
    [InlineData(8, "2/4")]
    [InlineData(12, "3/4")]
    [InlineData(16, "4/4")]
    public void Dense_measures_stay_within_the_limits_at_every_width(int notes, string meter)
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat(DenseBar(notes), 7)), meter: meter);
        for (var width = 60; width <= 130; width += 2)
        {
            foreach (var system in ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems) system.StretchRatio.ShouldBeInRange(0.85, 1.6, $"at {width}");
        }
    }

    [Fact]
    public void Systems_of_equal_measures_look_alike()
    {
        // Two bars fit one line only just: all lines take one or all take two, not now one and now the other.
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat(DenseBar(12), 8)), meter: "3/4");
        for (var width = 50; width <= 96; width += 2)
        {
            var counts = ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.Select(s => s.LastMeasure - s.FirstMeasure + 1).ToList();
            counts.SkipLast(1).Distinct().Count().ShouldBe(1, $"at {width}: {string.Join(' ', counts)}");
        }
    }
}

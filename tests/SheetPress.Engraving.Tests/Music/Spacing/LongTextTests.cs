using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests.Music.Spacing;

/// <summary>Chord symbols that are longer than the notes they stand over.</summary>
public class LongTextTests
{
    /// <summary>Handbook rule, from memory: equal durations look equally spaced, so that the eye can read the beat.</summary>
    [Theory]
    [InlineData("Gbm7#5", "F#13b5")]
    [InlineData("C", "Abmaj7b5")]
    [InlineData("Amaj7#11", "C")]
    public void A_bar_stays_even_under_a_long_chord_symbol(string first, string second)
    {
        FrameMeasure With(int i, FrameMeasure m) => m with
        {
            Harmonies = i % 2 == 0 ? [new HarmonyMark(0, Chord.Parse(first)), new HarmonyMark(2, Chord.Parse(second))] : [new HarmonyMark(0, Chord.Parse("Am7"))],
        };
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:1 A2:1 ", 16)), layout: StaffLayout.Staff, frame: With);
        var shared = 0;
        for (var width = 60; width <= 110; width += 5)
        {
            foreach (var system in ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems)
            {
                if (system.LastMeasure > system.FirstMeasure) shared++;
                foreach (var measure in system.Of(MarkRole.Notehead).GroupBy(m => m.Origin.Measure))
                {
                    var lefts = measure.Select(m => m.Bounds.Left).ToList();
                    var gaps = lefts.Skip(1).Zip(lefts, (b, a) => b - a).ToList();
                    (gaps.Max() / gaps.Min()).ShouldBeLessThan(1.05, $"measure {measure.Key} at width {width}");
                }
            }
        }
        shared.ShouldBeGreaterThan(0);
    }
}

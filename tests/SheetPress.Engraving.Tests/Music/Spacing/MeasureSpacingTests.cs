using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests.Music.Spacing;

/// <summary>How measures are spaced: under texts longer than their notes, after the key signature, at rest.</summary>
public class MeasureSpacingTests
{
    /// <summary>Common practice, from memory: where there is room a chord symbol ends within its bar.</summary>
    [Fact]
    public void A_long_symbol_ends_before_the_barline_on_a_ragged_line()
    {
        static FrameMeasure With(int i, FrameMeasure m) => m with { Harmonies = [new HarmonyMark(0, Chord.Parse("Dbmaj7#11"))] };
        var system = Drawn.System(ScoreText.Parse("E2:2 A2:2 E2:2 ", meter: "2/4", layout: StaffLayout.Staff, frame: With));
        system.Width.ShouldBeLessThan(Drawn.Wide * 0.67);
        var barlines = system.Of(MarkRole.Barline);
        foreach (var symbol in system.Of(MarkRole.ChordSymbol).GroupBy(m => m.Origin.Measure))
        {
            symbol.Max(m => m.Bounds.Right).ShouldBeLessThan(barlines[symbol.Key].Bounds.Left);
        }
    }

    /// <summary>Handbook rule, from memory: an accidental does not look like one more of the key signature.</summary>
    [Theory]
    [InlineData("Bb1:1 ", "D major")]
    [InlineData("F#2:1 ", "F major")]
    public void The_first_accidental_stands_off_the_key_signature(string note, string key)
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat(note + "E2:1/2 A2:1/2 D3:1/2 E3:1/2 D3:1/2 A2:1/2 ", 6)), key: key, layout: StaffLayout.Staff);
        foreach (var system in ScoreEngraver.Engrave(score, 45, new EngravingOptions()).Systems)
        {
            var signature = system.Of(MarkRole.KeySignature).Concat(system.Of(MarkRole.Meter)).Max(m => m.Bounds.Right);
            var accidental = system.Of(MarkRole.Accidental)[0];
            (accidental.Bounds.Left - signature).ShouldBeGreaterThan(1);
        }
    }

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

    /// <summary>Handbook rule, from memory: equal durations look equally spaced, whatever stands under them; those of two voices stand in rows of their own.</summary>
    [Theory]
    [InlineData("E2:1/2!< A2:1/2!*ff E2:1/2 A2:1/2 ", null)]
    [InlineData("E2:1/2!*pp A2:1/2!*ff E2:1/2!*mp A2:1/2!*mf ", null)]
    [InlineData("E2:1!*p!< A2:1!*ff ", null)]
    [InlineData("E3:1/2!*mf A3:1/2 E3:1/2!*mf A3:1/2 ", "E2:1/2 A2:1/2!*mp E2:1/2 A2:1/2!*mp ")]
    public void A_bar_stays_even_over_dynamics(string half, string? lower)
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat(half, 8)), layout: StaffLayout.Staff, lower: lower is null ? null : string.Concat(Enumerable.Repeat(lower, 8)));
        for (var width = 80; width <= 130; width += 5)
        {
            foreach (var system in ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems)
            {
                foreach (var measure in system.Of(MarkRole.Notehead).Where(m => m.Origin.Voice == 0).GroupBy(m => m.Origin.Measure))
                {
                    var lefts = measure.Select(m => m.Bounds.Left).Order().ToList();
                    var gaps = lefts.Skip(1).Zip(lefts, (b, a) => b - a).ToList();
                    (gaps.Max() / gaps.Min()).ShouldBeLessThan(1.05, $"measure {measure.Key} at width {width}");
                }
            }
        }
    }

    /// <summary>Handbook rule, from memory: a measure of rest takes little room, however long its meter makes it.</summary>
    [Theory]
    [InlineData("4/4", "C3:1/2 D3:1/2 E3:1/2 F3:1/2 G3:1/2 A3:1/2 B3:1/2 C4:1/2 r:4 C3:4")]
    [InlineData("12/8", "C3:1/2 D3:1/2 E3:1/2 F3:1/2 G3:1/2 A3:1/2 B3:1/2 C4:1/2 B3:1/2 A3:1/2 G3:1/2 F3:1/2 r:6 C3:6")]
    public void A_measure_of_rest_is_narrower_than_one_of_a_long_note(string meter, string text)
    {
        var bars = Drawn.Staff(text, meter: meter).Of(MarkRole.Barline).Select(b => Math.Round(b.Bounds.Left, 2)).Distinct().Order().ToList();
        (bars[1] - bars[0]).ShouldBeLessThan(0.8 * (bars[2] - bars[1]));
    }
}

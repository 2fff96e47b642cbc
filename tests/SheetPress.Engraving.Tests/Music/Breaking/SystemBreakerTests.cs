using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

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

    // Single measures a little longer than the line, which have room to give: the whole exercise is set tighter.
    [Theory]
    [InlineData(StaffLayout.Staff)]
    [InlineData(StaffLayout.Tab)]
    public void Measures_too_long_for_the_line_are_set_tighter(StaffLayout layout)
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:1/4 ", 24 * 4)), meter: "6/4", layout: layout);
        for (var width = 62; width <= 80; width++)
        {
            foreach (var system in ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems) system.StretchRatio.ShouldBeGreaterThanOrEqualTo(0.85, $"at {width}");
        }
    }

    // A chart of two sections of eight bars, the first with a pickup, the second cut short: lines start where phrases do.
    [Fact]
    public void Lines_of_a_chart_keep_to_the_phrases()
    {
        FrameMeasure Frame(int i, FrameMeasure m) => i switch
        {
            0 => m with { Length = 1 },
            9 => m with { Directions = [new Direction(0, DirectionKind.Rehearsal, "B")] },
            15 => m with { Directions = [new Direction(0, DirectionKind.Coda)] },
            _ => m,
        };
        var score = ScoreText.Parse("r:1 " + string.Concat(Enumerable.Repeat("E2:4 ", 16)), layout: StaffLayout.ChordChart, frame: Frame);
        for (var width = 80; width <= 105; width += 5)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.ShouldContain(s => s.FirstMeasure == 9, $"at {width}");
        }
    }

    // Two parts of eight bars each, of which six fit a line well.
    [Fact]
    public void A_part_with_a_mark_begins_a_line()
    {
        static FrameMeasure Frame(int i, FrameMeasure m) => i == 8 ? m with { Directions = [new Direction(0, DirectionKind.Rehearsal, "B")] } : m;
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:2 A2:2 ", 16)), frame: Frame);
        for (var width = 70; width <= 130; width += 4)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.ShouldContain(s => s.FirstMeasure == 8, $"at {width}");
        }
    }

    // Three bars fill a line well, and the part that returns would start with the third of them.
    [Fact]
    public void A_part_begins_a_line_though_others_would_be_more_even()
    {
        static FrameMeasure Frame(int i, FrameMeasure m) => i is 0 or 8 ? m with { Directions = [new Direction(0, DirectionKind.Rehearsal, "A")] } : m;
        var bar = string.Concat(Enumerable.Repeat("E2:1/2 A2:1/2 D2:1/2 ", 4));
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat(bar, 12)), meter: "12/8", frame: Frame);
        for (var width = 90; width <= 104; width += 2)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.ShouldContain(s => s.FirstMeasure == 8, $"at {width}");
        }
    }

    // Six bars fill a line well, and four are too few for it unless all are spaced a little wider.
    [Fact]
    public void Parts_of_four_bars_are_spaced_wider_to_begin_their_lines()
    {
        static FrameMeasure Frame(int i, FrameMeasure m) => m with
        {
            Directions = i % 4 == 0 ? [new Direction(0, DirectionKind.Rehearsal, "A")] : [],
            Harmonies = [new HarmonyMark(0, Chord.Parse(i % 2 == 0 ? "A13#11" : "Fmaj7"))],
        };
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:2 ", 16)), meter: "2/4", frame: Frame);
        for (var width = 60; width <= 96; width += 2)
        {
            var systems = ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems;
            foreach (var part in (int[])[4, 8, 12]) systems.ShouldContain(s => s.FirstMeasure == part, $"part at {part}, width {width}");
            systems.ShouldAllBe(s => s.StretchRatio <= 1.6, $"{width}");
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

    [Theory]
    [InlineData("E2:1 A2:1 B2:1 D3:1 ")]
    [InlineData("E2:1/2 G2:1/2 A2:1/2 B2:1/2 D3:1/2 B2:1/2 A2:1/2 G2:1/2 ")]
    public void Four_bars_do_not_leave_one_alone(string bar)
    {
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat(bar, 4)));
        for (var width = 30; width <= 130; width += 2)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.Select(s => s.FirstMeasure).ShouldNotBe([0, 3], $"at {width}");
        }
    }

    // Common practice, from memory: bars are shared out over the lines rather than left over for a short last one.
    [Fact]
    public void Sixteen_bars_of_which_twelve_fit_a_line_are_two_lines_of_eight()
    {
        static FrameMeasure With(int i, FrameMeasure m) => m with { Harmonies = [new HarmonyMark(0, Chord.Parse(i % 2 == 0 ? "Fmaj7" : "Bb13"))] };
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:3/2 A2:3/2 ", 16)), meter: "6/8", frame: With);
        for (var width = 110; width <= 126; width += 2)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.Select(s => s.FirstMeasure).ShouldBe([0, 8], $"at {width}");
        }
    }

    // Four bars and two endings of four each, of which six bars fit a line well.
    [Fact]
    public void The_bracket_of_an_ending_stands_on_one_line()
    {
        static FrameMeasure Frame(int i, FrameMeasure m) => m with
        {
            RepeatStart = i == 0,
            EndingStart = i == 4 ? [1] : i == 8 ? [2] : [],
            EndingStop = i is 7 or 11,
            EndingClosed = i == 7,
            RepeatEndTimes = i == 7 ? 2 : 0,
        };
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:1 A2:1 D3:1 ", 12)), meter: "3/4", frame: Frame);
        for (var width = 60; width <= 84; width += 2)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.ShouldAllBe(s => s.FirstMeasure % 4 == 0, $"at {width}");
        }
    }

    [Fact]
    public void Few_notes_are_spaced_wider_throughout_to_keep_the_count_asked_for()
    {
        var systems = Systems(string.Concat(Enumerable.Repeat("E2:4 ", 8)), count: 2, width: 100);
        systems.Select(s => s.LastMeasure - s.FirstMeasure + 1).ShouldBe([2, 2, 2, 2]);
        foreach (var system in systems) system.StretchRatio.ShouldBeInRange(0.85, 1.6);
    }

    [Fact]
    public void A_count_that_is_too_much_for_the_line_is_halved_for_the_whole_exercise()
    {
        var systems = Systems(string.Concat(Enumerable.Repeat(string.Concat(Enumerable.Repeat("E2:1/4 ", 16)), 8)), count: 4, width: 85);
        systems.Select(s => s.LastMeasure - s.FirstMeasure + 1).ShouldBe([2, 2, 2, 2]);
    }

    [Fact]
    public void Chord_symbols_are_not_crammed_into_one_line_across_a_new_part()
    {
        // Twelve bars fit such lines just so that no two chord symbols touch; the new part begins with the ninth.
        static FrameMeasure With(int i, FrameMeasure m) => m with
        {
            Harmonies = [new HarmonyMark(Fraction.Zero, Chord.Parse("Gbmaj7#9"))],
            Directions = i == 8 ? [new Direction(Fraction.Zero, DirectionKind.Rehearsal, "B")] : [],
        };
        var score = ScoreText.Parse(string.Concat(Enumerable.Repeat("E2:1 A2:1/2 ", 16)), meter: "3/8", frame: With);
        for (var width = 100; width <= 122; width += 2)
        {
            ScoreEngraver.Engrave(score, width, new EngravingOptions()).Systems.Select(s => s.FirstMeasure).ShouldBe([0, 8], $"at {width}");
        }
    }

    private static ImmutableArray<EngravedSystem> Systems(string text, int? count, double width) =>
        ScoreEngraver.Engrave(ScoreText.Parse(text, header: h => h with { MeasuresPerSystem = count }), width, new EngravingOptions()).Systems;
}

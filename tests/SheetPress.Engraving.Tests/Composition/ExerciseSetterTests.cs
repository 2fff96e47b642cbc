using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

public class ExerciseSetterTests
{
    private static readonly PageStyle Style = new();

    [Fact]
    public void Title_and_instruction_stay_with_the_first_system()
    {
        // Too high for a page, so that it may be split.
        var flow = ExerciseSetter.Make(Exercise(), Systems(20, 12), Style, 240);
        var first = flow.TakeWhile(b => b.Drawings.All(d => d.Scale == 1)).Count();
        first.ShouldBeGreaterThanOrEqualTo(2);
        foreach (var box in flow.Take(first)) box.BreakPenalty.ShouldBe(FlowBox.Never);
        flow[first].BreakPenalty.ShouldBeLessThan(FlowBox.Never);
    }

    [Fact]
    public void An_exercise_that_fits_a_page_is_not_split()
    {
        var flow = ExerciseSetter.Make(Exercise(), Systems(5, 12), Style, 240);
        foreach (var box in flow[..^1]) box.BreakPenalty.ShouldBe(FlowBox.Never);
        flow[^1].BreakPenalty.ShouldBe(0);
    }

    [Fact]
    public void Systems_keep_their_outlines_apart_and_their_staves_too()
    {
        // The second system has ink far above its staff: it is that ink that keeps the distance.
        var systems = Systems(1, 12).Add(System(12, above: 6));
        var flow = ExerciseSetter.Make(Exercise(), systems, Style, 240);
        var gap = flow[^2].After.Natural;
        gap.ShouldBe(Style.SystemGap, 1e-9);
        var level = ExerciseSetter.Make(Exercise(), Systems(2, 12), Style, 240);
        level[^2].After.Natural.ShouldBeGreaterThan(Style.SystemGap);
    }

    // A rehearsal mark at the left fits beside the rows of the system above: it would be read with them.
    [Fact]
    public void Nothing_of_a_system_stands_level_with_the_rows_of_the_one_above()
    {
        var mark = System(12) with { Top = -8, Upper = new Skyline(true, [new SkylineStep(0, 4, -8), new SkylineStep(4, 99, -1)]) };
        var rows = System(12) with { Bottom = 20, Lower = new Skyline(false, [new SkylineStep(0, 10, 13), new SkylineStep(10, 99, 20)]) };
        ExerciseSetter.Make(Exercise(), [rows, mark], Style, 240)[^2].After.Natural.ShouldBeGreaterThan(Style.SystemGap / 2);
    }

    [Fact]
    public void Pages_hold_whole_exercises()
    {
        var flow = new List<FlowBox>();
        for (var i = 0; i < 7; i++) flow.AddRange(ExerciseSetter.Make(Exercise(), Systems(3, 14), Style, 240));
        foreach (var page in PageBreaker.Break(flow, 240, 0))
        {
            flow[page.Start].Head.ShouldNotBeNull();
        }
    }

    // Five systems of which four fit: three and two rather than four and one.
    [Fact]
    public void No_system_stands_alone_on_a_page_where_two_could()
    {
        var flow = ExerciseSetter.Make(Exercise(), Systems(5, 24), Style, 240);
        var pages = PageBreaker.Break(flow, 240, 0);
        pages.Select(p => Enumerable.Range(p.Start, p.End - p.Start).Count(i => flow[i].Drawings.Any(d => d.Scale != 1))).ShouldBe([3, 2]);
    }

    private static ExerciseContent Exercise() => new()
    {
        Number = "1",
        Score = new Score(
            new ScoreHeader
            {
                Id = "roots",
                Title = "Roots on the beat",
                Instruction = "Play the root of each chord and *let it ring*.",
                Instrument = SampleHandout.Bass,
                Tempo = new Tempo(92, new NoteValue(NoteBase.Quarter)),
            },
            [new Measure { Number = 1, Meter = new Meter(4, 4), Key = Key.Parse("C"), Length = new Fraction(4), Voices = [new Voice([], [])] }]),
    };

    private static ImmutableArray<EngravedSystem> Systems(int count, double height) => [.. Enumerable.Range(0, count).Select(_ => System(height))];

    private static EngravedSystem System(double height, double above = 1)
    {
        Mark[] marks = [new RectangleMark(new Box(0, -above, 99, height + 1))];
        return new EngravedSystem
        {
            Drawing = new Drawing([.. marks]),
            Top = -above,
            Bottom = height + 1,
            StaffTop = 0,
            StaffBottom = height,
            NaturalWidth = 99,
            LeastWidth = 0,
            Width = 99,
            StretchRatio = 1,
            FirstMeasure = 0,
            LastMeasure = 0,
            Upper = new Skyline(true, [new SkylineStep(0, 99, -above)]),
            Lower = new Skyline(false, [new SkylineStep(0, 99, height + 1)]),
        };
    }
}

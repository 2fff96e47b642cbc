namespace SheetPress.Scores.Tests;

/// <summary>Equations of note values. That the left value is the old one and lasts as long as the right one is common practice (from memory); the numbers are worked out by hand.</summary>
public class TempoEquationTests
{
    private static readonly NoteValue Half = new(NoteBase.Half);
    private static readonly NoteValue Quarter = new(NoteBase.Quarter);
    private static readonly NoteValue DottedQuarter = new(NoteBase.Quarter, 1);
    private static readonly NoteValue Eighth = new(NoteBase.Eighth);
    private static readonly NoteValue Sixteenth = new(NoteBase.Sixteenth);

    // 90 quarters a minute: as many dotted quarters are 135 quarters; its eighths are 180 a minute; its dotted quarters 60.
    [Theory]
    [InlineData("quarter = dotted quarter", 90, 135)]
    [InlineData("dotted quarter = quarter", 60, 60)]
    [InlineData("eighth = eighth", 180, 90)]
    [InlineData("half = quarter", 45, 45)]
    [InlineData("quarter = half", 90, 180)]
    [InlineData("eighth = sixteenth", 180, 45)]
    public void As_many_right_values_a_minute_as_left_ones_before(string equation, double beats, double quarters)
    {
        var sides = equation.Split(" = ").Select(side => side switch { "half" => Half, "quarter" => Quarter, "dotted quarter" => DottedQuarter, "eighth" => Eighth, _ => Sixteenth }).ToArray();
        var tempo = new TempoEquation(sides[0], sides[1]).From(new Tempo(90, Quarter));
        tempo.ShouldBe(new Tempo(beats, sides[1]));
        tempo.QuartersPerMinute.ShouldBe(quarters);
    }

    // 60 dotted quarters are 90 quarters, and 180 eighths.
    [Fact]
    public void The_tempo_before_may_count_another_value() =>
        new TempoEquation(Eighth, Eighth).From(new Tempo(60, DottedQuarter)).ShouldBe(new Tempo(180, Eighth));

    [Fact]
    public void An_equation_follows_the_measure_before_and_the_next_one_follows_it() =>
        Quarters([Plain(), Plain(60), Equated(Quarter, DottedQuarter), Plain(), Equated(DottedQuarter, Quarter)]).ShouldBe("100 60 90 90 60");

    [Fact]
    public void A_tempo_in_the_middle_of_the_measure_before_counts() =>
        Quarters([Plain() with { Directions = [Direction.OfTempo(2, new Tempo(70, Quarter))] }, Equated(Quarter, Half)]).ShouldBe("100 140");

    [Fact]
    public void A_repeat_does_not_take_it_twice() =>
        Quarters([Plain() with { RepeatStart = true }, Equated(Quarter, Half) with { RepeatEndTimes = 3 }, Equated(Quarter, Eighth)]).ShouldBe("100 200 100");

    // The second ending is played after the first measure, at 100, and not after the first ending, at 60.
    [Fact]
    public void A_second_ending_follows_what_is_played_before_it() => Quarters(
    [
        Plain() with { RepeatStart = true },
        Plain(60) with { EndingStart = [1], EndingStop = true, RepeatEndTimes = 2 },
        Equated(Quarter, Half) with { EndingStart = [2], EndingStop = true },
    ]).ShouldBe("100 60 200");

    [Fact]
    public void A_measure_that_is_never_played_follows_the_page() =>
        Quarters([Plain(60), Equated(Quarter, Half) with { EndingStart = [2], EndingStop = true }, Plain()]).ShouldBe("60 120 60");

    [Fact]
    public void The_score_that_is_built_has_both_and_a_wrong_one_is_found()
    {
        var score = Build([Plain(), Equated(Quarter, DottedQuarter)]);
        var direction = score.Measures[1].Directions.ShouldHaveSingleItem();
        direction.Equation.ShouldBe(new TempoEquation(Quarter, DottedQuarter));
        direction.Tempo.ShouldBe(new Tempo(100, DottedQuarter));
        ScoreChecks.Run(score).ShouldBeEmpty();
        var wrong = score with { Measures = score.Measures.SetItem(1, score.Measures[1] with { Directions = [direction with { Tempo = new Tempo(100, Quarter) }] }) };
        ScoreChecks.Run(wrong).ShouldHaveSingleItem().Rule.ShouldBe(ScoreRule.MarksInMeasure);
    }

    private static string Quarters(FrameMeasure[] frame) => string.Join(' ', TempoPath.AtStarts(Build(frame)).Select(t => t.QuartersPerMinute));

    private static Score Build(FrameMeasure[] frame) => ScoreBuilder.Build(Lines.Header with { Tempo = new Tempo(100, Quarter) }, frame, new Line([], 0));

    private static FrameMeasure Plain(int? tempo = null) => Lines.Measure("4/4") with { Directions = tempo is { } beats ? [Direction.OfTempo(0, new Tempo(beats, Quarter))] : [] };

    private static FrameMeasure Equated(NoteValue before, NoteValue after) => Lines.Measure("4/4") with { Directions = [Direction.OfEquation(0, new TempoEquation(before, after))] };
}

namespace SheetPress.Scores.Tests;

/// <summary>Forms as measures in a row, a number for the tempo that a measure states at its start. That what is played again has its first tempo again is common practice.</summary>
public class TempoPathTests
{
    [Fact]
    public void A_tempo_holds_until_the_next_one() => Starts([Plain(), Plain(60), Plain(), Plain(90)]).ShouldBe("100 60 60 90");

    [Fact]
    public void A_tempo_in_the_middle_of_a_measure_holds_from_the_next_one_on() =>
        Starts([Plain() with { Directions = [Direction.OfTempo(2, Quarter(70))] }, Plain()]).ShouldBe("100 70");

    [Fact]
    public void A_repeat_goes_back_to_the_tempo_of_its_start() =>
        Starts([Plain(80), Plain() with { RepeatStart = true }, Plain(60) with { RepeatEndTimes = 2 }, Plain()]).ShouldBe("80 80 60 60");

    [Fact]
    public void An_ending_is_as_fast_as_what_is_played_before_it() =>
        Starts([Plain() with { RepeatStart = true }, Plain(60) with { EndingStart = [1], EndingStop = true, RepeatEndTimes = 2 }, Plain() with { EndingStart = [2], EndingStop = true }]).ShouldBe("100 60 100");

    [Fact]
    public void A_coda_is_as_fast_as_where_the_jump_leaves_from() => Starts(
    [
        Plain() with { Directions = [new Direction(4, DirectionKind.ToCoda)] },
        Plain(60) with { Directions = [Direction.OfTempo(0, Quarter(60)), new Direction(4, DirectionKind.DaCapo, "D.C. al Coda")] },
        Plain() with { Directions = [new Direction(0, DirectionKind.Coda)] },
    ]).ShouldBe("100 60 100");

    [Fact]
    public void Measures_that_are_never_played_follow_the_page() =>
        Starts([Plain(), Plain(60) with { EndingStart = [2], EndingStop = true }, Plain()]).ShouldBe("100 60 100");

    [Fact]
    public void Faster_is_in_whole_beats_of_the_same_value()
    {
        new Tempo(75, new NoteValue(NoteBase.Half)).Times(0.5).ShouldBe(new Tempo(38, new NoteValue(NoteBase.Half)));
        new Tempo(72.5, new NoteValue(NoteBase.Quarter)).Times(1).BeatsPerMinute.ShouldBe(72.5);
    }

    private static string Starts(FrameMeasure[] frame) =>
        string.Join(' ', TempoPath.AtStarts(ScoreBuilder.Build(Lines.Header with { Tempo = Quarter(100) }, frame, new Line([], 0))).Select(t => t.BeatsPerMinute));

    private static FrameMeasure Plain(int? tempo = null) => Lines.Measure("4/4") with { Directions = tempo is { } beats ? [Direction.OfTempo(0, Quarter(beats))] : [] };

    private static Tempo Quarter(int beats) => new(beats, new NoteValue(NoteBase.Quarter));
}

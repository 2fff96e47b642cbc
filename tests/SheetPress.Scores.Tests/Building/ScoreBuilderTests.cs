using SheetPress.Theory;

namespace SheetPress.Scores.Tests;

public class ScoreBuilderTests
{
    [Fact]
    public void A_note_over_the_bar_line_is_tied_and_carries_each_mark_once()
    {
        var note = Lines.Note(3, 2, "A1") with
        {
            Articulations = Articulations.Accent | Articulations.Fermata,
            Stroke = Stroke.Thumb,
            Connection = Connection.Slide,
            SlideIn = LooseSlide.Below,
            Count = "4",
        };
        var next = Lines.Note(5, 3, "B1");
        var score = ScoreBuilder.Build(Lines.Header, [Lines.Measure("4/4"), Lines.Measure("4/4")], new Line([note, next], 8));

        var first = score.Measures[0].Voices[0].Events[^1];
        var second = score.Measures[1].Voices[0].Events[0];
        (first.Tones[0].TieStart, first.Tones[0].TieStop).ShouldBe((true, false));
        (second.Tones[0].TieStart, second.Tones[0].TieStop).ShouldBe((false, true));
        (first.Articulations, second.Articulations).ShouldBe((Articulations.Accent, Articulations.Fermata));
        (first.Stroke, second.Stroke).ShouldBe((Stroke.Thumb, Stroke.None));
        (first.Connection, second.Connection).ShouldBe((Connection.None, Connection.Slide));
        (first.SlideIn, second.SlideIn).ShouldBe((LooseSlide.Below, LooseSlide.None));
        (first.Count, second.Count).ShouldBe(("4", null));
    }

    // Common practice: a bar of silence is one whole rest in every meter.
    [Theory]
    [InlineData("4/4")]
    [InlineData("3/4")]
    [InlineData("6/8")]
    [InlineData("7/8")]
    public void A_silent_measure_is_one_whole_rest(string meter)
    {
        var frame = Lines.Measure(meter);
        var e = ScoreBuilder.Build(Lines.Header, [frame], new Line([], frame.Length)).Measures[0].Voices[0].Events.ShouldHaveSingleItem();
        (e.IsRest, e.Value.Base, e.Value.Dots, e.MeasureRest, e.End).ShouldBe((true, NoteBase.Whole, 0, frame.Length, frame.Length));
    }

    // Common practice: a pickup is not counted, and the two parts of a bar divided by a repeat count once.
    [Fact]
    public void Numbers_follow_full_bars()
    {
        FrameMeasure[] frame =
        [
            Lines.Measure("4/4", "1"), Lines.Measure("4/4"), Lines.Measure("4/4", "3") with { RepeatEndTimes = 2 },
            Lines.Measure("4/4", "1"), Lines.Measure("4/4"), Lines.Measure("4/4", "3"),
        ];
        var score = ScoreBuilder.Build(Lines.Header, frame, new Line([], 16));
        score.Measures.Select(m => m.Number).ShouldBe([0, 1, 2, 2, 3, 4]);
        score.Measures.Select(m => m.Barline).ShouldBe([Barline.Single, Barline.Single, Barline.Single, Barline.Single, Barline.Single, Barline.Final]);
    }

    // Handbook rule, from memory: a double barline where the player leaves for another place and before the coda, which begins a system.
    [Fact]
    public void The_way_through_a_form_is_seen_from_its_barlines()
    {
        FrameMeasure With(DirectionKind kind) => Lines.Measure("4/4") with { Directions = [new Direction(0, kind, "")] };
        FrameMeasure[] frame =
        [
            With(DirectionKind.Segno), With(DirectionKind.Fine), With(DirectionKind.ToCoda), Lines.Measure("4/4"), With(DirectionKind.DalSegno),
            With(DirectionKind.Coda), Lines.Measure("4/4") with { Barline = Barline.Single }, With(DirectionKind.Coda) with { Barline = Barline.Final }, With(DirectionKind.Fine),
        ];
        var measures = ScoreBuilder.Build(Lines.Header, frame, new Line([], 36)).Measures;
        measures.Select(m => m.Barline).ShouldBe([Barline.Single, Barline.Double, Barline.Single, Barline.Single, Barline.Double, Barline.Single, Barline.Single, Barline.Final, Barline.Final]);
        measures.Select(m => m.BreakBefore).ShouldBe([false, false, false, false, false, true, false, true, false]);
        ScoreBuilder.Build(Lines.Header, [With(DirectionKind.Coda)], new Line([], 4)).Measures[0].BreakBefore.ShouldBeFalse();
    }

    [Fact]
    public void A_dead_note_is_struck_once_and_never_tied()
    {
        var note = Lines.Note(new Fraction(3, 2), 1, "A1");
        note = note with { Tones = [note.Tones[0] with { Head = Notehead.Dead }] };
        var events = ScoreBuilder.Build(Lines.Header, [Lines.Measure("4/4")], new Line([note], 4)).Measures[0].Voices[0].Events;
        events.Select(e => (e.IsRest ? "r" : "") + RhythmText.Text(e.Value)).ShouldBe(["r4", "r8", "8", "r2"]);
        events.SelectMany(e => e.Tones).ShouldAllBe(t => !t.TieStart && !t.TieStop);
    }

    // Handbook rule, from memory: a dot says short and a tie says long.
    [Theory]
    [InlineData(Articulations.Staccato, "r4 r8 8 r2")]
    [InlineData(Articulations.Staccato | Articulations.Accent, "r4 r8 8 r2")]
    [InlineData(Articulations.Staccato | Articulations.Tenuto, "r4 r8 8 8 r8 r4")]
    [InlineData(Articulations.Accent, "r4 r8 8 8 r8 r4")]
    public void A_staccato_note_is_never_tied(Articulations articulations, string written)
    {
        var note = Lines.Note(new Fraction(3, 2), 1, "A1") with { Articulations = articulations };
        var events = ScoreBuilder.Build(Lines.Header, [Lines.Measure("4/4")], new Line([note], 4)).Measures[0].Voices[0].Events;
        string.Join(' ', events.Select(e => (e.IsRest ? "r" : "") + RhythmText.Text(e.Value))).ShouldBe(written);
        var over = ScoreBuilder.Build(Lines.Header, [Lines.Measure("4/4"), Lines.Measure("4/4")], new Line([note with { Start = new Fraction(7, 2) }], 8)).Measures[1].Voices[0].Events;
        over[0].IsRest.ShouldBe(written.EndsWith("r2", StringComparison.Ordinal));
    }

    [Fact]
    public void A_silent_second_voice_is_left_out()
    {
        var score = ScoreBuilder.Build(Lines.Header, [Lines.Measure("4/4"), Lines.Measure("4/4")], Lines.OnOnePitch("4 4"), Lines.OnOnePitch("r4 2", "E1"));
        score.Measures.Select(m => m.Voices.Length).ShouldBe([1, 2]);
    }

    [Fact]
    public void A_rhythm_that_cannot_be_written_is_refused_with_its_measure() =>
        Should.Throw<UnwritableRhythmException>(() => ScoreBuilder.Build(
            Lines.Header,
            [Lines.Measure("4/4"), Lines.Measure("4/4")],
            new Line([Lines.Note(4, new Fraction(1, 11), "A1")], 8))).MeasureIndex.ShouldBe(1);

    [Fact]
    public void Misuse_is_refused_with_a_reason()
    {
        FrameMeasure[] frame = [Lines.Measure("4/4")];
        Should.Throw<ArgumentException>(() => ScoreBuilder.Build(Lines.Header, [], new Line([], 0)));
        Should.Throw<ArgumentException>(() => ScoreBuilder.Build(Lines.Header, frame, new Line([], 5))).Message.ShouldContain("hold 4");
        Should.Throw<ArgumentException>(() => ScoreBuilder.Build(Lines.Header, frame, new Line([Lines.Note(0, 2, "A1"), Lines.Note(1, 1, "A1")], 4))).Message.ShouldContain("starts before");
        Should.Throw<ArgumentException>(() => ScoreBuilder.Build(Lines.Header, frame, new Line([], 4) { Changes = [new LineChange(1) { Clef = Clef.Treble }] })).Message.ShouldContain("No measure starts at 1");
        Should.Throw<ArgumentException>(() => ScoreBuilder.Build(Lines.Header, [Lines.Measure("4/4", "5")], new Line([], 5)));
    }
}

using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

/// <summary>Changes of clef and tempo and tuplets within tuplets, from the line that a teacher writes to the score.</summary>
public class LineChangesTests
{
    [Fact]
    public void A_line_goes_up_into_the_treble_clef_and_comes_back()
    {
        Clefs("w C2 | [treble clef] w C3 | E3 | [bass clef] C2").ShouldBe("- Treble - Bass");
        Clefs("[treble clef] w C3 | E3 | [ Bass Clef ] C2 | C2").ShouldBe("Treble - Bass -");
    }

    [Fact]
    public void A_clef_in_force_already_is_left_out() => Clefs("[bass clef] w C2 | [treble clef] C3 | [treble clef] E3 | C3").ShouldBe("- Treble - -");

    [Fact]
    public void A_line_that_starts_over_goes_back_to_its_first_clef_and_tempo()
    {
        Clefs("w C2 | [treble clef] C3").ShouldBe("- Treble Bass Treble");
        Clefs("[treble clef] w C3 | [bass clef] C2").ShouldBe("Treble Bass Treble Bass");
        Tempos("w C2 | [tempo 60] C3").ShouldBe("- 60 90 60");
    }

    [Fact]
    public void An_instrument_of_the_treble_clef_has_its_own_kind_of_it_back()
    {
        var guitar = LessonMaker.Lesson("C | F | G | C", key: "C major", instrument: "guitar-6");
        guitar = guitar with { Instrument = guitar.Instrument with { Clef = Clef.Treble8, OctaveShift = 0 } };
        Score(guitar, "w C4 | [bass clef] E2 | [treble clef] C4 | C4").Measures.Select(m => m.ClefChange).ShouldBe([null, Clef.Bass, Clef.Treble8, null]);
    }

    [Fact]
    public void A_tempo_counts_the_beat_of_its_bar_and_overrules_the_progression()
    {
        Tempos("w C2 | [tempo 60] [treble clef] C3 | [tempo half = 40] C2 | C2").ShouldBe("- 60 40 -");
        var lesson = LessonMaker.Lesson("C | F | G | C", meter: new Meter(6, 8));
        lesson = lesson with { Progression = lesson.Progression with { Measures = [.. lesson.Progression.Measures.Select((m, i) => i == 1 ? m with { Directions = [Direction.OfTempo(0, lesson.Tempo)] } : m)] } };
        var tempo = Score(lesson, "h. C2 | [tempo 60] C2 | C2 | C2").Measures[1].Directions.ShouldHaveSingleItem().Tempo;
        tempo.ShouldBe(new Tempo(60, new NoteValue(NoteBase.Quarter, 1)));
    }

    // 90 quarters before: 90 halves a minute, then 180 quarters and 360 eighths; back to 90 where the line starts over.
    [Fact]
    public void An_equation_follows_the_bar_before_it()
    {
        Tempos("w C2 | [tempo quarter = half] C3 | [tempo eighth = eighth] C3 | [tempo 90] C3").ShouldBe("- 90 360 90");
        Tempos("w C2 | [tempo quarter = half] C3").ShouldBe("- 90 90 90");
        Score(LessonMaker.Lesson("C | F | G | C"), "w C2 | [tempo quarter = half] C3").Measures.SelectMany(m => m.Directions).Select(d => d.Tempo!.QuartersPerMinute).ShouldBe([180, 90, 180]);
        // What leaves the tempo as it is needs no way back.
        Tempos("w C2 | [tempo eighth = eighth] C3").ShouldBe("- 180 - 180");
    }

    [Fact]
    public void A_second_tempo_or_clef_in_a_bar_is_reported()
    {
        Codes(("line", "w C2 | [tempo 60] [tempo 80] w C2")).ShouldBe([DiagnosticCodes.ChangeTwice]);
        Codes(("line", "w C2 | [tempo quarter = half] [treble clef] [tempo 80] w C2")).ShouldBe([DiagnosticCodes.ChangeTwice]);
        Codes(("line", "[treble clef] [bass clef] w C2 | w C2")).ShouldBe([DiagnosticCodes.ChangeTwice]);
    }

    [Fact]
    public void An_equation_in_the_first_bar_or_in_the_lower_voice_is_reported()
    {
        Codes(("line", "[tempo quarter = half] w C2 | w C2")).ShouldBe([DiagnosticCodes.EquationAtStart]);
        Codes(("line", "w C2 | [tempo quarter = fast] w C2")).ShouldBe([DiagnosticCodes.UnknownRhythmWord]);
        Codes(("line", "w G2 | w F2"), ("lower", "w C2 | [tempo quarter = half] w F1")).ShouldBe([DiagnosticCodes.MisplacedChange]);
    }

    // Two thirds of 60.
    [Fact]
    public void A_step_of_a_ladder_slows_the_changes_too()
    {
        var lesson = LessonMaker.Lesson("C | F");
        var request = LessonMaker.Request("own-line", ("line", "w C2 | [tempo 60] C2")) with { Tempo = new Tempo(60, new NoteValue(NoteBase.Quarter)), TempoShare = 2 / 3.0 };
        LessonMaker.Generate(lesson, request).Line.Changes.Select(c => c.Tempo!.BeatsPerMinute).ShouldBe([40]);
        Ladder.Expand(LessonMaker.Request("own-line", ("line", "w C2")) with { Ladder = LadderKind.Tempo }, lesson).Select(r => Math.Round(r.TempoShare, 2)).ShouldBe([0.6, 0.76, 0.89, 1]);
    }

    [Fact]
    public void A_bar_with_another_clef_is_written_out()
    {
        var score = Score(LessonMaker.Lesson("C | F | G | C"), "w C3 | simile | [treble clef] simile | simile");
        score.Measures.Select(m => m.RepeatsPrevious).ShouldBe([false, true, false, true]);
    }

    // Three eighths in the time of the last quarter of a triplet of quarters, which has the time of a half note: two ninths of a quarter each; the arithmetic of tuplets.
    [Theory]
    [InlineData("q3 C2 D2 e3in3 E2 F2 E2 h C2", "3:2 0-4, 3:2 2-4 inside", "2/3 2/3 2/9 2/9 2/9 2")]
    [InlineData("e3 C2 s3in3 D2 E2 D2 e3 E2 q C2 h C2", "3:2 0-4, 3:2 1-3 inside", "1/3 1/9 1/9 1/9 1/3 1 2")]
    [InlineData("q5 C2 D2 e3in5 E2 F2 E2 q5 D2 C2", "5:4 0-6, 3:2 2-4 inside", "4/5 4/5 4/15 4/15 4/15 4/5 4/5")]
    [InlineData("q3 C2 s5in3 D2 E2 rest F2 G2 q3 C2 h C2", "3:2 0-6, 5:4 1-5 inside", "2/3 2/15 2/15 2/15 2/15 2/15 2/3 2")]
    public void A_tuplet_lies_within_a_tuplet(string line, string tuplets, string lengths)
    {
        var lesson = LessonMaker.Lesson("C", key: "C major", level: 5);
        var score = Score(lesson, line);
        ScoreChecks.Run(score).ShouldBeEmpty();
        var voice = score.Measures[0].Voices[0];
        string.Join(", ", voice.Tuplets.Select(t => $"{t.Actual}:{t.Normal} {t.First}-{t.Last}{(t.Level == 0 ? "" : " inside")}")).ShouldBe(tuplets);
        string.Join(' ', voice.Events.Select(e => e.Duration)).ShouldBe(lengths);
    }

    private static IEnumerable<string> Codes(params (string Name, object Value)[] options)
    {
        var lesson = LessonMaker.Lesson("C | F");
        var bag = new DiagnosticBag(lesson.Source);
        LessonBuilder.Build(lesson with { Exercises = [LessonMaker.Request("own-line", options)] }, bag).Exercises.ShouldBeEmpty();
        return bag.Items.Select(d => d.Code);
    }

    private static string Clefs(string line) => string.Join(' ', Score(LessonMaker.Lesson("C | F | G | C"), line).Measures.Select(m => m.ClefChange?.ToString() ?? "-"));

    private static string Tempos(string line) => string.Join(' ', Score(LessonMaker.Lesson("C | F | G | C"), line).Measures.Select(m => m.Directions.FirstOrDefault()?.Tempo?.BeatsPerMinute.ToString() ?? "-"));

    private static Score Score(Lesson lesson, string line)
    {
        var bag = new DiagnosticBag(lesson.Source);
        var built = LessonBuilder.Build(lesson with { Exercises = [LessonMaker.Request("own-line", ("line", line))] }, bag);
        bag.Items.Select(d => d.Message).ShouldBeEmpty();
        return built.Exercises.Single().Score;
    }
}

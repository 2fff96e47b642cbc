using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

public class ExerciseFrameTests
{
    private static BuiltExercise Build(string exercise, string progression = "Cm7 | Fm7 G7 | Cm7", string head = "tempo: 90\n")
    {
        var (lesson, findings) = MarkedLesson.Read($"title: Tiny\nkey: C minor\n{head}progression: {progression}\nexercises:\n  - {exercise.Replace("\n", "\n    ", StringComparison.Ordinal)}\n");
        findings.ShouldBeEmpty();
        var bag = new DiagnosticBag(lesson!.Source);
        var built = LessonBuilder.Build(lesson, bag);
        bag.Items.ShouldBeEmpty();
        return built.Exercises.Single();
    }

    [Fact]
    public void The_bars_and_chords_stay_and_are_counted_anew()
    {
        var score = Build("style: roots\nmeter: 3/4").Score;
        score.Measures.Select(m => m.Meter.ToString()).ShouldAllBe(m => m == "3/4");
        score.Measures.Length.ShouldBe(3);
        // Common practice: of two chords that share a bar of three, the first has two beats.
        score.Measures[1].Harmonies.Select(h => h.Offset).ShouldBe([Fraction.Zero, new Fraction(2)]);
    }

    [Theory]
    [InlineData("style: roots\nmeter: 12/8", "dotted")]
    [InlineData("style: roots\nmeter: 2/2", "half")]
    [InlineData("style: roots\nmeter: 3/4", "quarter")]
    public void The_beat_is_as_fast_as_the_lessons(string exercise, string beat)
    {
        var tempo = Build(exercise).Score.Tempo;
        tempo.BeatsPerMinute.ShouldBe(90);
        tempo.Beat.ShouldBe(beat switch { "dotted" => new NoteValue(NoteBase.Quarter, 1), "half" => new NoteValue(NoteBase.Half), _ => new NoteValue(NoteBase.Quarter) });
    }

    [Fact]
    public void A_tempo_that_names_its_value_stays_as_it_is() =>
        Build("style: roots\nmeter: 12/8", head: "tempo: eighth = 200\n").Score.Tempo.Beat.ShouldBe(new NoteValue(NoteBase.Eighth));

    // 120 and 60 are four and two thirds of the lesson's 90.
    [Fact]
    public void Changes_of_tempo_keep_their_proportion_to_a_tempo_of_its_own()
    {
        static string Changes(string exercise) => string.Join(' ', Build(exercise, "Cm7 | [tempo 120] Fm7 | [tempo half = 30] Cm7").Score.Measures.SelectMany(m => m.Directions).Select(d => d.Tempo!.BeatsPerMinute));
        Changes("style: roots").ShouldBe("120 30");
        Changes("style: roots\ntempo: 45").ShouldBe("60 15");
    }

    // 90, 90 dotted quarters, its eighths at 270; a tempo of 45 halves all of it.
    [Fact]
    public void Equations_of_note_values_start_from_a_tempo_of_its_own()
    {
        static string Changes(string exercise) => string.Join(' ', Build(exercise, "Cm7 | [6/8] [tempo quarter = dotted quarter] Fm7 | [4/4] [tempo eighth = eighth] Cm7").Score.Measures.SelectMany(m => m.Directions).Select(d => $"{d.Tempo!.BeatsPerMinute}/{d.Tempo.QuartersPerMinute}"));
        Changes("style: roots").ShouldBe("90/135 270/135");
        Changes("style: roots\ntempo: 45").ShouldBe("45/67.5 135/67.5");
    }

    [Theory]
    [InlineData("[tempo sixteenth = whole] Fm7 | [tempo eighth = quarter] Fm7", "bar 3", "2880 quarter notes")]
    [InlineData("[tempo sixteenth = whole] Fm7 | [tempo eighth = quarter] Fm7", "bar 2", "2880 quarter notes", "[pickup 1] ")]
    [InlineData("[tempo whole = quarter] Fm7 | [tempo whole = quarter] Fm7 | [tempo whole = half] Fm7", "bar 4", "2.81 quarter notes")]
    public void An_equation_that_leads_nowhere_is_reported(string bars, string bar, string speed, string start = "")
    {
        var (lesson, findings) = MarkedLesson.Read($"title: Tiny\nkey: C minor\ntempo: 90\nprogression: |\n  {start}Cm7 | {bars}\nexercises:\n  - style: roots\n");
        findings.ShouldBeEmpty();
        var bag = new DiagnosticBag(lesson!.Source);
        LessonBuilder.Build(lesson, bag).Exercises.ShouldBeEmpty();
        var finding = bag.Items.ShouldHaveSingleItem();
        finding.Code.ShouldBe("equation-out-of-range");
        finding.Message.ShouldContain(bar);
        finding.Message.ShouldContain(speed);
    }

    [Fact]
    public void A_tempo_in_the_first_bar_is_that_of_the_lesson()
    {
        var score = Build("style: roots", "'[tempo 66] Cm7 | Fm7'", head: "").Score;
        score.Tempo.BeatsPerMinute.ShouldBe(66);
        score.Measures.ShouldAllBe(m => m.Directions.IsEmpty);
    }

    [Fact]
    public void Its_rhythm_is_read_in_its_own_meter() =>
        Build("style: roots\nmeter: 3/4\nrhythm: half, quarter", "Cm7 | Fm7").Line.Notes.Take(2).Select(n => n.Duration).ShouldBe([new Fraction(2), new Fraction(1)]);

    [Fact]
    public void A_ladder_goes_through_the_meter_of_its_exercise()
    {
        var (lesson, _) = MarkedLesson.Read("title: Tiny\nkey: C minor\nprogression: Cm7 | Fm7 | Cm7\nexercises:\n  - style: roots\n    meter: 6/8\n    ladder: rhythm\n");
        var built = LessonBuilder.Build(lesson!, new DiagnosticBag(lesson!.Source));
        built.Exercises.Length.ShouldBeGreaterThan(1);
        built.Exercises.ShouldAllBe(e => e.Score.Measures[0].Meter.ToString() == "6/8");
    }

    [Fact]
    public void An_instrument_of_its_own_stays_when_the_run_asks_for_another()
    {
        const string Text = "title: Tiny\nkey: C minor\ninstrument: bass-4\nprogression: Cm7 | Fm7\nexercises:\n  - style: roots\n  - style: chords\n    instrument: guitar-6\n    strings: 1-5\n";
        foreach (var (overrides, expected) in new[] { (LessonOverrides.None, "bass-4"), (new LessonOverrides { InstrumentId = "bass-5" }, "bass-5") })
        {
            var (lesson, findings) = MarkedLesson.Read(Text, overrides);
            findings.ShouldBeEmpty();
            var built = LessonBuilder.Build(lesson!, new DiagnosticBag(lesson!.Source));
            built.Exercises.Select(e => e.Score.Instrument.Id).ShouldBe([expected, "guitar-6"]);
            built.Exercises[1].Line.Notes.ShouldAllBe(n => n.Tones.Length > 2 && n.Tones.All(t => t.Position!.Value.String <= 5));
        }
    }
}

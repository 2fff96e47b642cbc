using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class OwnLineTests
{
    private const string TwoBars = "Cm7 | Fm7";

    [Fact]
    public void One_run_shows_the_faults_of_all_lines_and_of_everything_else()
    {
        const string Text = """
            title: Own
            key: C minor
            progression: Cm7 | Fm7 | N.C. | G7
            exercises:
              - style: own-line
                line: q R 5 z 8 | q R 5 8 5 8
              - style: own-line
                line: q R 5 8 5 8
              - style: own-line
                line: q c low5 8:acent 5
              - style: own-line
                line: w R | R | rest | R:fret30
              - style: no-such-style
              - style: bossa
                fill-every: often
            """;
        var source = new SourceText("own.yaml", Text.ReplaceLineEndings("\n"));
        var bag = new DiagnosticBag(source);
        LessonReader.Read(source, bag).ShouldBeNull();
        var found = bag.Sorted().Select(d => (source.PositionOf(d.Span.Start).Line, d.Code, d.Suggestion)).ToList();
        found.ShouldBe(
        [
            (6, DiagnosticCodes.UnknownNote, null),
            (8, DiagnosticCodes.BarLength, null),
            (10, DiagnosticCodes.UnknownNote, "C"),
            (10, DiagnosticCodes.UnknownNote, "low-5"),
            (10, DiagnosticCodes.UnknownMarkWord, "accent"),
            (12, DiagnosticCodes.PinMisses, null),
            (13, DiagnosticCodes.UnknownStyle, null),
            (15, DiagnosticCodes.NotNumber, null),
        ]);
    }

    [Fact]
    public void A_fault_of_a_line_that_starts_over_is_reported_once()
    {
        var source = new SourceText("own.yaml", "title: Own\nkey: C minor\nprogression: Cm7 | Fm7 | G7 | Cm7\nexercises:\n  - style: own-line\n    line: q R:fret30 5 8 5\n");
        var bag = new DiagnosticBag(source);
        LessonBuilder.Build(LessonReader.Read(source, bag).ShouldNotBeNull(), bag).Exercises.ShouldBeEmpty();
        bag.Items.ShouldHaveSingleItem().Code.ShouldBe(DiagnosticCodes.PinMisses);
    }

    [Fact]
    public void Pitches_of_another_instrument_move_by_whole_octaves_onto_the_neck()
    {
        var guitar = LessonMaker.Lesson("C | F", instrument: "guitar-6");
        var written = Play(guitar, "q C4 E4 G4 C5 | w A4");
        var onBass = Play(guitar with { WrittenFor = guitar.Instrument, Instrument = InstrumentCatalogue.Find("bass-4")! }, "q C4 E4 G4 C5 | w A4");
        onBass.Notes.Select(n => n.Tones[0].Pitch).ShouldBe(written.Notes.Select(n => n.Tones[0].Pitch - Interval.Octave));
    }

    [Fact]
    public void Degrees_are_counted_from_the_chord_that_sounds()
    {
        var lesson = LessonMaker.Lesson(TwoBars);
        var line = Play(lesson, "q R 3 5 7 | h R low-5");
        LessonMaker.Pitches(lesson, line).ShouldBe("C2 Eb2 G2 Bb2 | F2 C2");
        LessonMaker.Degrees(lesson, line).ShouldBe("R b3 5 b7 | R 5");
    }

    [Fact]
    public void A_natural_before_a_degree_overrules_the_chord() => LessonMaker.Degrees(LessonMaker.Lesson(TwoBars), Play(LessonMaker.Lesson(TwoBars), "q R n3 b5 n7 | w R")).ShouldBe("R 3 b5 7 | R");

    [Fact]
    public void Degrees_of_the_key_keep_the_notes_of_the_signature()
    {
        var lesson = LessonMaker.Lesson(TwoBars);
        LessonMaker.Pitches(lesson, Play(lesson, "q 1 2 3 4 | 5 6 7 8", ("degrees", "key"))).ShouldBe("C2 D2 Eb2 F2 | G2 Ab2 Bb2 C3");
    }

    // C minor, then the seven notes of D major: common practice.
    [Fact]
    public void Degrees_of_the_key_follow_a_change_of_key()
    {
        var lesson = MarkedLesson.Good("title: Tiny\nkey: C minor\nprogression: |\n  Cm7 | [key D major] N.C. | Dmaj7\nexercises:\n  - style: own-line\n    degrees: key\n    line: q 1 2 3 7 | 1 2 3 7 | 1 4 6 8\n");
        var (line, diagnostics) = LessonMaker.Generate(lesson, lesson.Exercises[0]);
        diagnostics.Items.ShouldBeEmpty();
        LessonMaker.Pitches(lesson, line).ShouldBe("C2 D2 Eb2 Bb2 | D2 E2 F#2 C#3 | D2 G2 B2 D3");
    }

    [Fact]
    public void Pitches_without_an_octave_are_the_nearest_to_the_note_before()
    {
        var lesson = LessonMaker.Lesson(TwoBars);
        LessonMaker.Pitches(lesson, Play(lesson, "q C2 Bb Ab G | F Ab C Eb")).ShouldBe("C2 Bb1 Ab1 G1 | F1 Ab1 C2 Eb2");
    }

    [Fact]
    public void Values_stay_until_changed_in_words_or_letters()
    {
        var lesson = LessonMaker.Lesson(TwoBars);
        LessonMaker.Lengths(lesson, Play(lesson, "quarter R R eighth R R R R | dotted half R rq")).ShouldBe("1 1 1/2 1/2 1/2 1/2 | 3");
        LessonMaker.Lengths(lesson, Play(lesson, "q. R e R e3 R R R q R | e R - R - q - rest")).ShouldBe("3/2 1/2 1/3 1/3 1/3 1 | 1 2");
    }

    [Fact]
    public void Without_values_or_rhythm_the_notes_share_the_bar()
    {
        var lesson = LessonMaker.Lesson(TwoBars);
        LessonMaker.Lengths(lesson, Play(lesson, "R 5 | R 5 8 5 R 5 8 5")).ShouldBe("2 2 | 1/2 1/2 1/2 1/2 1/2 1/2 1/2 1/2");
    }

    [Fact]
    public void The_rhythm_of_the_exercise_times_the_notes()
    {
        var lesson = LessonMaker.Lesson(TwoBars);
        var rhythm = new RhythmPattern([Cell(0, 3, 2), Cell(3, 1, 2), Cell(4, 4, 2, rest: true)], 4);
        var request = LessonMaker.Request("own-line", ("line", "R 5")) with { Rhythm = rhythm };
        var (line, diagnostics) = LessonMaker.Generate(lesson, request);
        diagnostics.Items.ShouldBeEmpty();
        LessonMaker.Lengths(lesson, line).ShouldBe("3/2 1/2 | 3/2 1/2");
    }

    [Fact]
    public void A_short_line_starts_over_and_the_percent_sign_repeats_a_bar()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Bb7 | Cm7");
        LessonMaker.Degrees(lesson, Play(lesson, "h R 5 | same")).ShouldBe("R 5 | R 5 | R 5 | R 5");
    }

    [Fact]
    public void The_next_root_and_what_leads_to_it_can_be_written()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Cm7");
        LessonMaker.Pitches(lesson, Play(lesson, "h R under-next | R over-next | w R")).ShouldBe("C2 E1 | F1 Db2 | C2");
        LessonMaker.Pitches(lesson, Play(lesson, "q R 5 fifth-of-next next | R 5 step-under-next step-over-next | w R")).ShouldBe("C2 G2 C2 F1 | F1 C2 Bb1 D2 | C2");
    }

    [Fact]
    public void Marks_ghosts_dead_notes_and_double_stops_come_through()
    {
        var lesson = LessonMaker.Lesson("Cm7", instrument: "bass-4");
        var line = Play(lesson, "e R:thumb x (5) 8:pop:accent R:hammer 3 R&b10 -");
        line.Notes.Length.ShouldBe(7);
        line.Notes[0].Stroke.ShouldBe(Stroke.Thumb);
        line.Notes[1].Tones[0].Head.ShouldBe(Notehead.Dead);
        line.Notes[1].Tones[0].Pitch.ShouldBe(line.Notes[0].Tones[0].Pitch);
        line.Notes[2].Tones[0].Head.ShouldBe(Notehead.Ghost);
        line.Notes[3].Stroke.ShouldBe(Stroke.Pop);
        line.Notes[3].Articulations.ShouldBe(Articulations.Accent);
        line.Notes[4].Connection.ShouldBe(Connection.HammerOn);
        line.Notes[6].Tones.Select(t => t.Pitch.ToString()).ShouldBe(["C2", "Eb3"]);
        line.Notes[6].Duration.ShouldBe(1);
    }

    [Fact]
    public void Strings_and_frets_can_be_fixed()
    {
        var lesson = LessonMaker.Lesson(TwoBars);
        var line = Play(lesson, "h R:string4 Eb2:string3:fret6 | w R:fret3");
        line.Notes[0].Tones[0].Position.ShouldBe(new FretPosition(4, 8));
        line.Notes[1].Tones[0].Position.ShouldBe(new FretPosition(3, 6));
        line.Notes[2].Tones[0].Position.ShouldBe(new FretPosition(2, 3));
        line.Notes[2].Tones[0].Pitch.ShouldBe(Pitch.Parse("F2"));
    }

    [Fact]
    public void Pitches_move_with_a_lesson_put_in_another_key_and_give_up_their_places()
    {
        var lesson = LessonMaker.Lesson("Dm7 | Gm7", key: "D minor") with { Transposition = Interval.MajorSecond };
        var line = Play(lesson, "h C2:string4:fret8 Eb2 | w R");
        LessonMaker.Pitches(lesson, line).ShouldBe("D2 F2 | G1");
        line.Notes[0].Tones[0].Position.ShouldBeNull();
    }

    [Theory]
    [InlineData("q R 5 8 | w R", "bar-length", "q R 5 8", "3 beats")]
    [InlineData("q R 5 8 5 e R | w R", "bar-length", "q R 5 8 5 e R", "4 1/2 beats")]
    [InlineData("q R 5 8 5 | w R | w R", "too-many-bars", "q R 5 8 5 | w R | w R", "3 bars")]
    [InlineData("q R 5 hello 5 | w R", "unknown-note", "hello", "hello")]
    [InlineData("q R 5 eb2 5 | w R", "unknown-note", "eb2", "eb2")]
    [InlineData("q R 5:gohst 8 5 | w R", "unknown-mark-word", "gohst", "gohst")]
    [InlineData("R 5 8 5 7 | w R", "missing-value", "R", "")]
    [InlineData("R 5 8 5 7 | R", "no-rhythm", "R 5 8 5 7", "5 notes")]
    [InlineData("same | w R", "nothing-to-repeat", "same", "")]
    [InlineData("w R | q R same R R", "repeat-among-notes", "same", "")]
    [InlineData("w R | | w R", "empty-bar", "|", "Bar 2")]
    [InlineData("w E0 | w R", "off-the-neck", "E0", "4-string bass")]
    [InlineData("w R:string7 | w R", "no-such-string", "R:string7", "string 7")]
    [InlineData("w C2:string3:fret4 | w R", "pin-misses", "C2:string3:fret4", "string 3, fret 4")]
    [InlineData("w R | w under-next", "no-next-chord", "under-next", "bar 2")]
    [InlineData("q C2 simile D2 E2 | w R", "repeat-among-notes", "simile", "simile")]
    [InlineData("w C2:finger5 | w R", "no-such-finger", "finger5", "finger 5")]
    [InlineData("w C2&E2:finger1 | w R", "no-such-finger", "C2&E2:finger1", "several")]
    [InlineData("w Ab2:harmonic | w R", "no-harmonic", "Ab2:harmonic", "A♭2")]
    [InlineData("w G2:harmonic:string1:fret7 | w R", "no-harmonic", "G2:harmonic:string1:fret7", "G2")]
    [InlineData("w R:slur | w R", "open-slur", "R:slur", "no end")]
    [InlineData("w R | w R:end-slur", "open-slur", "R:end-slur", "No slur")]
    [InlineData("h R:slur 5:slur | h R:end-slur 5", "open-slur", "5:slur", "before the one")]
    [InlineData("q R [bass clef] 5 8 5 | w R", "mark-behind-chord", "[bass clef]", "first note")]
    [InlineData("[bas clef] w R | w R", "unknown-mark", "[bas clef]", "no change")]
    [InlineData("[treble] w R | w R", "unknown-mark", "[treble]", "no change")]
    [InlineData("w R | [loud] w R", "unknown-mark", "[loud]", "no change")]
    [InlineData("w R | [bass clef w R", "unclosed-mark", "[bass clef w R", "not closed")]
    [InlineData("w R | [tempo fast] w R", "unknown-tempo", "fast", "fast")]
    [InlineData("w R | [tempo] w R", "unknown-tempo", "[tempo]", "no tempo")]
    [InlineData("w R | [tempo 4000] w R", "out-of-range", "4000", "20 to 400")]
    [InlineData("[tempo 60] w R | w R", "misplaced-change", "[tempo 60]", "at the start")]
    [InlineData("[treble clef] | w R", "empty-bar", "[treble clef]", "Bar 1")]
    [InlineData("q3 R 5 e3in3 8 5 h R | w R", "tuplet-open", "8", "group of 3")]
    [InlineData("h R q3 R 5 e3in3 8 5 s5in3 3 | w R", "tuplet-open", "8", "group of 3")]
    [InlineData("q C2:pull D2 E2 F2 | w R", "lost-connection", "C2:pull", "not lower")]
    [InlineData("q D2:hammer C2 E2 F2 | w R", "lost-connection", "D2:hammer", "not higher")]
    [InlineData("h D2:slide D2 | w R", "lost-connection", "D2:slide", "not another one")]
    [InlineData("q D2 E2:slide h rest | w R", "lost-connection", "E2:slide", "No note follows")]
    [InlineData("q G2:pull R&5 h R | w R", "lost-connection", "G2:pull", "so they are struck")]
    [InlineData("w D2 | w R:hammer", "lost-connection", "R:hammer", "No note follows")]
    [InlineData(" ", "empty-line", " ", "no notes")]
    public void A_mistake_is_reported_at_its_place(string text, string code, string at, string says)
    {
        var source = new SourceText("lesson.yaml", "line: " + text);
        var bag = new DiagnosticBag(source);
        var request = LessonMaker.Request("own-line", ("line", text));
        request = request with { Options = request.Options.SetItem("line", new OptionValue(LocatedText.At(text, 6))) };
        request.Style.Generate(new ExerciseContext(LessonMaker.Lesson(TwoBars), request, bag));
        var found = bag.Items.First(d => d.Code == code);
        source.Text[found.Span.Start..found.Span.End].ShouldBe(at);
        found.Message.ShouldContain(says);
    }

    [Fact]
    public void A_slide_out_of_a_line_that_starts_over_and_marks_of_a_rhythm_are_no_fault()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7");
        Play(lesson, "h R 5:slide").Notes.Select(n => n.Connection).ShouldBe([Connection.None, Connection.Slide, Connection.None, Connection.None]);
        var rhythm = new RhythmPattern([Cell(0, 2, 1) with { Marks = new(Connection: Connection.PullOff) }, Cell(2, 2, 1)], 4);
        var (line, diagnostics) = LessonMaker.Generate(lesson, LessonMaker.Request("own-line", ("line", "C2 D2 | F2 C2")) with { Rhythm = rhythm });
        diagnostics.Items.ShouldBeEmpty();
        line.Notes.Select(n => n.Connection).ShouldBe([Connection.None, Connection.None, Connection.PullOff, Connection.None]);
        // In another key the notes may be folded back onto the neck.
        var moved = LessonMaker.Generate(lesson with { Transposition = Interval.MajorSecond }, LessonMaker.Request("own-line", ("line", "h C2:pull D2")));
        moved.Diagnostics.Items.ShouldBeEmpty();
    }

    [Fact]
    public void A_change_in_the_lower_voice_is_reported()
    {
        var lesson = LessonMaker.Lesson(TwoBars);
        var request = LessonMaker.Request("own-line", ("line", "w G2 | w F2"), ("lower", "w C2 | [treble clef] w F1"));
        var bag = new DiagnosticBag(new SourceText("test.yaml", ""));
        request.Style.GenerateLower(new ExerciseContext(lesson, request, bag));
        bag.Items.Select(d => d.Code).ShouldBe([DiagnosticCodes.MisplacedChange]);
    }

    [Fact]
    public void A_degree_needs_a_chord()
    {
        var lesson = LessonMaker.Lesson("Cm7 | N.C.");
        var (_, diagnostics) = LessonMaker.Generate(lesson, LessonMaker.Request("own-line", ("line", "w R | h C2 5")));
        diagnostics.Items.Single().Code.ShouldBe("no-chord");
    }

    [Fact]
    public void A_line_that_does_not_divide_the_progression_is_warned_about()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Cm7");
        var (line, diagnostics) = LessonMaker.Generate(lesson, LessonMaker.Request("own-line", ("line", "w R | w 5")));
        diagnostics.Items.Single().Severity.ShouldBe(Severity.Warning);
        LessonMaker.Degrees(lesson, line).ShouldBe("R | 5 | R");
    }

    private static Line Play(Lesson lesson, string text, params (string, object)[] options) => LessonMaker.Generate(lesson, "own-line", [("line", text), .. options]);

    private static RhythmCell Cell(int start, int duration, int unit, bool rest = false) => new() { Start = new Fraction(start, unit), Duration = new Fraction(duration, unit), IsRest = rest };
}

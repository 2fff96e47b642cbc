using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class PatternTests
{
    private const string EightBars = "Cm7 | Fm7 | Cm7 | Cm7 | Fm7 | Fm7 | G7 | Cm7";

    public static TheoryData<string> Files => [.. Directory.GetFiles(RepositoryRoot.Combine("templates", "patterns")).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_pattern_of_the_program_reads_without_a_finding(string file)
    {
        var (source, bag) = LessonFiles.Load(RepositoryRoot.Combine("templates", "patterns", file));
        var pattern = new PatternReader(bag).Read(source);
        bag.Items.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        pattern.ShouldNotBeNull();
        if (!pattern.Tones.IsEmpty) pattern.Lines.ShouldBeEmpty();
        pattern.Summary.ShouldEndWith(".");
        (pattern.Instruction + pattern.InOwnMeter).ShouldEndWith(".");
        ExerciseStyles.Find(Path.GetFileNameWithoutExtension(file)).ShouldNotBeNull().Title.ShouldBe(pattern.Title);
        // Each of its meters has a line and a fill of a whole bar for beginners, so that no bar has to be cut.
        foreach (var meter in pattern.Lines.Select(l => l.Meter).Distinct())
        {
            pattern.Lines.ShouldContain(l => l.Meter.Equals(meter) && l.Line.Length == meter.MeasureLength && l.Level == 1 && l.Over == null, meter.ToString());
            pattern.Fills.ShouldContain(l => l.Meter.Equals(meter) && l.Line.Length == meter.MeasureLength && l.Level <= 2, meter.ToString());
            // A bar that two chords share is filled too.
            if (meter.Equals(new Meter(4, 4))) pattern.Fills.ShouldContain(l => l.Meter.Equals(meter) && l.Line.Length == 2);
        }
    }

    [Fact]
    public void The_longest_line_that_fits_a_chord_is_taken()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 Bb7 | Cm7");
        LessonMaker.Degrees(lesson, Play(lesson, "lines:\n  - q R 5 8 5\n  - h R\n")).ShouldBe("R 5 8 5 | R R | R");
    }

    [Fact]
    public void A_chord_shorter_than_every_line_gets_the_beginning_of_the_shortest()
    {
        var lesson = LessonMaker.Lesson("Cm7 Fm7 Bb7 | Cm7");
        LessonMaker.Degrees(lesson, Play(lesson, "lines:\n  - q R 5 8 5\n  - e R 5 R 5\n")).ShouldBe("R 5 R 5 R 5 R 5 | R");
    }

    [Fact]
    public void A_line_of_two_bars_runs_over_a_chord_that_lasts_two_bars_and_no_other()
    {
        var lesson = LessonMaker.Lesson("Cm7 | % | Fm7 | Cm7");
        LessonMaker.Degrees(lesson, Play(lesson, "lines:\n  - h R 5 | 8 5\n  - h R 3\n")).ShouldBe("R 5 | 8 5 | R b3 | R");
    }

    [Fact]
    public void Lines_of_one_length_take_turns_and_harder_ones_wait_for_their_level()
    {
        const string Lines = "lines:\n  - h R 5\n  - h R 3\n  - { line: h R 7, level: 4 }\n";
        var easy = LessonMaker.Lesson("Cm7 | Fm7 | Cm7 | Fm7 | Cm7", level: 2);
        LessonMaker.Degrees(easy, Play(easy, Lines)).ShouldBe("R 5 | R b3 | R 5 | R b3 | R");
        var hard = LessonMaker.Lesson("Cm7 | Fm7 | Cm7", level: 4);
        LessonMaker.Degrees(hard, Play(hard, Lines)).ShouldBe("R b7 | R b7 | R");
    }

    [Fact]
    public void A_fill_ends_each_phrase()
    {
        var lesson = LessonMaker.Lesson(EightBars);
        var line = Play(lesson, "lines: h R 5\nfills: q R 5 8 under-next\n", ("fill-every", 4));
        // The last phrase leads to the chord that the exercise ends on. Where the octave would leap into the lead, the root below it is played.
        LessonMaker.Degrees(lesson, line).ShouldBe("R 5 | R 5 | R 5 | R 5 R 3 | R 5 | R 5 | R 5 8 3 | R");
        // A half step below F.
        line.Notes.Last(n => n.Start < 16).Tones[0].Pitch.Name.ShouldBe(NoteName.Parse("E"));
    }

    [Fact]
    public void The_next_root_can_come_early_and_be_held_over_the_bar_line()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Cm7");
        var line = Play(lesson, "lines: q - - 5 next\n");
        LessonMaker.Degrees(lesson, line).ShouldBe("R 5 4 | 5 5 | ");
        line.Notes[2].Duration.ShouldBe(3);
        // The last chord is the root that came early.
        line.Notes[^1].Tones[0].Pitch.Name.ShouldBe(NoteName.Parse("C"));
        line.Notes[^1].Duration.ShouldBe(5);
    }

    [Fact]
    public void R_is_the_bass_of_a_slash_chord()
    {
        var lesson = LessonMaker.Lesson("C/E | F", key: "C major");
        LessonMaker.Pitches(lesson, Play(lesson, "lines: h R 8\n")).ShouldBe("E1 E2 | F1");
    }

    [Fact]
    public void A_pattern_in_a_foreign_meter_is_cut_with_a_warning()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Cm7", meter: new Meter(3, 4));
        var (line, diagnostics) = Generate(lesson, "lines:\n  - q R 5 8 5\n");
        LessonMaker.Degrees(lesson, line).ShouldBe("R 5 8 | R 5 8 | R");
        diagnostics.Items.Select(d => (d.Code, d.Severity)).ShouldBe([(DiagnosticCodes.OtherMeter, Severity.Warning)]);
    }

    // What a pattern says of its own bar is false of another; a title and an instruction that the lesson gives are the teacher's.
    [Theory]
    [InlineData("five-four", "5/4", "Five in a bar", "Count each group from one; the second one is as clear as the first.")]
    [InlineData("five-four", "5/4 (2+3)", "Five in a bar", "Count each group from one; the second one is as clear as the first.")]
    [InlineData("five-four", "4/4", "Five in a bar, cut to fit", "")]
    [InlineData("odd-meters", "3/4", "Odd meters, cut to fit", "")]
    [InlineData("waltz", "4/4", "Waltz, cut to fit", "")]
    [InlineData("samba", "2/2", "Samba", "Every second beat is the heavy one; let the short notes lead to it.")]
    [InlineData("second-line", "4/4", "Second line", "Loose and springy. The last two of the bar push you over the line.")]
    [InlineData("second-line", "3/4", "Second line, cut to fit", "Loose and springy.")]
    [InlineData("rock-eighths", "5/4", "Rock eighths, cut to fit", "Every eighth the same length and weight, right with the kick drum.")]
    [InlineData("root-fifth", "7/8", "Roots and fifths", "Keep the shape under the hand: the fifth lies one string across and two frets up.")]
    public void What_is_printed_is_true_of_the_meter(string style, string meter, string title, string instruction)
    {
        var source = new SourceText("test.yaml", $"title: Test\nkey: C\nmeter: {meter}\nprogression: C | F | C\nexercises:\n  - style: {style}\n  - style: {style}\n    title: Mine\n    instruction: My own.\n");
        var bag = new DiagnosticBag(source);
        var lesson = LessonReader.Read(source, bag).ShouldNotBeNull();
        var scores = LessonBuilder.Build(lesson, bag).Exercises.Select(e => e.Score).ToList();
        scores.Select(s => (s.Title, s.Instruction)).ShouldBe([(title, instruction), ("Mine", "My own.")]);
    }

    [Fact]
    public void A_pattern_is_cut_as_soon_as_one_bar_has_a_meter_that_it_has_no_line_for()
    {
        var lesson = LessonMaker.Lesson([(new Meter(3, 4), ["C"]), (new Meter(5, 4), ["F"]), (new Meter(3, 4), ["C"])], Key.Parse("C major"), InstrumentCatalogue.All[0], 1);
        var style = ExerciseStyles.Find("waltz").ShouldNotBeNull();
        style.TitleIn(lesson.Progression).ShouldBe("Waltz, cut to fit");
        style.InstructionIn(lesson.Progression, LessonMaker.Request("waltz")).ShouldBe("");
    }

    [Fact]
    public void Slap_makes_no_sense_on_a_mandolin_and_a_rhythm_none_on_a_groove()
    {
        var lesson = LessonMaker.Lesson(EightBars, instrument: "mandolin");
        LessonMaker.Generate(lesson, LessonMaker.Request("slap-octaves")).Diagnostics.Items.Single().Code.ShouldBe(DiagnosticCodes.WrongInstrument);
        var withRhythm = LessonMaker.Request("bossa") with { Rhythm = EvenRhythms.Eighths(new Meter(4, 4)) };
        LessonMaker.Generate(LessonMaker.Lesson(EightBars), withRhythm).Diagnostics.Items.Single().Code.ShouldBe(DiagnosticCodes.PatternHasRhythm);
    }

    [Fact]
    public void Tones_take_any_rhythm()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Cm7");
        var style = Style("tones: R 5 8 7\n");
        var request = new ExerciseRequest { Style = style, Span = default, Rhythm = EvenRhythms.Beats(new Meter(4, 4)) };
        LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, request).Line).ShouldBe("R 5 8 b7 | R 5 8 R");
    }

    [Theory]
    [InlineData("summary: x\nlines: q R\n", DiagnosticCodes.MissingEntry)]
    [InlineData("title: x\n", DiagnosticCodes.PatternOfNothing)]
    [InlineData("title: x\nlines:\n  - '[treble clef] w R'\n", DiagnosticCodes.MisplacedChange)]
    [InlineData("title: x\nlines: q R\ntones: R\n", DiagnosticCodes.TonesAndLines)]
    [InlineData("title: x\nlines: R 5\n", DiagnosticCodes.MissingValue)]
    [InlineData("title: x\nlines: q R 5 8 5 8\n", DiagnosticCodes.BarLength)]
    [InlineData("title: x\nlines: q R 5 8 | q R 5 8 5\n", DiagnosticCodes.BarLength)]
    [InlineData("title: x\nlines: q H\n", DiagnosticCodes.UnknownNote)]
    [InlineData("title: x\nlines: q R\nfeal: straight\n", DiagnosticCodes.UnknownEntry)]
    [InlineData("title: x\nlines:\n  - { line: q R, level: 9 }\n", DiagnosticCodes.OutOfRange)]
    public void A_mistake_in_a_pattern_file_is_reported(string text, string code)
    {
        var source = new SourceText("own.yaml", text);
        var bag = new DiagnosticBag(source);
        new PatternReader(bag).Read(source).ShouldBeNull();
        bag.Items.Select(d => d.Code).ShouldContain(code);
    }

    [Fact]
    public void A_folder_of_patterns_beside_the_lessons_gives_styles_to_them_alone()
    {
        using var folder = new TemporaryFolder();
        folder.Write("patterns/bounce.yaml", "title: Bounce\nlines: q R 8 5 8\n");
        folder.Write("patterns/roots.yaml", "title: Roots again\nlines: q R R R R\n");
        folder.Write("mine.yaml", "title: Mine\nkey: C minor\nprogression: Cm7 | Fm7 | Cm7\nexercises:\n  - bounce\n");
        var set = LessonFiles.Find([folder.Path]);
        set.Paths.Select(p => Path.GetFileName(p)).ShouldBe(["mine.yaml"]);
        set.Problems.Select(p => (p.Code, Path.GetFileName(p.Source.Path))).ShouldBe([(DiagnosticCodes.StyleNameTaken, "roots.yaml")]);
        var (source, bag) = LessonFiles.Load(set.Paths[0]);
        var lesson = LessonReader.Read(source, bag, null, set.StylesFor(set.Paths[0])).ShouldNotBeNull();
        LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, lesson.Exercises[0]).Line).ShouldBe("R 8 5 8 | R 8 5 8 | R");
        LessonReader.Read(source, new DiagnosticBag(source)).ShouldBeNull();
    }

    private static Line Play(Lesson lesson, string lines, params (string Name, int Value)[] options)
    {
        var (line, diagnostics) = Generate(lesson, lines, options);
        diagnostics.Items.ShouldBeEmpty();
        return line;
    }

    private static (Line Line, DiagnosticBag Diagnostics) Generate(Lesson lesson, string lines, params (string Name, int Value)[] options)
    {
        var values = options.ToDictionary(o => o.Name, o => new OptionValue(LocatedText.At("0", 0)) { Number = o.Value });
        return LessonMaker.Generate(lesson, new ExerciseRequest { Style = Style(lines), Span = default, Options = [.. values] });
    }

    private static PatternStyle Style(string lines)
    {
        var source = new SourceText("test.yaml", "title: Test\n" + lines);
        var bag = new DiagnosticBag(source);
        var pattern = new PatternReader(bag).Read(source);
        bag.Items.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        return new PatternStyle("test", new Lazy<Pattern>(pattern!));
    }
}

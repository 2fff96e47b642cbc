using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class LessonReaderTests
{
    private const string Full = """
        title: All of it
        subtitle: A lesson with every entry
        author: A teacher
        key: D dorian
        meter: 6/8
        tempo: 66
        feel: straight
        instrument:
          base: guitar-6
          tuning: D2 A2 D3 G3 B3 E4
          frets: 20
          capo: 2
          scale-length: 25.5 in
          left-handed: yes
        level: 3
        progression: Dm7 | G7
        notes: |
          First line.

          Second *line*.
        exercises:
          - roots
          - style: tone-cell
            title: A cell
            instruction: Slowly.
            tones: [R, b3, 5, n7]
            count: 1 la li 2
            tempo: dotted quarter = 50
            level: 4
            position: 5
            range: 5 to 9
            strings: 2-4 6
            open-strings: no
            show: degrees, counts
            layout: tab
            measures-per-system: 2
            seed: 7
            marks: accent plain
          - style: arpeggio
            rhythm: e e e q.
            direction: Both
            octaves: 2
            show: nothing
        diagrams:
          - Dm7
          - scale: D dorian
            frets: 5-9
            labels: notes
            caption: Home
          - shape: 6:5 5:5 4:7
            chord: Dm7
            view: upright
        practice:
          - Sing it first
          - do: Play the cell
            exercise: 2
            tempo: 50, 60, 70.5
            times: 3
            minutes: 2.5

        """;

    [Fact]
    public void Reads_every_entry()
    {
        var lesson = MarkedLesson.Good(Full);
        (lesson.Id, lesson.Title, lesson.Subtitle, lesson.Author).ShouldBe(("tiny", "All of it", "A lesson with every entry", "A teacher"));
        lesson.Key.ShouldBe(new Key(NoteName.Parse("D"), Mode.Dorian));
        lesson.Meter.ShouldBe(new Meter(6, 8));
        // A bare number counts the dotted quarter in 6/8: common practice.
        lesson.Tempo.ShouldBe(new Tempo(66, new NoteValue(NoteBase.Quarter, 1)));
        lesson.Level.ShouldBe(3);
        lesson.Notes.ShouldBe("First line.\n\nSecond *line*.");
        lesson.Transposition.ShouldBe(default);

        var instrument = lesson.Instrument;
        string.Join(' ', instrument.OpenStrings).ShouldBe("E4 B3 G3 D3 A2 D2");
        (instrument.Id, instrument.Name, instrument.FretCount, instrument.Capo, instrument.LeftHanded).ShouldBe(("guitar-6", "6-string guitar in D A D G B E", 20, 2, true));
        instrument.ScaleLength.ShouldBe(647.7, 0.001);
        instrument.Clef.ShouldBe(Clef.Treble);

        lesson.Exercises.Select(e => e.Style.Name).ShouldBe(["roots", "tone-cell", "arpeggio"]);
        var cell = lesson.Exercises[1];
        (cell.Title, cell.Instruction, cell.Level, cell.Layout, cell.MeasuresPerSystem, cell.Seed).ShouldBe(("A cell", "Slowly.", 4, StaffLayout.Tab, 2, 7));
        cell.Tempo.ShouldBe(new Tempo(50, new NoteValue(NoteBase.Quarter, 1)));
        (cell.Neck.Position, cell.Neck.LowestFret, cell.Neck.HighestFret, cell.Neck.OpenStrings).ShouldBe((5, 5, 9, false));
        cell.Neck.Strings.ShouldBe([2, 3, 4, 6]);
        (cell.ShowFingers, cell.ShowDegrees, cell.ShowCounts, cell.ShowRomans).ShouldBe((false, true, true, false));
        cell.Options["tones"].Degrees.Select(d => (d.Degree.ToString(), d.IsExact)).ShouldBe([("R", false), ("b3", true), ("5", false), ("7", true)]);
        cell.Rhythm!.Cells.Select(c => c.Marks.Articulations).ShouldBe([Articulations.Accent, Articulations.None, Articulations.Accent, Articulations.None]);
        var arpeggio = lesson.Exercises[2];
        (arpeggio.ShowFingers, arpeggio.ShowDegrees, arpeggio.ShowCounts, arpeggio.ShowRomans).ShouldBe((false, false, false, false));
        arpeggio.Options["direction"].Text.Value.ShouldBe("both");
        arpeggio.Options["octaves"].Number.ShouldBe(2);
        lesson.Exercises[0].ShowFingers.ShouldBeNull();

        lesson.Diagrams.Select(d => d.Kind).ShouldBe([DiagramKind.Chord, DiagramKind.Scale, DiagramKind.Shape]);
        (lesson.Diagrams[1].FromFret, lesson.Diagrams[1].ToFret, lesson.Diagrams[1].Labels, lesson.Diagrams[1].Caption).ShouldBe((5, 9, DiagramText.Notes, "Home"));
        lesson.Diagrams[2].Positions.ShouldBe([new FretPosition(6, 5), new FretPosition(5, 5), new FretPosition(4, 7)]);
        (lesson.Diagrams[2].Upright, lesson.Diagrams[2].Chord?.ToString()).ShouldBe((true, "Dm7"));
        lesson.PracticePlan.Length.ShouldBe(2);
        lesson.PracticePlan[0].Task.ShouldBe("Sing it first");
        var step = lesson.PracticePlan[1];
        (step.Task, step.Exercise, step.Repetitions, step.Minutes).ShouldBe(("Play the cell", 1, 3, 2.5));
        step.Tempos.ShouldBe([50, 60, 70.5]);
        (lesson.HasOwnDiagrams, lesson.HasOwnPracticePlan).ShouldBe((true, true));
    }

    [Theory]
    [InlineData("level: 2", PageKind.Handout)]
    [InlineData("pages: book", PageKind.Book)]
    [InlineData("pages: large print", PageKind.LargePrint)]
    [InlineData("pages: Handout", PageKind.Handout)]
    public void Kind_of_pages_is_what_the_lesson_says(string entry, PageKind kind) => MarkedLesson.Good(MarkedLesson.With(entry)).Pages.ShouldBe(kind);

    [Fact]
    public void Kind_of_pages_can_be_overruled_and_must_be_known()
    {
        var source = new SourceText("a.yaml", MarkedLesson.With("pages: book"));
        LessonReader.Read(source, new DiagnosticBag(source), new LessonOverrides { Pages = PageKind.LargePrint }).ShouldNotBeNull().Pages.ShouldBe(PageKind.LargePrint);
        var finding = MarkedLesson.Read(MarkedLesson.With("pages: larg-print")).Findings.ShouldHaveSingleItem();
        DiagnosticPrinter.Print(finding).ShouldContain("large-print");
    }

    [Fact]
    public void Has_sensible_defaults()
    {
        var lesson = MarkedLesson.Good("title: x\nkey: C\nprogression: C\nexercises: [roots]\nsubtitle:\ndiagrams: none\n");
        lesson.Meter.ShouldBe(new Meter(4, 4));
        lesson.Tempo.ShouldBe(new Tempo(80, new NoteValue(NoteBase.Quarter)));
        (lesson.Instrument.Id, lesson.Level, lesson.Feel, lesson.Notes).ShouldBe(("bass-4", 2, Feel.Straight, ""));
        (lesson.HasOwnDiagrams, lesson.Diagrams.Length, lesson.HasOwnPracticePlan).ShouldBe((true, 0, false));
    }

    [Theory]
    [InlineData("4/4", "92", 92, NoteBase.Quarter, 0)]
    [InlineData("2/2", "60", 60, NoteBase.Half, 0)]
    [InlineData("6/8", "60", 60, NoteBase.Quarter, 1)]
    [InlineData("9/8", "60", 60, NoteBase.Quarter, 1)]
    [InlineData("12/8", "60", 60, NoteBase.Quarter, 1)]
    [InlineData("6/4", "60", 60, NoteBase.Half, 1)]
    [InlineData("9/4", "60", 60, NoteBase.Half, 1)]
    [InlineData("6/16", "60", 60, NoteBase.Eighth, 1)]
    [InlineData("3/8", "60", 60, NoteBase.Quarter, 1)]
    [InlineData("3/2", "60", 60, NoteBase.Half, 0)]
    [InlineData("3/4", "60", 60, NoteBase.Quarter, 0)]
    [InlineData("7/8", "120", 120, NoteBase.Quarter, 0)]
    [InlineData("4/4", "half = 60", 60, NoteBase.Half, 0)]
    [InlineData("4/4", "h=60", 60, NoteBase.Half, 0)]
    [InlineData("6/8", "eighth = 180", 180, NoteBase.Eighth, 0)]
    [InlineData("6/8", "dotted quarter = 62.5", 62.5, NoteBase.Quarter, 1)]
    [InlineData("4/4", "quarter note = 90", 90, NoteBase.Quarter, 0)]
    public void Tempo_counts_the_beat_or_the_value_named(string meter, string tempo, double beats, NoteBase noteBase, int dots)
    {
        var text = MarkedLesson.With("meter: " + meter).Replace("Cm7 | Fm7 | G7 | Cm7 |", "Cm7", StringComparison.Ordinal) + $"tempo: {tempo}\n";
        MarkedLesson.Good(text).Tempo.ShouldBe(new Tempo(beats, new NoteValue(noteBase, dots)));
    }

    [Theory]
    [InlineData("864 mm", 864)]
    [InlineData("863.6", 863.6)]
    [InlineData("34 in", 863.6)]
    [InlineData("34in", 863.6)]
    [InlineData("25.5", 647.7)]
    [InlineData("'30\"'", 762)]
    public void Lengths_come_in_millimetres_or_inches(string written, double millimetres) =>
        MarkedLesson.Good(MarkedLesson.With($"instrument:\n  base: bass-4\n  scale-length: {written}")).Instrument.ScaleLength.ShouldBe(millimetres, 0.001);

    [Fact]
    public void A_tuning_with_other_strings_names_them()
    {
        var lesson = MarkedLesson.Good(MarkedLesson.With("instrument:\n  base: bass-4\n  tuning: B0 E1 A1 D2 G2"));
        (lesson.Instrument.StringCount, lesson.Instrument.Name).ShouldBe((5, "5-string bass in B E A D G"));
        MarkedLesson.Good(MarkedLesson.With("instrument:\n  base: bass-4\n  tuning: E1 A1 D2 G2")).Instrument.Name.ShouldBe("4-string bass");
    }

    [Fact]
    public void Lists_are_not_endless()
    {
        Code("progression: " + string.Concat(Enumerable.Repeat("C|", 4_990)) + "\n  " + string.Concat(Enumerable.Repeat("D|", 11))).ShouldBe(DiagnosticCodes.TooManyMeasures);
        Code("exercises:\n" + Items("roots", 201)).ShouldBe(DiagnosticCodes.TooManyExercises);
        Code("diagrams:\n" + Items("Cm7", 61)).ShouldBe(DiagnosticCodes.TooManyDiagrams);
        Code("practice:\n" + Items("again", 61)).ShouldBe(DiagnosticCodes.TooManySteps);

        static string Items(string item, int count) => string.Concat(Enumerable.Repeat($"  - {item}\n", count)).TrimEnd('\n');
        static string Code(string entry) => MarkedLesson.Read(MarkedLesson.With(entry)).Findings.ShouldHaveSingleItem().Code;
    }

    [Theory]
    [InlineData("5 string bass", "bass-5")]
    [InlineData("Bass, 5 strings", null)]
    [InlineData("bass with 5 strings", "bass-5")]
    [InlineData("7-string guitar", "guitar-7")]
    [InlineData("string bass", null)]
    [InlineData("9 string bass", null)]
    public void Instruments_are_known_by_their_strings(string written, string? id) =>
        (MarkedLesson.Read(MarkedLesson.With($"instrument: {written}")).Lesson?.Instrument.Id).ShouldBe(id);

    [Theory]
    [InlineData("90 bpm")]
    [InlineData("90bpm")]
    [InlineData("quarter = 90 BPM")]
    public void A_tempo_may_have_its_unit(string written) => MarkedLesson.Good(MarkedLesson.With($"tempo: {written}")).Tempo.ToString().ShouldBe(MarkedLesson.Good(MarkedLesson.With("tempo: 90")).Tempo.ToString());

    // What a message says to write instead, where the place alone would not tell.
    [Theory]
    [InlineData("exercises:\n  style: roots", "Begin each exercise with a dash and a space, as in '- style: ...', and indent its other lines two spaces further than the dash.")]
    [InlineData("exercises:\n  - style: roots\n    on-one: root", "It belongs to the style 'walking-line'. Choose that, or leave 'on-one' away.")]
    [InlineData("key: Bb blues", "Write Bb major for a blues with Bb7 as its home, or Bb minor for one with Bbm7.")]
    [InlineData("key: a", "Write A major to be sure, or A minor if you mean that.")]
    [InlineData("key: D dorian mode", "Did you mean D dorian?")]
    [InlineData("progression: ii-V-I", "Write blanks between chords of one bar and | between bars: ii | V | I.")]
    [InlineData("progression: C | Fm”", "Leave the quotation marks away, or write straight ones.")]
    [InlineData("level: easy", "Write a number from 1 to 5.")]
    public void Advice(string entry, string advice) => MarkedLesson.Read(MarkedLesson.With(entry)).Findings.ShouldHaveSingleItem().Advice.ShouldBe(advice);

    [Fact]
    public void A_misspelt_style_does_not_hide_the_faults_of_its_exercise()
    {
        var text = MarkedLesson.With("exercises:\n  - style: tone-sell\n    tones: R x\n    rythm: q\n    level: 9");
        MarkedLesson.Read(text).Findings.Select(f => f.Code).ShouldBe([DiagnosticCodes.UnknownStyle, DiagnosticCodes.UnknownDegree, DiagnosticCodes.UnknownEntry, DiagnosticCodes.OutOfRange]);
    }

    [Fact]
    public void The_same_text_always_gives_the_same_lesson()
    {
        var first = MarkedLesson.Good(Full);
        var second = MarkedLesson.Good(Full);
        ProgressionText.Of(second.Progression).ShouldBe(ProgressionText.Of(first.Progression));
        second.Exercises.Select(e => (e.Title, e.Span)).ShouldBe(first.Exercises.Select(e => (e.Title, e.Span)));
    }

    [Theory]
    [InlineData("Electric Bass", "Did you mean 'bass-4', 'bass-5' or 'bass-6'?")]
    [InlineData("bass guitar", "Did you mean 'bass-4', 'bass-5' or 'bass-6'?")]
    [InlineData("Acoustic Guitar", "Did you mean 'guitar-6' or 'guitar-7'?")]
    [InlineData("banjo", "Did you mean 'tenor-banjo'?")]
    [InlineData("ukelele", "Did you mean 'ukulele'?")]
    [InlineData("mandoline", "Did you mean 'mandolin'?")]
    [InlineData("harp", "Choose from: bass-4, bass-5, bass-6, guitar-6, guitar-7, ukulele, mandolin, tenor-banjo.")]
    public void An_instrument_by_another_name_brings_up_those_of_its_kind(string name, string advice) =>
        MarkedLesson.Read(MarkedLesson.With("instrument: " + name)).Findings.ShouldHaveSingleItem().Advice.ShouldBe(advice);
}

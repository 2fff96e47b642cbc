using CsCheck;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

/// <summary>What makes each groove the groove it is, at every level (common practice of the styles named).</summary>
public class GrooveTests
{
    private const string Progression = "Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Dm7b5 | G7 | Cm7";

    public static TheoryData<string> Grooves => [.. PatternLibrary.BuiltIn().Where(s => s.Group == "grooves").Select(s => s.Name)];

    public static TheoryData<int> Levels => [1, 2, 3, 4, 5];

    [Theory]
    [MemberData(nameof(Grooves))]
    public void A_groove_grows_with_the_level(string name)
    {
        var pattern = Read(name);
        foreach (var meter in pattern.Lines.Select(l => l.Meter).Distinct())
        {
            if (name == "shuffle" && meter.IsCompound) continue;
            var bars = Enumerable.Range(1, 5).Select(level => WholeBar(pattern, meter, level)).ToList();
            var pictures = bars.Select(b => string.Join(' ', b.Notes.Select(n => $"{n.Start}:{n.Duration}:{string.Join('+', n.Tones)}:{n.Marks.Head}"))).ToList();
            pictures.Distinct().Count().ShouldBeGreaterThanOrEqualTo(4, $"{name} in {meter}");
            // More to play, and finer values: an advanced bar has more strokes or more shades of them than a beginner's, and its shortest is no longer.
            Work(bars[4]).ShouldBeGreaterThan(Work(bars[0]), $"{name} in {meter}");
            bars[4].Notes.Min(n => n.Duration).ShouldBeLessThanOrEqualTo(bars[1].Notes.Min(n => n.Duration), $"{name} in {meter}");
        }
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void Reggae_leaves_the_first_beat_free(int level)
    {
        var lesson = LessonMaker.Lesson(Progression, level: level);
        foreach (var (bar, notes) in BarsOf(lesson, "reggae").SkipLast(1)) notes.ShouldNotContain(n => n.Start == bar);
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void Reggae_on_the_one_and_every_dance_of_pairs_starts_each_bar_on_the_root(int level)
    {
        foreach (var style in (string[])["reggae-on-the-one", "bossa", "samba", "disco-octaves", "waltz", "two-beat", "second-line", "rock-eighths", "slap-octaves"])
        {
            var lesson = LessonMaker.Lesson(Progression, level: level, meter: ExerciseStyles.Find(style)!.HomeMeter);
            foreach (var (bar, notes) in BarsOf(lesson, style))
            {
                notes[0].Start.ShouldBe(bar);
                notes[0].Tones[0].Degree!.Value.Simple.Number.ShouldBe(1, style);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void A_tumbao_strikes_the_next_root_early_and_holds_it_over_the_bar_line(int level)
    {
        var lesson = LessonMaker.Lesson(Progression, level: level);
        var line = LessonMaker.Generate(lesson, "tumbao");
        for (var bar = 1; bar < 8; bar++)
        {
            var over = line.Notes.Single(n => n.Start < 4 * bar && n.End > 4 * bar);
            over.Tones[0].Pitch.Name.PitchClass.ShouldBe(lesson.Progression.Chords[bar].Chord!.Lowest.PitchClass);
            over.Start.ShouldBe((4 * bar) - 1);
        }
    }

    [Fact]
    public void A_tumbao_holds_nothing_that_does_not_belong_to_the_new_chord()
    {
        // The G of one beat has no time to prepare the chord after it, which is struck anew.
        var lesson = LessonMaker.Lesson("Cm7 | Dm7b5 Dm7b5 Dm7b5 G7 | Cm7/Eb | Cm7", level: 2);
        var line = LessonMaker.Generate(lesson, "tumbao");
        line.Notes.ShouldContain(n => n.Start == 8 && n.Tones[0].Pitch.Name == NoteName.Parse("Eb"));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Disco_goes_from_low_to_high_in_eighths(int level)
    {
        var lesson = LessonMaker.Lesson("Cm7 | Cm7 | Fm7 | Cm7", level: level);
        foreach (var (_, notes) in BarsOf(lesson, "disco-octaves").Take(2))
        {
            notes.Count.ShouldBe(8);
            for (var i = 0; i < 6; i += 2) (notes[i + 1].Tones[0].Pitch.MidiNumber - notes[i].Tones[0].Pitch.MidiNumber).ShouldBe(12);
        }
    }

    [Fact]
    public void A_bossa_is_root_and_fifth_in_dotted_quarters_and_eighths()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Dm7b5 | Cm7", level: 2);
        var line = Generate(lesson, "bossa", ("fill-every", 0));
        LessonMaker.Lengths(lesson, line).ShouldBe("3/2 1/2 3/2 1/2 | 3/2 1/2 3/2 1/2 | 4");
        LessonMaker.Degrees(lesson, line).ShouldBe("R 5 5 R | R b5 b5 R | R");
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void A_samba_leans_on_the_second_beat(int level)
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Cm7 | Cm7", level: level, meter: new Meter(2, 4));
        var line = Generate(lesson, "samba", ("fill-every", 0));
        for (var bar = 0; bar < 3; bar++) line.Notes.Single(n => n.Start == (2 * bar) + 1).Articulations.HasFlag(Articulations.Accent).ShouldBeTrue();
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void Thumbs_strike_lower_strings_and_pops_higher_ones(int level)
    {
        foreach (var style in (string[])["slap-octaves", "slap-sixteenths"])
        {
            var lesson = LessonMaker.Lesson(Progression, level: level);
            var line = LineFingering.Apply(LessonMaker.Generate(lesson, style), lesson.Instrument, new NeckRequest(), level, []).Line;
            line.Notes.Where(n => n.Stroke == Stroke.Pop).ShouldAllBe(n => n.Tones[0].Position!.Value.String <= 2);
            // The root, its dead notes and what leads into the next root are the thumb's: never the first string.
            line.Notes.Where(n => n.Stroke == Stroke.Thumb && n.Tones[0].Head == Notehead.Dead).ShouldAllBe(n => n.Tones[0].Position!.Value.String >= 2);
            line.Notes.ShouldContain(n => n.Stroke == Stroke.Pop);
        }
    }

    [Fact]
    public void Slap_is_refused_on_every_family_but_the_bass_with_a_word_of_what_to_do()
    {
        foreach (var instrument in InstrumentCatalogue.All)
        {
            foreach (var style in (string[])["slap-octaves", "slap-sixteenths"])
            {
                var diagnostics = LessonMaker.Generate(LessonMaker.Lesson(Progression, instrument: instrument.Id), LessonMaker.Request(style)).Diagnostics;
                if (instrument.Family == InstrumentFamily.Bass) diagnostics.Items.ShouldBeEmpty();
                else
                {
                    var problem = diagnostics.Items.ShouldHaveSingleItem();
                    problem.Code.ShouldBe(DiagnosticCodes.WrongInstrument);
                    problem.Message.ShouldContain(instrument.Name);
                }
            }
        }
    }

    [Theory]
    [InlineData("7/8 (2+2+3)", "1 1 3/2")]
    [InlineData("7/8 (3+2+2)", "3/2 1 1")]
    [InlineData("7/8 (2+3+2)", "1 3/2 1")]
    [InlineData("5/8 (2+3)", "1 3/2")]
    [InlineData("5/4 (2+3)", "2 3")]
    public void Odd_meters_follow_the_groups_of_the_lesson(string meter, string lengths)
    {
        var groups = MeterReader.Read(LocatedText.At(meter, 0), new DiagnosticBag(new SourceText("", "")))!;
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Cm7", level: 1, meter: groups);
        var line = LessonMaker.Generate(lesson, meter[0] == '5' && meter[2] == '4' ? "five-four" : "odd-meters");
        LessonMaker.Lengths(lesson, line).ShouldStartWith($"{lengths} | {lengths} | ");
    }

    [Theory]
    [InlineData("C/E | C/G | C7/Bb | F", "R 3 5", "E G G | G E C | Bb E G | F")]
    [InlineData("C/E | C/G | C/E | F", "R 5 8", "E G E | G C G | E G E | F")]
    [InlineData("C/E | C/G | C/E | F", "R 5 10", "E G C | G C E | E G C | F")]
    public void Over_a_slash_chord_the_bass_is_the_floor_and_is_not_doubled(string progression, string tones, string notes)
    {
        var lesson = LessonMaker.Lesson(progression, key: "C major", level: 1, meter: new Meter(3, 4), instrument: "guitar-6");
        var line = Play(lesson, $"meter: 3/4\nlines: q {tones}\n");
        string.Join(" | ", LessonMaker.Pitches(lesson, line).Split(" | ").Select(b => string.Join(' ', b.Split(' ').Select(p => p.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7'))))).ShouldBe(notes);
        foreach (var (_, bar) in BarsOf(lesson, line)) bar.ShouldAllBe(n => n.Tones[0].Pitch.MidiNumber >= bar[0].Tones[0].Pitch.MidiNumber);
    }

    [Theory]
    [InlineData("Gaug", "R #5 8")]
    [InlineData("Bdim7", "R b5 8")]
    [InlineData("Dm7b5", "R b5 8")]
    [InlineData("Gsus4", "R 5 8")]
    public void The_fifth_of_a_pattern_is_the_chords_own(string chord, string degrees)
    {
        var lesson = LessonMaker.Lesson($"{chord} | C", key: "C major", level: 1, meter: new Meter(3, 4));
        LessonMaker.Degrees(lesson, Play(lesson, "meter: 3/4\nlines: q R 5 8\n")).ShouldStartWith(degrees);
    }

    [Fact]
    public void A_line_can_be_for_minor_or_major_chords_alone()
    {
        var lesson = LessonMaker.Lesson("Cm7 | F7 | Bsus4 | Cm7", level: 1);
        LessonMaker.Degrees(lesson, Play(lesson, "lines:\n  - w 5\n  - { line: w 6, over: major }\n  - { line: w 7, over: minor }\n")).ShouldBe("b7 | 6 | 5 | R");
    }

    [Theory]
    [MemberData(nameof(Grooves))]
    public void Fills_lead_by_step_and_repeat_nothing_on_the_way(string name) => Gen.Select(LessonGen.Lessons, Gen.Int[1, 4], Gen.Int[1, 99]).Sample((lesson, every, seed) =>
    {
        var request = LessonMaker.Request(name, ("fill-every", every)) with { Seed = seed };
        var (line, diagnostics) = LessonMaker.Generate(lesson, request);
        if (diagnostics.HasErrors) return;
        var track = HarmonyTrack.Of(new ExerciseContext(lesson, request, diagnostics));
        var fills = PhrasePlan.BarsWithFill(lesson.Progression, track, every);
        var pattern = Read(name);
        for (var bar = 0; bar < fills.Length; bar++)
        {
            var meter = lesson.Progression.Measures[bar].Meter;
            var chords = lesson.Progression.Chords.Where(c => c.Measure == bar).ToList();
            if (!fills[bar] || chords.Count != 1 || chords[0].Chord is null || !pattern.Fills.Any(f => f.Meter.Equals(meter) && f.Line.Length == meter.MeasureLength)) continue;
            var end = chords[0].End;
            var next = lesson.Progression.Chords.FirstOrDefault(c => c.Start == end);
            if (next?.Chord is null) continue;
            var last = line.Notes.Last(n => n.Start < end);
            var before = line.Notes.LastOrDefault(n => n.End <= last.Start && n.Start >= chords[0].Start);
            // A tumbao holds its root over the bar line; a reggae leaves the one free.
            var first = line.Notes.FirstOrDefault(n => name == "reggae" ? n.Start >= end : n.Start == end);
            if (first is null)
            {
                last.Tones[0].Pitch.Name.PitchClass.ShouldBe(next.Chord.Lowest.PitchClass);
                continue;
            }
            // By step to the very octave of the root, or to that of a neighbouring octave where the neck ends.
            var way = NoteMath.Modulo(last.Tones[0].Pitch.MidiNumber - first.Tones[0].Pitch.MidiNumber, 12);
            way.ShouldBeOneOf(1, 2, 10, 11);
            before?.Tones[0].Pitch.MidiNumber.ShouldNotBe(last.Tones[0].Pitch.MidiNumber);
        }
    }, iter: 60, print: t => EveryStyleTests.Print((t.Item1, LessonMaker.Request(name) with { Seed = t.Item3 })));

    // Common practice: what leads into a chord comes near it first. Slap is left out, where the strings decide which tones lie high.
    public static TheoryData<string, string> GroovesInAllKeys
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var name in Grooves.Select(g => g.Data).Where(n => !n.StartsWith("slap", StringComparison.Ordinal)))
            {
                foreach (var key in (string[])["C minor", "E minor", "F minor", "A minor", "Bb minor", "D minor"]) data.Add(name, key);
            }
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(GroovesInAllKeys))]
    public void A_fill_makes_no_wider_leap_than_a_sixth_on_the_way_to_the_next_root(string name, string key)
    {
        var tonic = Key.Parse(key).Tonic;
        string Chord(string root) => (NoteName.Parse(root) + NoteName.Parse("C").IntervalTo(tonic)).ToString();
        var lesson = LessonMaker.Lesson($"{Chord("C")}m7 | {Chord("F")}m7 | {Chord("D")}m7b5 | {Chord("G")}7", key, level: 3);
        var (line, diagnostics) = LessonMaker.Generate(lesson, LessonMaker.Request(name, ("fill-every", 4)));
        diagnostics.HasErrors.ShouldBeFalse();
        var bar = lesson.Progression.Chords[2];
        var lead = line.Notes.Last(n => n.Start < bar.End);
        var before = line.Notes.LastOrDefault(n => n.End <= lead.Start && n.Start >= bar.Start);
        if (before is null) return;
        Math.Abs(lead.Tones[0].Pitch.MidiNumber - before.Tones[0].Pitch.MidiNumber).ShouldBeLessThanOrEqualTo(9);
    }

    private static Pattern Read(string name)
    {
        var (source, bag) = LessonFiles.Load(RepositoryRoot.Combine("templates", "patterns", name + ".yaml"));
        return new PatternReader(bag).Read(source)!;
    }

    [Theory]
    [InlineData("4/4", Feel.SwingEighths)]
    [InlineData("12/8", Feel.Straight)]
    public void A_shuffle_swings_its_eighths_where_the_meter_does_not_write_them_out(string meter, Feel feel)
    {
        var source = new SourceText("t.yaml", $"title: T\nkey: C minor\nmeter: {meter}\nprogression: Cm7 | Fm7 | G7 | Cm7\nexercises: [shuffle]\n");
        var bag = new DiagnosticBag(source);
        var built = LessonBuilder.Build(LessonReader.Read(source, bag).ShouldNotBeNull(), bag);
        bag.Items.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        built.Exercises[0].Score.Feel.ShouldBe(feel);
    }

    private static int Work(WrittenLine line) => line.Notes.Count + line.Notes.Count(n => n.Marks.Head != Notehead.Normal || n.Tones is [SameWord]);

    private static WrittenLine WholeBar(Pattern pattern, Meter meter, int level) =>
        pattern.Lines.Where(l => l.Meter.Equals(meter) && l.Level <= level && l.Line.Length == meter.MeasureLength && l.Over != ThirdKind.Minor).MaxBy(l => l.Level)!.Line;

    private static List<(Fraction Start, List<LineNote> Notes)> BarsOf(Lesson lesson, string style) => BarsOf(lesson, Generate(lesson, style, ("fill-every", 0)));

    private static List<(Fraction Start, List<LineNote> Notes)> BarsOf(Lesson lesson, Line line) =>
        [.. lesson.Progression.Measures.Select((m, i) => (lesson.Progression.StartOf(i), line.Notes.Where(n => n.Start >= lesson.Progression.StartOf(i) && n.Start < lesson.Progression.StartOf(i) + m.Length).ToList()))];

    private static Line Generate(Lesson lesson, string style, params (string Name, object Value)[] options) => LessonMaker.Generate(lesson, style, options);

    private static Line Play(Lesson lesson, string lines)
    {
        var source = new SourceText("test.yaml", "title: Test\n" + lines);
        var bag = new DiagnosticBag(source);
        var pattern = new PatternReader(bag).Read(source);
        bag.Items.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        return LessonMaker.Generate(lesson, new ExerciseRequest { Style = new PatternStyle("test", new Lazy<Pattern>(pattern!)), Span = default }).Line;
    }
}

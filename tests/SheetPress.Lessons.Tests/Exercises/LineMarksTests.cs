using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

/// <summary>What can be marked at the notes of a line, from the word that a teacher writes to the score.</summary>
public class LineMarksTests
{
    [Fact]
    public void Bends_slides_from_nowhere_and_fermatas_come_into_the_score()
    {
        var score = Score("q C2:bend-full D2:bend-quarter E2:bend-full-and-half F2:fermata | q G2:slide-from-below:slide-off-up A2:slide-from-above:slide-off-down h G2");
        Events(score).Take(3).Select(e => e.BendHalfSteps).ShouldBe([2, 0.5, 3]);
        Events(score)[3].Articulations.ShouldBe(Articulations.Fermata);
        (Events(score)[4].SlideIn, Events(score)[4].SlideOut).ShouldBe((LooseSlide.Below, LooseSlide.Above));
        (Events(score)[5].SlideIn, Events(score)[5].SlideOut).ShouldBe((LooseSlide.Above, LooseSlide.Below));
    }

    // The note that an exercise rests on is struck as its rhythm says, by the hand whose beat it is, a root not popped; it is no ghost, and not short.
    [Theory]
    [InlineData("1:thumb (2) & a:pop 3:thumb (4)", Articulations.None)]
    [InlineData("1:thumb:ghost (2) & a:pop 3:pop:ghost:accent:staccato (4)", Articulations.Accent)]
    public void The_last_note_keeps_its_stroke_and_accent(string counts, Articulations expected)
    {
        var bag = new DiagnosticBag(new SourceText("", ""));
        var rhythm = RhythmReader.ReadCounts(LocatedText.At(counts, 0), new Meter(4, 4), bag);
        bag.Items.ShouldBeEmpty();
        var lesson = LessonMaker.Lesson("Cm7 | Fm7 | Cm7");
        var line = LessonMaker.Generate(lesson, LessonMaker.Request("tone-cell", ("tones", "R 8 5")) with { Rhythm = rhythm }).Line;
        var last = line.Notes[^1];
        last.Duration.ShouldBe(2);
        (last.Stroke, last.Articulations, last.Tones[0].Head).ShouldBe((Stroke.Thumb, expected, Notehead.Normal));
    }

    [Fact]
    public void A_slur_runs_from_its_first_note_to_its_last_over_bars()
    {
        var events = Events(Score("q C2 D2:slur E2 F2 | h G2 h C2:end-slur"));
        events.Select(e => e.SlurStart).ShouldBe([false, true, false, false, false, false]);
        events.Select(e => e.SlurStop).ShouldBe([false, false, false, false, false, true]);
    }

    /// <summary>Common practice: a hairpin runs to the next dynamic or hairpin, or to the end.</summary>
    [Theory]
    [InlineData("q C2:p:crescendo D2 E2 F2:mf | w C2", "0 Dynamic p, 0 CrescendoStart, 3 HairpinStop, 3 Dynamic mf |")]
    [InlineData("q C2:crescendo D2 E2:diminuendo F2 | h C2:end-hairpin C2", "0 CrescendoStart, 2 HairpinStop, 2 DiminuendoStart | 2 HairpinStop")]
    [InlineData("q C2 D2 E2:crescendo F2:end-hairpin | w C2:sfz", "2 CrescendoStart, 4 HairpinStop | 0 Dynamic sfz")]
    [InlineData("q C2 D2 E2 F2 | h C2 C2:diminuendo", "| 2 DiminuendoStart, 4 HairpinStop")]
    [InlineData("w C2:ff | w C2:end-hairpin", "0 Dynamic ff |")]
    public void Loudness_comes_into_its_measure(string line, string expected)
    {
        var measures = Score(line).Measures.Select(m => string.Join(", ", m.Directions.Select(d => $"{d.Offset} {d.Kind} {d.Text}".Trim())));
        string.Join(" | ", measures).Trim().ShouldBe(expected);
    }

    /// <summary>What both voices have, or the upper one alone, holds for both; else each has its own.</summary>
    [Theory]
    [InlineData("h G3:p G3", "h E2 E2", "0 Dynamic p")]
    [InlineData("h G3:p G3", "h E2:p E2", "0 Dynamic p")]
    [InlineData("h G3 G3", "q E2 E2:ff h E2:diminuendo", "1 Dynamic ff @1, 2 DiminuendoStart @1, 4 HairpinStop @1")]
    [InlineData("h G3:p G3:crescendo", "h E2:p q E2 E2:f", "0 Dynamic p @0, 0 Dynamic p @1, 2 CrescendoStart @0, 3 Dynamic f @1, 4 HairpinStop @0")]
    public void Loudness_of_the_lower_voice_comes_into_its_measure(string line, string lower, string expected)
    {
        var directions = Score(line, lower, "guitar-6", "C").Measures[0].Directions;
        string.Join(", ", directions.Select(d => $"{d.Offset} {d.Kind} {d.Text}".Trim() + (d.Voice is { } voice ? $" @{voice}" : ""))).ShouldBe(expected);
    }

    /// <summary>Natural harmonics sound an octave (fret 12), an octave and a fifth (fret 7), two octaves (fret 5) above the open string; common practice.</summary>
    [Theory]
    [InlineData("G3:harmonic", 1, 12)]
    [InlineData("D4:harmonic:string1", 1, 7)]
    [InlineData("G4:harmonic", 1, 5)]
    [InlineData("A3:harmonic:string2", 2, 7)]
    public void A_harmonic_lies_where_it_can_be_had(string note, int number, int fret)
    {
        var score = Score($"w {note} | w C2");
        var tone = Events(score)[0].Tones[0];
        (tone.Head, tone.Position).ShouldBe((Notehead.Harmonic, new FretPosition(number, fret)));
        ScoreChecks.Run(score).ShouldBeEmpty();
    }

    [Fact]
    public void A_harmonic_that_another_key_does_not_have_is_played_as_a_note()
    {
        var lesson = LessonMaker.Lesson("C | F", key: "C major") with { Transposition = Interval.MajorThird };
        LessonMaker.Generate(lesson, "own-line", ("line", "w G3:harmonic | w C2")).Notes[0].Tones[0].Head.ShouldBe(Notehead.Normal);
    }

    [Fact]
    public void A_finger_that_is_asked_for_is_taken()
    {
        Events(Score("q C2:finger4 D2 E2 F2:finger1 | w C2"))[0].Tones[0].Finger.ShouldBe(4);
        Build("w D2:string2:fret0:finger2 | w C2").Diagnostics.Items.Single().Message.ShouldContain("open string");
    }

    [Fact]
    public void A_slide_never_ends_on_an_open_string() =>
        Events(Score("q A2:slide D2 A2 D2 | w C2"))[1].Tones[0].Position!.Value.Fret.ShouldBe(5);

    /// <summary>Counting syllables, common practice: 1 e &amp; a in quarters, 1 trip let in triplets, a pickup counted as the end of its bar, rests in round brackets (from memory), bars of silence and held notes without.</summary>
    [Fact]
    public void Counts_that_are_asked_for_stand_under_every_line()
    {
        static string Counted(string head, string progression, string line, string show) => string.Join(" | ",
            Build(Lesson(progression, $"line: {line}\n    show: {show}", "own-line", "bass-4", head)).Exercises[0].Score.Measures.Select(m => string.Join(' ', m.Voices[0].Events.Select(e => e.Count ?? "-"))));
        Counted("", "C | F", "q C2 e D2 E2 s F2 F2 F2 F2 q rest | e3 C2 D2 E2 h F2 q C2", "counts").ShouldBe("1 2 & 3 e & a (4) | 1 trip let 2 - 4");
        Counted("", "C | F", "q C2 D2 E2 F2 | w -", "counts").ShouldBe("1 2 3 4 | -");
        Counted("meter: 6/8\n", "C | F", "e C2 D2 E2 q. F2 | h. C2", "counts").ShouldBe("1 la li 2 | 1");
        Counted("", "[pickup 1] C | F | G", "e C2 D2 | w E2 | w F2", "counts").ShouldBe("4 & | 1 | 1");
        Counted("", "C | F", "q C2 D2 E2 F2 | w C2", "nothing").ShouldBe("- - - - | -");
    }

    /// <summary>Who counts goes on counting in rests, in round brackets, with the syllable that was written; not where another voice sounds. Common practice (from memory).</summary>
    [Theory]
    [InlineData("tone-cell", "tones: R 8\n    count: 1 (2) & 3 (4)", "1 (2) & 3 (4)")]
    [InlineData("tone-cell", "tones: R 8\n    count: 1 (te) 2 te 3", "1 (te) 2 te 3")]
    [InlineData("tone-cell", "tones: R 8\n    count: 2 & 4", "(1) 2 & - 4")]
    [InlineData("tone-cell", "tones: R 8\n    rhythm: q rq q q\n    show: counts", "1 (2) 3 4")]
    [InlineData("tone-cell", "tones: R 8\n    count: 1 (2) & 3 (4)\n    show: nothing", "1 - & 3 -")]
    [InlineData("own-line", "line: q C3 rest rest C3 | w C3\n    lower: h C2 q rest C2 | w C2\n    show: counts", "1 - (3) 4")]
    public void Rests_are_counted_in_brackets(string style, string fields, string expected)
    {
        var events = Build(Lesson("C | F", fields, style, "bass-4")).Exercises[0].Score.Measures[0].Voices[0].Events;
        string.Join(' ', events.Select(e => e.Count ?? "-")).ShouldBe(expected);
    }

    /// <summary>Sixteenth triplets, common practice (from memory): each half of the beat is counted by itself, and no note is without a syllable.</summary>
    [Theory]
    [InlineData("2/4", "s3 C2 C2 C2 C2 C2 C2 q D2", "1 trip let & trip let 2")]
    [InlineData("4/4", "q C2 D2 s3 C2 C2 C2 e D2 q E2", "1 2 3 trip let & 4")]
    [InlineData("4/4", "q C2 D2 e C2 s3 D2 D2 D2 q E2", "1 2 3 & trip let 4")]
    [InlineData("2/4", "s3 C2 C2 C2 s D2 D2 s D2 D2 s3 C2 C2 C2", "1 trip let & a 2 e & trip let")]
    [InlineData("4/4", "e3 C2 C2 C2 q D2 s3 C2 C2 C2 C2 C2 C2 q E2", "1 trip let 2 3 trip let & trip let 4")]
    [InlineData("2/4", "s3 rest C2 C2 C2 rest C2 q D2", "(1) trip let & (trip) let 2")]
    public void Sixteenth_triplets_are_counted_in_halves_of_the_beat(string meter, string line, string expected)
    {
        var events = Build(Lesson("C | F", $"line: {line} | {(meter == "2/4" ? "h" : "w")} C2\n    show: counts", "own-line", "bass-4", $"meter: {meter}\n")).Exercises[0].Score.Measures[0].Voices[0].Events;
        string.Join(' ', events.Select(e => e.Count ?? "-")).ShouldBe(expected);
    }

    [Theory]
    [InlineData("0 1/3 1/2 2/3", "1 trip ta let")]
    [InlineData("0 1/6 1/3 2/3", "1 ta trip let")]
    [InlineData("0 1/3 2/3 5/6", "1 trip let ta")]
    [InlineData("0 1/3 2/3", "1 trip let")]
    [InlineData("0 1/3 1/2", "1 let &")]
    [InlineData("0 1/2 2/3 5/6", "1 & trip let")]
    [InlineData("0 1/4 1/2 3/4", "1 e & a")]
    [InlineData("2/3", "let")]
    public void A_divided_triplet_of_eighths_keeps_its_syllables(string starts, string expected)
    {
        List<Fraction> at = [.. starts.Split(' ').Select(s => s.Split('/')).Select(p => new Fraction(long.Parse(p[0]), p.Length > 1 ? long.Parse(p[1]) : 1)), Fraction.One];
        var notes = at.Zip(at.Skip(1), (a, b) => (a, b)).ToList();
        string.Join(' ', notes.Select(n => Counting.SyllableAmong(new Meter(4, 4), n.a, notes))).ShouldBe(expected);
    }

    /// <summary>In compound meters each eighth is counted by itself (from memory, as halves of a simple beat are), and what is printed is read back.</summary>
    [Fact]
    public void Sixteenth_triplets_of_a_dotted_beat_are_read_back_as_they_are_counted()
    {
        var meter = new Meter(6, 8);
        for (var kinds = 0; kinds < 27; kinds++)
        {
            var parts = new[] { (kinds / 9) + 1, (kinds / 3 % 3) + 1, (kinds % 3) + 1 };
            var beat = parts.SelectMany((count, eighth) => Enumerable.Range(0, count).Select(i => new Fraction(eighth, 2) + new Fraction(i, 2 * count)));
            List<Fraction> at = [.. beat, new Fraction(3, 2), new Fraction(3)];
            var notes = at.Zip(at.Skip(1), (a, b) => (a, b)).ToList();
            var counted = string.Join(' ', notes.Select(n => Counting.SyllableAmong(meter, n.a, notes) ?? "?"));
            if (kinds == 26) counted.ShouldBe("1 trip let la trip let li trip let 2");
            var bag = new DiagnosticBag(new SourceText("", counted));
            RhythmReader.ReadCounts(LocatedText.At(counted, 0), meter, bag).ShouldNotBeNull(counted).Cells.Select(c => c.Start).ShouldBe(at.SkipLast(1), counted);
        }
    }

    /// <summary>No settled practice (from memory): the number on the beat alone. A triplet of two eighths in 6/8 has no syllable within an eighth.</summary>
    [Theory]
    [InlineData("4/4", "s5 C2 C2 C2 C2 C2 q D2 h C2", "1 - - - - 2 3")]
    [InlineData("4/4", "s7 C2 C2 C2 C2 C2 C2 C2 q D2 h C2", "1 - - - - - - 2 3")]
    [InlineData("4/4", "t C2 C2 C2 C2 e D2 q D2 h C2", "1 - e - & 2 3")]
    [InlineData("6/8", "e3 C2 C2 C2 e D2 q. C2", "1 - - li 2")]
    public void Notes_without_a_usual_syllable_have_none(string meter, string line, string expected)
    {
        var events = Build(Lesson("C | F", $"line: {line} | {(meter == "6/8" ? "h." : "w")} C2\n    show: counts", "own-line", "bass-4", $"meter: {meter}\n")).Exercises[0].Score.Measures[0].Voices[0].Events;
        string.Join(' ', events.Select(e => e.Count ?? "-")).ShouldBe(expected);
    }

    [Fact]
    public void Simile_is_printed_as_a_sign_where_the_bar_is_the_same_and_written_out_where_it_is_not()
    {
        Score("q C2 E2 G2 E2 | simile").Measures[1].RepeatsPrevious.ShouldBeTrue();
        var moved = Score("q R 3 5 3 | simile");
        moved.Measures[1].RepeatsPrevious.ShouldBeFalse();
        moved.Measures[1].Voices[0].Events[0].Tones[0].Pitch.Name.ShouldBe(NoteName.Parse("F"));
        Score("q C2 E2 G2 E2 | same").Measures[1].RepeatsPrevious.ShouldBeFalse();
    }

    [Fact]
    public void A_chart_keeps_the_ties_of_what_is_played_under_the_sign_for_the_bar_before()
    {
        var score = Build(Lesson("C | same | same | C", "layout: chord-chart", "tumbao", "bass-4")).Exercises[0].Score;
        score.Measures[1].RepeatsPrevious.ShouldBeTrue();
        score.Measures[1].Voices[0].Events[0].Tones.ShouldContain(t => t.TieStop);
        ScoreChecks.Run(score).ShouldBeEmpty();
    }

    // Though the other voice strikes in between, and another string would lie nearer.
    [Theory]
    [InlineData("h G#3:hammer B3 | h B3:pull G#3", "q E2 B2 E2 B2 | q E2 B2 E2 B2")]
    [InlineData("h G#3:slide B3 | h B3:slide G#3", "q E2 B2 E2 B2 | q E2 B2 E2 B2")]
    [InlineData("h G#4 B4 | w G#4", "h E2:hammer G2 | h G#2:hammer B2")]
    [InlineData("h E3&G3:hammer G#3 | w B3", "w E2 | w E2")]
    public void A_joined_note_of_two_voices_lies_on_its_string(string line, string lower)
    {
        var score = Score(line, lower, "guitar-6", "E | E");
        ScoreChecks.Run(score).ShouldBeEmpty();
        var joins = 0;
        foreach (var voice in (int[])[0, 1])
        {
            var events = score.Measures.SelectMany(m => m.Voices[voice].Events).ToList();
            for (var i = 0; i + 1 < events.Count; i++)
            {
                if (events[i].Connection == Connection.None) continue;
                joins++;
                events[i].Tones.Select(t => t.Position!.Value.String).ShouldContain(events[i + 1].Tones[0].Position!.Value.String);
            }
        }
        joins.ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Two_voices_are_fingered_as_one_hand_holds_them()
    {
        var score = Score("h E4 q F#4 G#4 | q B4 A4 h G#4", "w E2 | h B2 E2", "guitar-6", "E | E");
        score.Measures.ShouldAllBe(m => m.Voices.Length == 2);
        ScoreChecks.Run(score).ShouldBeEmpty();
        foreach (var measure in score.Measures)
        {
            foreach (var upper in measure.Voices[0].Events)
            {
                var lower = measure.Voices[1].Events.First(e => e.Onset <= upper.Onset && upper.Onset < e.End);
                var (a, b) = (upper.Tones[0].Position!.Value, lower.Tones[0].Position!.Value);
                a.String.ShouldNotBe(b.String);
                if (a.Fret > 0 && b.Fret > 0) Math.Abs(a.Fret - b.Fret).ShouldBeLessThanOrEqualTo(4);
            }
        }
    }

    [Fact]
    public void Two_voices_that_no_hand_can_hold_are_reported()
    {
        var found = Build("w F5 | w E4", "w F2 | w E2", "guitar-6", "F | E").Diagnostics.Items.Single();
        found.Code.ShouldBe("not-playable");
        found.Message.ShouldContain("bar 1");
    }

    [Fact]
    public void A_chart_with_a_rhythm_shows_it_and_a_bar_written_as_the_same_is_a_sign()
    {
        var score = Build(Lesson("C | same | F | G", "layout: chord-chart\n    rhythm: q. e h")).Exercises[0].Score;
        score.ShowRhythm.ShouldBeTrue();
        score.Measures.Select(m => m.RepeatsPrevious).ShouldBe([false, true, false, false]);
    }

    [Fact]
    public void Shapes_stand_over_the_first_symbol_of_each_chord()
    {
        var lesson = Lesson("C | Am | C | N.C.", "show: shapes", "chords");
        var harmonies = Build(lesson).Exercises[0].Score.Measures.SelectMany(m => m.Harmonies).ToList();
        harmonies.Select(h => h.Frame.IsEmpty).ShouldBe([false, false, true, true]);
        foreach (var harmony in harmonies.Where(h => !h.Frame.IsEmpty))
        {
            var names = harmony.Frame.Select(p => lesson.Instrument.MidiNumberAt(p.String, p.Fret) % 12).ToHashSet();
            foreach (var degree in harmony.Chord!.Quality.Degrees) names.ShouldContain(harmony.Chord.NoteOf(degree).PitchClass);
        }
    }

    // A map beside the place where the line is played would send the hand elsewhere.
    [Fact]
    public void Maps_of_a_bass_lie_where_the_line_plays_the_root()
    {
        var score = Build(Lesson("Am7 | Dm7 | E7 | Gm7", "show: shapes", "arpeggio", "bass-4")).Exercises[0].Score;
        foreach (var measure in score.Measures)
        {
            var root = measure.Voices[0].Events[0].Tones[0].Position!.Value;
            measure.Harmonies[0].FrameIsMap.ShouldBeTrue();
            measure.Harmonies[0].Frame.ShouldContain(root, $"{measure.Harmonies[0].Chord}");
        }
    }

    [Fact]
    public void Words_in_quotes_stand_over_their_bar()
    {
        var measures = Lesson("[\"a little slower\"] C | [\u201Csing\u201D] F", "show: nothing").Progression.Measures;
        measures.Select(m => m.Directions.Single()).ShouldBe([new Direction(0, DirectionKind.Words, "a little slower"), new Direction(0, DirectionKind.Words, "sing")]);
    }

    private static Lesson Lesson(string progression, string entry, string style = "roots", string instrument = "guitar-6", string head = "") =>
        MarkedLesson.Good($"title: Tiny\nkey: C major\n{head}instrument: {instrument}\nprogression: |\n  {progression}\nexercises:\n  - style: {style}\n    {entry}\n");

    private static BuiltLesson Build(Lesson lesson)
    {
        var bag = new DiagnosticBag(lesson.Source);
        var built = LessonBuilder.Build(lesson, bag);
        bag.Items.ShouldBeEmpty();
        return built;
    }

    // A string that is bent is stopped; the open string of the other voice is not meant.
    [Fact]
    public void A_bend_over_an_open_string_of_the_lower_voice_can_be_played()
    {
        var measure = Score("w E3:bend-full", "w A1", progression: "Am7").Measures[0];
        measure.Voices[0].Events[0].Tones[0].Position!.Value.Fret.ShouldBeGreaterThan(0);
        measure.Voices[1].Events[0].Tones[0].Position.ShouldBe(new FretPosition(3, 0));
    }

    private static Score Score(string line, string? lower = null, string instrument = "bass-4", string progression = "C | F")
    {
        var (built, bag) = Build(line, lower, instrument, progression);
        bag.Items.ShouldBeEmpty(string.Join("\n", bag.Items.Select(d => d.Message)));
        return built.Exercises[0].Score;
    }

    private static (BuiltLesson Built, DiagnosticBag Diagnostics) Build(string line, string? lower = null, string instrument = "bass-4", string progression = "C | F")
    {
        var request = lower is null ? LessonMaker.Request("own-line", ("line", line)) : LessonMaker.Request("own-line", ("line", line), ("lower", lower));
        var lesson = LessonMaker.Lesson(progression, "C major", instrument, level: 4) with { Exercises = [request] };
        var bag = new DiagnosticBag(lesson.Source);
        return (LessonBuilder.Build(lesson, bag), bag);
    }

    private static List<ScoreEvent> Events(Score score) => [.. score.Measures.SelectMany(m => m.Voices[0].Events)];
}

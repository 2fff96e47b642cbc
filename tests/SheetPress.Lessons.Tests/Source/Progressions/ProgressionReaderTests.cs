using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class ProgressionReaderTests
{
    private static string Read(string written, string meter = "4/4", string key = "C minor")
    {
        var source = new SourceText("test.yaml", written);
        var bag = new DiagnosticBag(source);
        var groups = MeterReader.Read(LocatedText.At(meter, 0), bag)!;
        var progression = ProgressionReader.Read(LocatedText.At(written, 0), Key.Parse(key), groups, new KeyTransposition(Key.Parse(key), Key.Parse(key)), bag);
        bag.Items.Select(DiagnosticPrinter.Print).ShouldBeEmpty();
        CheckWhole(progression.ShouldNotBeNull());
        return ProgressionText.Of(progression);
    }

    /// <summary>What holds for every progression: chords follow each other without gaps and fill their measures.</summary>
    internal static void CheckWhole(Progression progression)
    {
        var at = Fraction.Zero;
        var start = Fraction.Zero;
        var measure = 0;
        foreach (var chord in progression.Chords)
        {
            chord.Start.ShouldBe(at);
            chord.Duration.ShouldBeGreaterThan(Fraction.Zero);
            at = chord.End;
            chord.Measure.ShouldBe(measure);
            if (at - start < progression.Measures[measure].Length) continue;
            (at - start).ShouldBe(progression.Measures[measure].Length);
            start = at;
            measure++;
        }
        at.ShouldBe(progression.Length);
        measure.ShouldBe(progression.Measures.Length);
    }

    // Common practice in writing chord charts; the words and the beats are our own notation.
    [Theory]
    [InlineData("Cm7 | Fm7", "<4/4> Cm7:4 | Fm7:4")]
    [InlineData("| Cm7 | Fm7 |", "<4/4> Cm7:4 | Fm7:4")]
    [InlineData("Cm7 |\nFm7 |\n", "<4/4> Cm7:4 | Fm7:4")]
    [InlineData("Cm7\nFm7", "<4/4> Cm7:4 | Fm7:4")]
    [InlineData("Cm7 |\n| Fm7", "<4/4> Cm7:4 | Fm7:4")]
    [InlineData("Cm7 Fm7", "<4/4> Cm7:2 Fm7:2")]
    [InlineData("Cm7, Fm7", "<4/4> Cm7:2 Fm7:2")]
    [InlineData("Cm7 Fm7 Bb7 Eb", "<4/4> Cm7:1 Fm7:1 Bb7:1 Eb:1")]
    [InlineData("C D E F G A B C", "<4/4> C:1/2 D:1/2 E:1/2 F:1/2 G:1/2 A:1/2 B:1/2 C:1/2")]
    [InlineData("Cm7:3 G7:1", "<4/4> Cm7:3 G7:1")]
    [InlineData("Cm7:3 G7", "<4/4> Cm7:3 G7:1")]
    [InlineData("Cm7 G7:1", "<4/4> Cm7:3 G7:1")]
    [InlineData("Cm7:2.5 G7", "<4/4> Cm7:5/2 G7:3/2")]
    [InlineData("Cm7:2 F7 G7", "<4/4> Cm7:2 F7:1 G7:1")]
    [InlineData("C7(b9,#11) F7(b9 b13)", "<4/4> C7b9#11:2 F7b9b13:2")]
    [InlineData("C/E F/A", "<4/4> C/E:2 F/A:2")]
    [InlineData("N.C. | NC | C", "<4/4> N.C.:4 | N.C.:4 | C:4")]
    [InlineData("C | same | F", "<4/4> C:4 | C:4 | F:4")]
    [InlineData("C F:1 | same", "<4/4> C:3 F:1 | C:3 F:1")]
    [InlineData("C | same | same", "<4/4> C:4 | C:4 | C:4")]
    [InlineData("C | hold | F hold", "<4/4> C:4 | ~C:4 | F:2 ~F:2")]
    [InlineData("C # a remark | F\nG", "<4/4> C:4 | G:4")]
    [InlineData("C || F", "<4/4> C:4 <Double> | F:4")]
    [InlineData("C | F ||", "<4/4> C:4 | F:4")]
    [InlineData("[A] C | F || [B] G | [Verse 2] C", "<4/4> <Rehearsal A> C:4 | F:4 <Double> | <Rehearsal B> G:4 | <Rehearsal Verse 2> C:4")]
    [InlineData("[A]\nC | F", "<4/4> <Rehearsal A> C:4 | F:4")]
    [InlineData("C | [3/4] F | G | [4/4] C", "<4/4> C:4 | <3/4> F:3 | G:3 | <4/4> C:4")]
    [InlineData("C | [7/8 (2+2+3)] C F G", "<4/4> C:4 | <7/8> C:1 F:1 G:3/2")]
    [InlineData("Cm | [key G minor] i V7", "<4/4> Cm:4 | <G minor> Gm:2 D7:2")]
    [InlineData("C | [tempo 120] F | [tempo half = 60] G", "<4/4> C:4 | <Tempo Quarter=120> F:4 | <Tempo Half=60> G:4")]
    [InlineData("C | [tempo 60] [6/8] F | [B] [4/4] [tempo 72.5 bpm] G", "<4/4> C:4 | <6/8> <Tempo Quarter.=60> F:3 | <4/4> <Rehearsal B> <Tempo Quarter=72.5> G:4")]
    [InlineData("C | [6/8] [tempo quarter = dotted quarter] F | [tempo e = e] [4/4] G | [tempo q..=Half note] C", "<4/4> C:4 | <6/8> <Tempo Quarter=Quarter.> F:3 | <4/4> <Tempo Eighth=Eighth> G:4 | <Tempo Quarter..=Half> C:4")]
    [InlineData("[pickup 1] C | [tempo quarter = half] F", "<4/4> C:1 | <Tempo Quarter=Half> F:4")]
    [InlineData("[tempo 66] C | F", "<66> <4/4> C:4 | F:4")]
    [InlineData("[pickup 1] G7 | Cm", "<4/4> G7:1 | Cm:4")]
    [InlineData("[pickup 1.5 beats] G7 | Cm", "<4/4> G7:3/2 | Cm:4")]
    [InlineData("C | [new line] F", "<4/4> C:4 | <line> F:4")]
    [InlineData("[segno] C | F [to coda] | G [D.S. al Coda] | [coda] C [fine]", "<4/4> <Segno> C:4 | F:4 <ToCoda To Coda> | G:4 <DalSegno D.S. al Coda> | <Coda> C:4 <Fine Fine>")]
    [InlineData("C | F [fine] | G | [d.c. al fine]", "<4/4> C:4 | F:4 <Fine Fine> | G:4 <DaCapo D.C. al Fine>")]
    public void Reads(string written, string expected) => Read(written).ShouldBe(expected);

    // Ways that teachers write charts by hand, common practice.
    [Theory]
    [InlineData("C | % | F", "<4/4> C:4 | C:4 | F:4")]
    [InlineData("C / / / | F / G /", "<4/4> C:4 | F:2 G:2")]
    [InlineData("C . . G | / / F /", "<4/4> C:3 G:1 | ~G:2 F:2")]
    [InlineData("C / / G", "<4/4> C:3 G:1")]
    [InlineData("C % F %", "<4/4> C:2 F:2")]
    [InlineData("C /B | Am /G | /F# F", "<4/4> C:2 C/B:2 | Am:2 Am/G:2 | Am/F#:2 F:2")]
    [InlineData("C | C Am (Dm7 G7)", "<4/4> C:4 | C:1 Am:1 Dm7:1 G7:1")]
    [InlineData("C | (Dm7 G7) | (N.C.)", "<4/4> C:4 | Dm7:2 G7:2 | N.C.:4")]
    [InlineData("N | C | tacet", "<4/4> N.C.:4 | C:4 | N.C.:4")]
    [InlineData("Verse 1: C | F\nChorus: G | C", "<4/4> <Rehearsal Verse 1> C:4 | F:4 | <Rehearsal Chorus> G:4 | C:4")]
    [InlineData("A: C | F\nB: G | C", "<4/4> <Rehearsal A> C:4 | F:4 | <Rehearsal B> G:4 | C:4")]
    [InlineData("Intro\nC | F\n\nVerse 2\n| G | C |", "<4/4> <Rehearsal Intro> C:4 | F:4 | <Rehearsal Verse 2> G:4 | C:4")]
    [InlineData("Bridge:\nC F:1\nG", "<4/4> <Rehearsal Bridge> C:3 F:1 | G:4")]
    [InlineData("C:maj7 | A:min7 D:hdim7/b5 | G:7 | N", "<4/4> Cmaj7:4 | Am7:2 Dm7b5/Ab:2 | G7:4 | N.C.:4")]
    [InlineData("C:maj:3 G:7:1 | C:maj F:1", "<4/4> C:3 G7:1 | C:3 F:1")]
    [InlineData("C:3 G:1", "<4/4> C:3 G:1")]
    [InlineData("|: C | F :| (x3)", "<4/4> <repeat> C:4 | F:4 <x3>")]
    [InlineData("|: C | F :| 3x", "<4/4> <repeat> C:4 | F:4 <x3>")]
    [InlineData("|: C |1 F :|2 G |", "<4/4> <repeat> C:4 | <ending 1> F:4 <close> <x2> | <ending 2> G:4 <close>")]
    [InlineData("C\tF\r\nG\u00A0C\r\n", "<4/4> C:2 F:2 | G:2 C:2")]
    public void Reads_charts_as_they_are_written_by_hand(string written, string expected) => Read(written).ShouldBe(expected);

    // The earlier chords take the longer shares, on the felt groups: common practice.
    [Theory]
    [InlineData("3/4", "C F", "<3/4> C:2 F:1", false)]
    [InlineData("9/8", "C F", "<9/8> C:3 F:3/2", false)]
    [InlineData("7/8", "C F", "<7/8> C:2 F:3/2", false)]
    [InlineData("7/4", "C F", "<7/4> C:4 F:3", false)]
    [InlineData("4/4", "C F G", "<4/4> C:2 F:1 G:1", true)]
    [InlineData("12/8", "C F G", "<12/8> C:3 F:3/2 G:3/2", true)]
    [InlineData("5/4", "C F G", "<5/4> C:2 F:1 G:2", true)]
    [InlineData("6/8", "C F G C", "<6/8> C:1 F:1/2 G:1 C:1/2", true)]
    [InlineData("2/4", "C F G", "<2/4> C:1 F:1/2 G:1/2", true)]
    [InlineData("4/4", "C F G C F", "<4/4> C:1 F:1 G:1 C:1/2 F:1/2", true)]
    public void Shares_that_cannot_be_equal(string meter, string written, string expected, bool isSaid)
    {
        var bag = new DiagnosticBag(new SourceText("test.yaml", written));
        var key = Key.Parse("C major");
        var progression = ProgressionReader.Read(LocatedText.At(written, 0), key, MeterReader.Read(LocatedText.At(meter, 0), bag)!, bag)!;
        CheckWhole(progression);
        ProgressionText.Of(progression).ShouldBe(expected);
        bag.HasErrors.ShouldBeFalse();
        bag.Items.Select(i => i.Code).ShouldBe(isSaid ? [DiagnosticCodes.SharesUnclear] : []);
    }

    // Jumps and signs that belong together, in every way that is common practice.
    [Theory]
    [InlineData("C | F [D.C.]")]
    [InlineData("C [fine] | F [D.C.]")]
    [InlineData("C [fine] | F [D.C. al Fine] | G")]
    [InlineData("C | F [D.C. al Fine] | G [fine]")]
    [InlineData("C | [segno] F | G [D.S.] | Am")]
    [InlineData("C | [segno] F [fine] | G [D.S. al Fine]")]
    [InlineData("C | [segno] F [D.S.] | [segno] G | Am [D.S.]")]
    [InlineData("C [to coda] | F [D.C. al Coda] | [coda] G [fine]")]
    [InlineData("C [to coda] | F [D.C.] | [coda] G")]
    [InlineData("C | [segno] F [to coda] | G [D.S. al Coda] || [coda] Am")]
    [InlineData("C | F | [fine]")]
    public void Jumps_with_their_goals_are_not_reported(string written)
    {
        var bag = new DiagnosticBag(new SourceText("test.yaml", written));
        ProgressionReader.Read(LocatedText.At(written, 0), Key.Parse("C major"), new Meter(4, 4), bag).ShouldNotBeNull();
        bag.Items.ShouldBeEmpty();
    }

    // Any YAML for the same eight bars.
    [Theory]
    [InlineData("progression: Cm7 | Fm7 F#dim7 | G7 | Cm7")]
    [InlineData("progression: \"Cm7 | Fm7 F#dim7 | G7 | Cm7 |\"")]
    [InlineData("progression: '| Cm7 | Fm7 F♯°7 | G7 | Cm7 ||'")]
    [InlineData("progression: |\n  | Cm7 | Fm7 F#dim7 |\n  | G7  | Cm7 |")]
    [InlineData("progression: >\n  Cm7 | Fm7 F#dim7 |\n  G7 | Cm7")]
    [InlineData("progression:\n  - Cm7\n  - Fm7 F#dim7\n  - G7\n  - Cm7")]
    [InlineData("progression:\n  - Cm7 | Fm7 F#dim7\n  - G7 | Cm7")]
    [InlineData("progression: [Cm7, Fm7 F#dim7, G7, Cm7]")]
    [InlineData("progression: [[Cm7], [Fm7, F#dim7], [G7], [Cm7]]")]
    [InlineData("progression: {Cm7, Fm7 F#dim7, G7, Cm7 |}")]
    [InlineData("progression:\n  - [Cm7]\n  - [Fm7, F#dim7]\n  - [G7]\n  - [Cm7]")]
    [InlineData("progression: \"i7 | iv7 #iv°7 | V7 | i7\"")]
    [InlineData("progression:\n  Cm7 |\n  Fm7 F#dim7 |\n  G7 |\n  Cm7")]
    [InlineData("progression: |\n  Cm7 |\n  Fm7 F#dim7 | # the way up\n  G7 |\n\n  Cm7")]
    public void Yaml_of_many_kinds(string yaml)
    {
        foreach (var text in (string[])[yaml, yaml.Replace("\n", "\r\n", StringComparison.Ordinal)])
        {
            ProgressionText.Of(MarkedLesson.Good(MarkedLesson.With(text)).Progression).ShouldBe("<4/4> Cm7:4 | Fm7:2 F#dim7:2 | G7:4 | Cm7:4", text);
        }
    }

    [Theory]
    [InlineData("progression:\n  A: Cm7 | Fm7\n  Bridge: |\n    G7\n    Cm7")]
    [InlineData("progression:\n  - A: Cm7 | Fm7\n  - Bridge:\n    - G7\n    - Cm7")]
    [InlineData("progression:\n  A: [Cm7, Fm7]\n  Bridge: [G7, Cm7]")]
    public void Parts_by_their_names(string yaml) =>
        ProgressionText.Of(MarkedLesson.Good(MarkedLesson.With(yaml)).Progression).ShouldBe("<4/4> <Rehearsal A> Cm7:4 | Fm7:4 | <Rehearsal Bridge> G7:4 | Cm7:4");

    [Theory]
    [InlineData("|: C | F :|", "<4/4> <repeat> C:4 | F:4 <x2>")]
    [InlineData("C | F :|", "<4/4> C:4 | F:4 <x2>")]
    [InlineData("|: C | F :| x3", "<4/4> <repeat> C:4 | F:4 <x3>")]
    [InlineData("|: C :|: F :|", "<4/4> <repeat> C:4 <x2> | <repeat> F:4 <x2>")]
    [InlineData("|: C :|\n|: F :|", "<4/4> <repeat> C:4 <x2> | <repeat> F:4 <x2>")]
    [InlineData("C | |: F :| | G", "<4/4> C:4 | <repeat> F:4 <x2> | G:4")]
    [InlineData("C | F | :| G", "<4/4> C:4 | F:4 <x2> | G:4")]
    [InlineData("||: C :|| F", "<4/4> <repeat> C:4 <x2> | F:4")]
    [InlineData("|: C:3 F:1:| G", "<4/4> <repeat> C:3 F:1 <x2> | G:4")]
    [InlineData("|: C |1. F :|2. G | C", "<4/4> <repeat> C:4 | <ending 1> F:4 <close> <x2> | <ending 2> G:4 <stop> | C:4")]
    [InlineData("|: C |1. F | F :|2. G | C", "<4/4> <repeat> C:4 | <ending 1> F:4 | F:4 <close> <x2> | <ending 2> G:4 | C:4 <close>")]
    [InlineData("|: C |1-2. F :|3. G |", "<4/4> <repeat> C:4 | <ending 1,2> F:4 <close> <x3> | <ending 3> G:4 <close>")]
    [InlineData("|: C |1.2. F :|3. G |", "<4/4> <repeat> C:4 | <ending 1,2> F:4 <close> <x3> | <ending 3> G:4 <close>")]
    [InlineData("|: C |\n| 1. F :|\n| 2. G |", "<4/4> <repeat> C:4 | <ending 1> F:4 <close> <x2> | <ending 2> G:4 <close>")]
    [InlineData("|: C |1. F :|2. G || [B] C | F", "<4/4> <repeat> C:4 | <ending 1> F:4 <close> <x2> | <ending 2> G:4 <stop> <Double> | <Rehearsal B> C:4 | F:4")]
    [InlineData("|: C |1. F :|2. G || |: C |1. F :|2. G", "<4/4> <repeat> C:4 | <ending 1> F:4 <close> <x2> | <ending 2> G:4 <stop> <Double> | <repeat> C:4 | <ending 1> F:4 <close> <x2> | <ending 2> G:4 <close>")]
    [InlineData("|: C |1. F :|2. G ||: C |1. F :|2. G", "<4/4> <repeat> C:4 | <ending 1> F:4 <close> <x2> | <ending 2> G:4 <stop> <Double> | <repeat> C:4 | <ending 1> F:4 <close> <x2> | <ending 2> G:4 <close>")]
    public void Reads_repeats(string written, string expected) => Read(written).ShouldBe(expected);

    [Theory]
    [InlineData("3/4", "C | F:2 G", "<3/4> C:3 | F:2 G:1")]
    [InlineData("3/4", "C F G", "<3/4> C:1 F:1 G:1")]
    [InlineData("6/8", "C F", "<6/8> C:3/2 F:3/2")]
    [InlineData("6/8", "C:4 F:2", "<6/8> C:2 F:1")]
    [InlineData("12/8", "C F", "<12/8> C:3 F:3")]
    [InlineData("12/8", "C F G C", "<12/8> C:3/2 F:3/2 G:3/2 C:3/2")]
    [InlineData("5/4", "C F", "<5/4> C:3 F:2")]
    [InlineData("5/4 (2+3)", "C F", "<5/4> C:2 F:3")]
    [InlineData("7/8", "C F G", "<7/8> C:1 F:1 G:3/2")]
    [InlineData("2/2", "C F", "<2/2> C:2 F:2")]
    [InlineData("2/2", "C F G C", "<2/2> C:1 F:1 G:1 C:1")]
    public void Shares_bars_in_every_meter(string meter, string written, string expected) => Read(written, meter).ShouldBe(expected);

    // Degrees and qualities of the chords of the keys: common practice.
    [Theory]
    [InlineData("C minor", "i7 | iiø7 V7 | i", "<4/4> Cm7:4 | Dm7b5:2 G7:2 | Cm:4")]
    [InlineData("G major", "Imaj7 vi7 | ii7 V7/V", "<4/4> Gmaj7:2 Em7:2 | Am7:2 A7:2")]
    [InlineData("D dorian", "i7 IV7 | bVII", "<4/4> Dm7:2 G7:2 | C:4")]
    [InlineData("G major", "I V7/3 of ii:1 | ii V7 of IV", "<4/4> G:3 E7/G#:1 | Am:2 G7:2")]
    [InlineData("C minor", "i7 Fm7 | V7 Cm", "<4/4> Cm7:2 Fm7:2 | G7:2 Cm:2")]
    public void Reads_roman_numerals_among_symbols(string key, string written, string expected) => Read(written, key: key).ShouldBe(expected);

    // Functions of the chords: common practice.
    [Fact]
    public void Analyses_each_chord_in_the_key_of_its_bar()
    {
        var lesson = MarkedLesson.Good(MarkedLesson.With("progression: |\n  Cm7 | G7 | N.C. | [key Eb major] Bb7 | hold | Ebmaj7"));
        lesson.Progression.Chords.Select(c => c.Analysis?.Roman).ShouldBe(["i7", "V7", null, "V7", "V7", "Imaj7"]);
        lesson.Progression.Measures.Select(m => string.Join(' ', m.Harmonies.Select(h => $"{h.Chord}={h.Roman}"))).ShouldBe(["Cm7=i7", "G7=V7", "=", "Bb7=V7", "", "Ebmaj7=Imaj7"]);
    }

    // The notes of the keys: common practice.
    [Theory]
    [InlineData("pentatonics", "scale: key", "0 3 5 7 10 | 2 4 6 9 11")]
    [InlineData("scale-run", "scale: key", "0 2 3 5 7 8 10 | 1 2 4 6 7 9 11")]
    [InlineData("scale-run", "rhythm: eighths", "0 2 3 5 7 8 10 | 1 2 4 6 7 9 11")]
    public void A_new_key_is_the_key_of_scales_from_there_on(string style, string option, string expected)
    {
        var lesson = MarkedLesson.Good($"title: Tiny\nkey: C minor\nprogression: |\n  Cm7 | same | [key D major] Dmaj7 | same\nexercises:\n  - style: {style}\n    {option}\n");
        var built = LessonBuilder.Build(lesson, new DiagnosticBag(lesson.Source));
        var notes = built.Exercises.Single().Line.Notes;
        string Classes(int from, int to) => string.Join(' ', notes.Where(n => n.Start >= from && n.Start < to).Select(n => n.Tones[0].Pitch.Name.PitchClass).Distinct().Order());
        (Classes(0, 8) + " | " + Classes(8, 16)).ShouldBe(expected);
        built.Exercises.Single().Score.Measures.Select(m => m.Key.ToString()).ShouldBe(["C minor", "C minor", "D major", "D major"]);
    }

    [Fact]
    public void Takes_any_number_of_bars()
    {
        var written = string.Join(" | ", Enumerable.Repeat("Cm7 F7", 2000));
        Read(written).Split(" | ").Length.ShouldBe(2000);
    }
}

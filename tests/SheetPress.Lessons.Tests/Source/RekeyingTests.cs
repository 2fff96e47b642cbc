using CsCheck;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class RekeyingTests
{
    private static readonly string[] MajorTonics = ["C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"];

    private static Lesson Rekeyed(string text, string key) => MarkedLesson.Good(text, new LessonOverrides { Key = Key.Parse(key) });

    // The chords of a cycle of fourths in minor in three keys: common practice.
    [Theory]
    [InlineData("C minor", "Cm7 Fm7 Bb7 Ebmaj7 Abmaj7 Dm7b5 G7b9 Cm7")]
    [InlineData("A minor", "Am7 Dm7 G7 Cmaj7 Fmaj7 Bm7b5 E7b9 Am7")]
    [InlineData("F# minor", "F#m7 Bm7 E7 Amaj7 Dmaj7 G#m7b5 C#7b9 F#m7")]
    [InlineData("Eb minor", "Ebm7 Abm7 Db7 Gbmaj7 Cbmaj7 Fm7b5 Bb7b9 Ebm7")]
    [InlineData("Bb major", "Bbm7 Ebm7 Ab7 Dbmaj7 Gbmaj7 Cm7b5 F7b9 Bbm7")]
    public void Moves_chords_with_their_spelling(string key, string expected)
    {
        var text = MarkedLesson.With("progression: Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Dm7b5 | G7b9 | Cm7");
        var romans = MarkedLesson.With("progression: i7 | iv7 | VII7 | IIImaj7 | VImaj7 | iiø7 | V7b9 | i7");
        var lesson = Rekeyed(text, key);
        string.Join(' ', lesson.Progression.Chords.Select(c => c.Chord)).ShouldBe(expected);
        string.Join(' ', Rekeyed(romans, key).Progression.Chords.Select(c => c.Chord)).ShouldBe(expected);
        lesson.Key.Mode.ShouldBe(Mode.Minor);
    }

    [Theory]
    [InlineData("C minor", "Db major", "C# minor")]
    [InlineData("C minor", "Gb major", "F# minor")]
    [InlineData("C major", "G# minor", "Ab major")]
    [InlineData("D dorian", "C minor", "C dorian")]
    [InlineData("C lydian", "A minor", "A lydian")]
    public void Keeps_the_mode_of_the_lesson(string written, string asked, string expected)
    {
        Rekeyed(MarkedLesson.With("key: " + written), asked).Key.ShouldBe(Key.Parse(expected));
    }

    [Fact]
    public void Moves_all_that_names_a_chord_or_note_and_leaves_what_holds_in_every_key()
    {
        var text = MarkedLesson.With("progression: |\n  Cm7 | [key Eb major] Bb7/D Ebmaj7 | V7/ii N.C. |")
            + "notes: \"[Cm7] to [Bb7 | Ebmaj7], {b3}, [V7 i], [V7/3 of ii | Dm], [see here](x) and [C then what]\"\n"
            + "diagrams:\n  - Cm7\n  - C natural minor\n  - scale: key\n  - chord: V7\n  - shape: 4:3 3:5\n    caption: the [Cm] shape\n";
        var lesson = Rekeyed(text, "D minor");
        ProgressionText.Of(lesson.Progression).ShouldBe("<4/4> Dm7:4 | <F major> C7/E:2 Fmaj7:2 | D7:2 N.C.:2");
        lesson.Notes.ShouldBe("[Dm7] to [C7 | Fmaj7], {b3}, [V7 i], [V7/3 of ii | Em], [see here](x) and [C then what]");
        lesson.Diagrams.Select(d => d.Chord?.ToString() ?? d.Scale?.ToString() ?? string.Join(' ', d.Positions.Select(p => $"{p.String}:{p.Fret}")))
            .ShouldBe(["Dm7", "D natural minor", "D natural minor", "A7", "4:5 3:7"]);
        lesson.Diagrams[^1].Caption.ShouldBe("the [Dm] shape");
        lesson.Transposition.ShouldBe(Interval.Parse("M2"));
    }

    [Theory]
    [InlineData("C major", "F# major", "A4")]
    [InlineData("C major", "G major", "-P4")]
    [InlineData("C major", "F major", "P4")]
    [InlineData("C major", "C major", "P1")]
    [InlineData("Eb major", "D major", "-m2")]
    public void Takes_the_shorter_way(string from, string to, string interval) =>
        Rekeyed(MarkedLesson.With("key: " + from), to).Transposition.ShouldBe(Interval.Parse(interval));

    [Fact]
    public void Avoids_double_signs_in_chord_symbols()
    {
        var chords = Rekeyed(MarkedLesson.With("progression: Cm7 | Abm7 | Db7/Cb"), "Gb major").Progression.Chords;
        // From C minor to F# minor; a flat sixth above F# is plain D.
        string.Join(' ', chords.Select(c => c.Chord)).ShouldBe("F#m7 Dm7 G7/F");
        foreach (var tonic in MajorTonics)
        {
            foreach (var chord in Rekeyed(MarkedLesson.With("progression: Cbm7 | F#7/A# | B#m7b5 | Fb/Cb"), tonic).Progression.Chords)
            {
                Math.Abs(chord.Chord!.Root.Alteration).ShouldBeLessThan(2);
                Math.Abs(chord.Chord.Lowest.Alteration).ShouldBeLessThan(2);
            }
        }
    }

    [Fact]
    public void Every_chord_sounds_as_far_away_as_the_key()
    {
        Gen.Select(Gen.Int[-7, 7], Gen.Int[0, 11], Gen.Int[0, ChordQualities.All.Length - 1]).Sample((fifths, tonic, quality) =>
        {
            var chord = new Chord(NoteName.FromFifths(fifths), ChordQualities.All[quality]);
            var to = NoteName.Parse(MajorTonics[tonic]);
            var there = new KeyTransposition(Key.Parse("C"), new Key(to, Mode.Major));
            var moved = there.Move(chord);
            var back = there.Inverse.Move(moved);
            ((moved.Root.PitchClass - chord.Root.PitchClass + 12) % 12).ShouldBe((to.PitchClass + 12) % 12);
            back.Root.PitchClass.ShouldBe(chord.Root.PitchClass);
            moved.Quality.ShouldBe(chord.Quality);
            // Back home unless a double sign was written more simply on the way.
            if (Math.Abs((chord.Root + there.Interval).Alteration) < 2) back.ShouldBe(chord);
        });
    }

    [Fact]
    public void Another_instrument_keeps_what_fits_it()
    {
        var text = MarkedLesson.With("exercises:\n  - style: roots\n    strings: 1-4\n    position: 5\n    range: 2-9") + "diagrams:\n  - shape: 4:3 3:5\n  - Cm7\n";
        var lesson = MarkedLesson.Good(text, new LessonOverrides { InstrumentId = "ukulele" });
        lesson.Instrument.Id.ShouldBe("ukulele");
        lesson.Exercises[0].Neck.Position.ShouldBe(5);
        lesson.Diagrams.Select(d => d.Kind).ShouldBe([DiagramKind.Chord]);
        var high = MarkedLesson.With("instrument: bass-6");
        var six = MarkedLesson.Good(high.Replace("- style: roots", "- style: roots\n    strings: 5-6\n    position: 20\n    range: 18-22", StringComparison.Ordinal), new LessonOverrides { InstrumentId = "ukulele" });
        six.Exercises[0].Neck.Strings.ShouldBeEmpty();
        six.Exercises[0].Neck.Position.ShouldBeNull();
        six.Exercises[0].Neck.LowestFret.ShouldBeNull();
        MarkedLesson.Read(text, new LessonOverrides { InstrumentId = "ukelele" }).Findings.Select(f => f.Code).ShouldBe([DiagnosticCodes.UnknownInstrument]);
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class VoicingTests
{
    // Round the key in fourths and home, as most lessons go: i iv bVII bIII bVI ii V i.
    private static readonly (int Degree, string Quality)[] Cycle = [(1, "m7"), (4, "m7"), (7, "7"), (3, "maj7"), (6, "maj7"), (2, "m7b5"), (5, "7"), (1, "m7")];
    private static readonly string[] Tonics = ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "G#", "A", "Bb", "B"];

    private static Lesson CycleIn(string tonic, string instrument, int level)
    {
        var key = Key.Parse($"{tonic} minor");
        return LessonMaker.Lesson(string.Join(" | ", Cycle.Select(c => $"{key.NoteOf(c.Degree)}{c.Quality}")), $"{tonic} minor", instrument, level);
    }

    private static FingeringResult Fingered(Lesson lesson, string style, params (string, object)[] options)
    {
        var result = LineFingering.Apply(LessonMaker.Generate(lesson, style, options), lesson.Instrument, new NeckRequest(), lesson.Level, [.. lesson.Progression.Chords.Select(c => c.Start)]);
        result.FailedNote.ShouldBe(-1, result.Reason);
        return result;
    }

    private static int LowestFret(LineNote note) => note.Tones.Select(t => t.Position!.Value.Fret).Where(f => f > 0).DefaultIfEmpty(0).Min();

    [Theory]
    [InlineData("tenths", "together")]
    [InlineData("tenths", "broken")]
    [InlineData("shells", "together")]
    public void Held_shapes_stay_in_one_region_of_the_neck(string style, string play)
    {
        // On four strings in fourths a tenth has its root on the lowest string, and the roots of one key lie within an octave of it:
        // eleven frets from the lowest to the highest at most. Common practice: no further, and not far above the twelfth fret but for the
        // advanced.
        foreach (var tonic in Tonics)
        {
            foreach (var level in (int[])[1, 3, 5])
            {
                var frets = Fingered(CycleIn(tonic, "bass-4", level), style, ("play", play)).Line.Notes.Select(LowestFret).Where(f => f > 0).ToList();
                (frets.Max() - frets.Min()).ShouldBeLessThanOrEqualTo(11, $"{style} {play} in {tonic}, level {level}: {string.Join(' ', frets)}");
                frets.Max().ShouldBeLessThanOrEqualTo(level < 5 ? 14 : 16, $"{style} {play} in {tonic}, level {level}: {string.Join(' ', frets)}");
            }
        }
    }

    [Theory]
    [InlineData("bass-4", "together")]
    [InlineData("bass-4", "broken")]
    [InlineData("bass-4", "ringing")]
    [InlineData("bass-5", "broken")]
    [InlineData("bass-6", "broken")]
    public void Tenths_keep_their_shape_and_fingers_however_they_are_played(string instrument, string play)
    {
        // Common practice on strings in fourths: a tenth lies three strings across, the minor one on one fret (fingers 1 3 or 2 4), the major
        // one a fret further up (1 2 or 2 3).
        foreach (var tonic in Tonics)
        {
            var lesson = CycleIn(tonic, instrument, 3);
            var notes = Fingered(lesson, "tenths", ("play", play)).Line.Notes;
            for (var i = 0; i + 1 < notes.Length; i++)
            {
                var tones = play == "together" ? notes[i].Tones : [notes[i].Tones[0], notes[i + 1].Tones[0]];
                if (tones[1].Degree!.Value.Number != 10 || tones[0].Degree != Degree.Root) continue;
                var (root, tenth) = (tones[0].Position!.Value, tones[1].Position!.Value);
                if (root.Fret == 0) continue;
                (root.String - tenth.String).ShouldBe(3, $"{tones[0].Pitch} in {tonic}");
                var isMinor = tones[1].Degree!.Value.Alteration < 0;
                (tenth.Fret - root.Fret).ShouldBe(isMinor ? 0 : 1);
                $"{tones[0].Finger} {tones[1].Finger}".ShouldBeOneOf(isMinor ? ["1 3", "2 4"] : ["1 2", "2 3"]);
            }
        }
    }

    [Fact]
    public void A_broken_shape_is_one_position_of_the_hand()
    {
        // Seven changes of chord: the hand moves with them and not between the tones of one.
        Fingered(CycleIn("C", "bass-4", 3), "tenths", ("play", "broken")).Summary!.Shifts.ShouldBe(7);
        Fingered(CycleIn("C", "bass-4", 3), "shells", ("play", "ringing"), ("shape", "root-seventh-tenth")).Summary!.Shifts.ShouldBe(7);
    }

    [Theory]
    [InlineData("bass-6")]
    [InlineData("guitar-6")]
    [InlineData("guitar-7")]
    public void More_strings_let_tenths_stay_nearer(string instrument)
    {
        // Common practice: with a string above, roots on two or three strings take turns, and the hand stays within five frets.
        foreach (var tonic in Tonics)
        {
            var frets = Fingered(CycleIn(tonic, instrument, 3), "tenths").Line.Notes.Select(LowestFret).Where(f => f > 0).ToList();
            (frets.Max() - frets.Min()).ShouldBeLessThanOrEqualTo(6, $"in {tonic}: {string.Join(' ', frets)}");
        }
    }

    [Theory]
    [InlineData("ukulele")]
    [InlineData("mandolin")]
    [InlineData("tenor-banjo")]
    public void No_shape_needs_more_than_six_frets_of_the_hand_on_a_short_neck(string instrument)
    {
        foreach (var tonic in Tonics)
        {
            foreach (var note in Fingered(CycleIn(tonic, instrument, 3), "tenths").Line.Notes)
            {
                var frets = note.Tones.Select(t => t.Position!.Value.Fret).Where(f => f > 0).ToList();
                if (frets.Count > 1) (frets.Max() - frets.Min()).ShouldBeLessThanOrEqualTo(5, $"in {tonic}: {string.Join(' ', frets)}");
            }
        }
    }

    [Theory]
    [InlineData("shells", "R+5+8 R+5+8")]
    [InlineData("tenths", "R+5 R+5")]
    public void A_chord_of_root_and_fifth_is_held_as_it_is(string style, string degrees)
    {
        // Common practice: a chord without a third is played as root, fifth and octave; no tone is struck twice at once.
        var lesson = LessonMaker.Lesson("A5 | D5 | A5", "A minor", level: 3);
        LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, style)).Split(" | ")[..2].ShouldAllBe(bar => bar == degrees);
    }

    [Theory]
    [InlineData("root-fifth-octave-seventh", "A5", "R 5 8 5 R 5 8 5")]
    [InlineData("root-fifth-octave-seventh", "Am", "R 5 8 5 R 5 8 5")]
    [InlineData("root-fifth-octave-seventh", "A6", "R 5 8 6 R 5 8 6")]
    [InlineData("root-fifth-octave-seventh", "A7", "R 5 8 b7 R 5 8 b7")]
    [InlineData("broken-arpeggio", "A5", "R 8 5 8 R 8 5 8")]
    [InlineData("triads-inside", "A5", "R 5 8 5 R 5 8 5")]
    public void A_cell_does_not_strike_a_tone_again_for_one_that_the_chord_lacks(string style, string chord, string degrees)
    {
        // Common practice: where there is no seventh, the octave falls back to the fifth; a sixth chord has its sixth.
        var lesson = LessonMaker.Lesson($"{chord} | D", "A major", level: 3);
        LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, style)).Split(" | ")[0].ShouldBe(degrees);
    }

    [Fact]
    public void An_approach_to_a_chord_of_root_and_fifth_repeats_nothing()
    {
        foreach (var approach in (string[])["chromatic-below", "chromatic-above", "enclosure", "double-chromatic-below", "dominant"])
        {
            var lesson = LessonMaker.Lesson("A5 | D5 | G5 | C5 | F5 | A5", "A minor", level: 3);
            var notes = LessonMaker.Generate(lesson, "approaches", ("approach", approach)).Notes;
            for (var i = 1; i < notes.Length; i++) notes[i].Tones[0].Pitch.ShouldNotBe(notes[i - 1].Tones[0].Pitch, $"{approach}, note {i}");
        }
    }

    [Fact]
    public void A_cell_that_the_teacher_repeats_is_repeated() =>
        LessonMaker.Degrees(LessonMaker.Lesson("C5 | G5"), LessonMaker.Generate(LessonMaker.Lesson("C5 | G5"), "tone-cell", ("tones", "R R 5 5"))).ShouldStartWith("R R 5 5 R R 5 5");
}

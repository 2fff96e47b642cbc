using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class NeckKnowledgeTests
{
    private const string Round = "Cm7 | Fm7 | Bb7 | Ebmaj7 | Abmaj7 | Dm7b5 | G7 | Cm7";

    private static List<List<LineNote>> Bars(Lesson lesson, Line line) =>
        [.. lesson.Progression.Chords.Select(c => line.Notes.Where(n => n.Start >= c.Start && n.Start < c.End).ToList())];

    [Theory]
    [InlineData("bass-4", 1)]
    [InlineData("bass-4", 3)]
    [InlineData("bass-5", 3)]
    [InlineData("guitar-6", 3)]
    public void String_skipping_stays_in_one_place_per_chord_and_near_the_last_one(string instrument, int level)
    {
        var lesson = LessonMaker.Lesson(Round, instrument: instrument, level: level);
        var last = -1;
        foreach (var bar in Bars(lesson, LessonMaker.Generate(lesson, "string-skipping")))
        {
            // Common practice: what lies in one place is within eight frets, the four of the hand and two to either side for a turn of it.
            var frets = bar.Select(n => n.Tones[0].Position!.Value.Fret).Where(f => f > 0).ToList();
            (frets.Max() - frets.Min()).ShouldBeLessThanOrEqualTo(7, string.Join(' ', frets));
            if (last >= 0) Math.Abs(frets.Min() - last).ShouldBeLessThanOrEqualTo(5);
            last = frets.Min();
        }
    }

    [Fact]
    public void String_skipping_skips_one_string_from_every_tone_to_its_octave()
    {
        foreach (var level in (int[])[1, 3, 5])
        {
            var lesson = LessonMaker.Lesson(Round, level: level);
            foreach (var bar in Bars(lesson, LessonMaker.Generate(lesson, "string-skipping")).SkipLast(1))
            {
                for (var i = 0; i + 1 < bar.Count; i += 2)
                {
                    var (low, high) = (bar[i].Tones[0], bar[i + 1].Tones[0]);
                    (high.Pitch.MidiNumber - low.Pitch.MidiNumber).ShouldBe(12);
                    // The octave on strings in fourths: two strings across, two frets up.
                    (low.Position!.Value.String - high.Position!.Value.String).ShouldBe(2);
                    (high.Position!.Value.Fret - low.Position!.Value.Fret).ShouldBe(2);
                }
            }
        }
    }

    [Theory]
    [InlineData(1, 5)]
    [InlineData(2, 7)]
    [InlineData(3, 9)]
    [InlineData(4, 12)]
    [InlineData(5, 24)]
    public void A_note_is_found_in_each_of_its_places_once_in_order_up_the_neck(int level, int limit)
    {
        var lesson = LessonMaker.Lesson(Round, level: level);
        var bass = lesson.Instrument;
        foreach (var (bar, chord) in Bars(lesson, LessonMaker.Generate(lesson, "find-the-note")).Zip(lesson.Progression.Chords))
        {
            var places = bar.Select(n => n.Tones[0].Position!.Value).ToList();
            var all = from fret in Enumerable.Range(0, limit + 1)
                      from number in Enumerable.Range(1, 4)
                      where bass.MidiNumberAt(number, fret) % 12 == chord.Chord!.Root.PitchClass
                      orderby fret, number descending
                      select new FretPosition(number, fret);
            // A bar has room for eight: the rest of the highest places waits for a longer chord.
            places.ShouldBe(all.Take(8));
            // Up to the end of the chord: nothing is played twice to fill the bar.
            bar[^1].End.ShouldBe(chord.End);
        }
    }

    [Fact]
    public void Looking_for_another_tone_the_line_still_ends_on_the_root()
    {
        var lesson = LessonMaker.Lesson("Cm7 | Fm7", level: 3);
        var line = LessonMaker.Generate(lesson, "find-the-note", ("tone", "5"));
        LessonMaker.Degrees(lesson, line).Split(" | ")[0].Split(' ').ShouldAllBe(d => d == "5");
        line.Notes[^1].Tones[0].Degree.ShouldBe(Degree.Root);
    }

    [Fact]
    public void A_chromatic_warm_up_has_one_finger_a_fret_in_every_position()
    {
        // Common practice; up to level 3 only where four frets are within the stretch of the level.
        foreach (var instrument in (string[])["bass-4", "bass-6", "guitar-6", "ukulele", "mandolin"])
        {
            foreach (var (level, position) in ((int, int?)[])[(1, null), (3, null), (5, null), (3, 1), (3, 9)])
            {
                var lesson = LessonMaker.Lesson("Cmaj7 | Cmaj7 | Cmaj7", "C major", instrument, level);
                var neck = new NeckRequest { Position = position };
                var (line, _) = LessonMaker.Generate(lesson, LessonMaker.Request("chromatic-warm-up") with { Neck = neck });
                var result = LineFingering.Apply(line, lesson.Instrument, neck, level, []);
                result.FailedNote.ShouldBe(-1, result.Reason);
                var notes = result.Line.Notes.Select(n => n.Tones[0]).ToList();
                foreach (var four in notes.Chunk(4).Where(c => c.Length == 4))
                {
                    string.Concat(four.Select(t => t.Finger)).ShouldBeOneOf("1234", "4321");
                    four.Select(t => t.Position!.Value.Fret - t.Finger!.Value).Distinct().Count().ShouldBe(1);
                    four.Select(t => t.Position!.Value.String).Distinct().Count().ShouldBe(1);
                }
                if (position is { } at) notes[0].Position!.Value.Fret.ShouldBe(at);
                if (position is null) result.Summary!.WidestStretch.ShouldBeLessThanOrEqualTo(HandModel.WidestSpan(level));
            }
        }
    }

    [Theory]
    [InlineData("F major", "Fmaj7", "1234", "A1 Bb1 B1 C2 D2 D#2 E2 F2")]
    [InlineData("F major", "Fmaj7", "4321", "C2 B1 Bb1 A1 F2 E2 Eb2 D2")]
    [InlineData("G major", "Gmaj7", "1234", "A1 A#1 B1 C2 D2 D#2 E2 F2")]
    [InlineData("G major", "Gmaj7", "4321", "C2 B1 Bb1 A1 F2 E2 Eb2 D2")]
    [InlineData("Eb major", "Ebmaj7", "1234", "A1 Bb1 B1 C2 D2 Eb2 E2 F2")]
    [InlineData("E major", "Emaj7", "4321", "C2 B1 Bb1 A1 F2 E2 D#2 D2")]
    public void Chromatic_notes_are_sharps_upward_and_flats_downward_but_as_in_the_key(string key, string chord, string fingers, string expected)
    {
        // Common practice of spelling chromatic scales: raised going up, lowered going down; the notes of the key keep their names.
        var lesson = LessonMaker.Lesson($"{chord} | {chord}", key, level: 1);
        var request = LessonMaker.Request("chromatic-warm-up", ("fingers", fingers)) with { Neck = new NeckRequest { Position = 5, Strings = [4, 3] } };
        var tones = LessonMaker.Generate(lesson, request).Line.Notes.Select(n => n.Tones[0]).ToList();
        string.Join(' ', tones.Select(t => t.Pitch)).ShouldBe(expected);
        // The degree agrees with the spelling: it counts the letters from the root.
        var root = lesson.Progression.Chords[0].Chord!.Root;
        foreach (var tone in tones) tone.Degree!.Value.Simple.Number.ShouldBe(NoteMath.Modulo((int)tone.Pitch.Name.Letter - (int)root.Letter, 7) + 1, $"{tone.Pitch} {tone.Degree}");
    }
}

using CsCheck;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

/// <summary>How figures fill the room that a chord has. The rules are common practice: a figure is not broken off in the middle of its way.</summary>
public class FiguresTests
{
    private static readonly CellTone[] Seventh = [.. new[] { "R", "3", "5", "7" }.Select(d => CellTone.Of(Degree.Parse(d)))];

    [Theory]
    [InlineData(3, "R 3 5")]
    [InlineData(4, "R 3 5 7")]
    [InlineData(5, "R 3 5 7 5")]
    [InlineData(6, "R 3 5 7 5 3")]
    [InlineData(7, "R 3 5 7 5 3 R")]
    [InlineData(8, "R 3 5 7 R 3 5 7")]
    [InlineData(10, "R 3 5 7 R 3 5 7 5 3")]
    public void What_is_left_over_turns_back(int room, string expected) =>
        string.Join(' ', Figures.TurningBack(Seventh, room).Select(t => t.Degree)).ShouldBe(expected);

    [Theory]
    [InlineData(3, "0 1 2")]
    [InlineData(4, "0 1 2 1")]
    [InlineData(6, "0 1 2 3 2 1")]
    [InlineData(7, "0 1 2 3 2 1 0")]
    [InlineData(8, "0 1 2 3 4 3 2 1")]
    [InlineData(10, "0 1 2 3 4 5 4 3 2 1")]
    [InlineData(12, "0 1 2 3 4 3 2 1 0 1 2 1")]
    public void Up_and_back_ends_a_step_above_the_start_or_on_it(int room, string expected) =>
        string.Join(' ', Figures.UpAndBack(i => CellTone.Of(new Degree(i + 1)), 4, room).Select(t => t.Degree!.Value.Number - 1)).ShouldBe(expected);

    [Fact]
    public void The_room_is_filled_without_leaps() => Gen.Select(Gen.Int[1, 15], Gen.Int[1, 64]).Sample((top, room) =>
    {
        var indexes = Figures.UpAndBack(i => CellTone.Of(new Degree(i + 1)), top, room).Select(t => t.Degree!.Value.Number - 1).ToArray();
        indexes.Length.ShouldBe(room);
        indexes[0].ShouldBe(0);
        for (var i = 1; i < room; i++) Math.Abs(indexes[i] - indexes[i - 1]).ShouldBe(1);
    });

    [Theory]
    [InlineData("up", "R 3 5 7 R 3 5 7")]
    [InlineData("down", "7 5 3 R 7 5 3 R")]
    [InlineData("both", "R 3 5 7 8 7 5 3")]
    public void An_arpeggio_of_eight_notes_comes_out_even(string direction, string expected)
    {
        var lesson = LessonMaker.Lesson("Cmaj7 | Cmaj7", key: "C major", level: 3);
        LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, "arpeggio", ("direction", direction))).Split(" | ")[0].ShouldBe(expected);
    }

    [Fact]
    public void Scales_that_fill_a_chord_one_way_take_turns()
    {
        var lesson = LessonMaker.Lesson("Cmaj7 | Dm7 | Cmaj7", key: "C major", level: 3);
        LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, "scale-run")).Split(" | ")[..2].ShouldBe(["R 2 3 4 5 6 7 8", "8 b7 6 5 4 b3 2 R"]);
    }

    [Fact]
    public void Extensions_keep_their_upper_tones_where_room_is_short()
    {
        var lesson = LessonMaker.Lesson("Dm7 | G7 | Cmaj7", key: "C major", level: 1, meter: new(3, 4));
        LessonMaker.Degrees(lesson, LessonMaker.Generate(lesson, "extensions")).Split(" | ")[..2].ShouldBe(["5 b7 9", "5 b7 9"]);
    }

    [Fact]
    public void Arpeggios_from_the_nearest_tone_stay_in_place()
    {
        // Common practice: in a cycle of fourths each chord is near the last one in another inversion.
        var lesson = LessonMaker.Lesson("Dm7 | G7 | Cmaj7 | Fmaj7 | Bm7b5 | Em7 | Am7 | Dm7", key: "C major", level: 3);
        var line = LessonMaker.Generate(lesson, "arpeggio", ("start", "nearest"));
        var starts = line.Notes.Where(n => n.Start.IsMultipleOf(4)).Select(n => n.Tones[0].Pitch.MidiNumber).ToArray();
        for (var i = 1; i < starts.Length; i++) Math.Abs(starts[i] - starts[i - 1]).ShouldBeLessThanOrEqualTo(4);
    }
}

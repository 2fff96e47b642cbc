using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

/// <summary>What the styles about the neck promise.</summary>
public class NeckStyleTests
{
    // Common practice, on strings tuned in fourths: strings up and frets up from the root.
    [Theory]
    [InlineData("4", "C7sus4", 1, 0)]
    [InlineData("5", "Cm7", 1, 2)]
    [InlineData("5", "Cm7b5", 1, 1)]
    [InlineData("8", "Cm7", 2, 2)]
    [InlineData("7", "Cm7", 2, 0)]
    [InlineData("7", "Cmaj7", 2, 1)]
    [InlineData("3", "Cmaj7", 1, -1)]
    [InlineData("3", "Cm7", 1, -2)]
    public void Intervals_take_their_shapes(string interval, string chord, int strings, int frets)
    {
        foreach (var instrument in (string[])["bass-4", "bass-5", "bass-6"])
        {
            var line = Line($"style: interval-shapes\n    intervals: {interval}", chord + " | " + chord, instrument);
            var (root, other) = (line.Notes[0].Tones[0].Position!.Value, line.Notes[1].Tones[0].Position!.Value);
            (root.String - other.String, other.Fret - root.Fret).ShouldBe((strings, frets), $"{interval} of {chord} on {instrument}");
        }
    }

    // Common practice: the minor tenth three strings up at the same fret, the major tenth a fret further.
    [Theory]
    [InlineData("Gm7", 0)]
    [InlineData("Gmaj7", 1)]
    public void Tenths_take_their_shapes(string chord, int frets)
    {
        var line = Line("style: interval-shapes\n    intervals: 10", chord + " | " + chord, "bass-4");
        var (root, other) = (line.Notes[0].Tones[0].Position!.Value, line.Notes[1].Tones[0].Position!.Value);
        (root.String - other.String, other.Fret - root.Fret).ShouldBe((3, frets));
    }

    [Fact]
    public void Skipping_strings_skips_one_each_time_and_meets_the_octave_without_leaving_the_position()
    {
        var line = Line("style: string-skipping\n    rhythm: eighths", "Cmaj7 | Am7 | Dm7 | G7 | Cmaj7", "bass-4");
        for (var i = 0; i + 1 < line.Notes.Length - 1; i += 2)
        {
            var (low, high) = (line.Notes[i].Tones[0], line.Notes[i + 1].Tones[0]);
            (high.Pitch.MidiNumber - low.Pitch.MidiNumber, low.Position!.Value.String - high.Position!.Value.String).ShouldBe((12, 2));
            Math.Max(low.Position.Value.Fret, high.Position.Value.Fret).ShouldBeLessThanOrEqualTo(7);
        }
    }

    // Common practice: octave and tenth are counted on, the seventh above the octave is a seventh.
    [Fact]
    public void Octaves_over_skipped_strings_are_counted_no_further_than_the_thirteenth()
    {
        var degrees = Line("style: string-skipping\n    rhythm: eighths", "Fm7 | Fm7", "bass-4").Notes.Take(8).Select(n => n.Tones[0].Degree!.Value.ToString());
        string.Join(' ', degrees).ShouldBe("R 8 b3 b10 5 12 b7 b7");
    }

    [Theory]
    [InlineData("arpeggio", "bass-4")]
    [InlineData("scale", "bass-4")]
    [InlineData("arpeggio", "bass-6")]
    [InlineData("arpeggio", "guitar-6")]
    [InlineData("scale", "mandolin")]
    public void The_second_position_has_the_very_same_notes_elsewhere(string of, string instrument)
    {
        var line = Line($"style: two-positions\n    of: {of}\n    rhythm: eighths", "Cm7 | Fm7 | Abmaj7 | Cm7", instrument);
        for (var bar = 0; bar < 3; bar++)
        {
            var notes = line.Notes.Skip(bar * 8).Take(8).Select(n => n.Tones[0]).ToArray();
            notes[..4].Select(t => t.Pitch).ShouldBe(notes[4..].Select(t => t.Pitch));
            for (var i = 0; i < 4; i++) notes[4 + i].Position!.Value.Fret.ShouldBeGreaterThan(notes[i].Position!.Value.Fret);
        }
    }

    // A rhythm that goes across a change of chord has a note of the new chord before its beat; the note held before it ends there.
    [Theory]
    [InlineData("e e q. e", "Dm7 G7 | C")]
    [InlineData("e e q. e", "C | G7")]
    public void A_note_that_is_held_ends_where_the_next_begins(string rhythm, string progression)
    {
        var line = Line($"style: find-the-note\n    meter: 6/8\n    rhythm: {rhythm}", progression, "bass-4");
        foreach (var (before, after) in line.Notes.Zip(line.Notes.Skip(1))) before.End.ShouldBeLessThanOrEqualTo(after.Start);
        line.Notes[^1].Duration.ShouldBeGreaterThan(Fraction.Zero);
    }

    [Fact]
    public void A_note_is_found_in_every_place_up_to_the_twelfth_fret()
    {
        var line = Line("style: find-the-note\n    rhythm: eighths", "C | G", "bass-4");
        // From the notes of a neck in fourths: C on the four strings up to fret 12.
        line.Notes.Where(n => n.Start < 4).Select(n => n.Tones[0].Position!.Value).Distinct().Order(Comparer<FretPosition>.Create((a, b) => a.String - b.String))
            .ShouldBe([new FretPosition(1, 5), new FretPosition(2, 10), new FretPosition(3, 3), new FretPosition(4, 8)]);
    }

    // On a staff alone the player would not know the place.
    [Theory]
    [InlineData("style: two-positions", true)]
    [InlineData("style: roots", false)]
    [InlineData("style: two-positions\n    show: nothing", false)]
    [InlineData("style: roots\n    show: strings", true)]
    public void Exercises_about_places_on_the_neck_show_strings_on_a_staff_alone(string exercise, bool shown)
    {
        StringNumbers.Of(Build(exercise + "\n    layout: staff", "Cm7 | Fm7", "bass-4").Score).Count.ShouldBe(shown ? StringChanges(exercise) : 0);
        StringNumbers.Of(Build(exercise, "Cm7 | Fm7", "bass-4").Score).ShouldBeEmpty();
    }

    private static int StringChanges(string exercise)
    {
        int[] strings = [.. Build(exercise, "Cm7 | Fm7", "bass-4").Line.Notes.Select(n => n.Tones[0].Position!.Value.String)];
        return 1 + strings.Zip(strings.Skip(1)).Count(p => p.First != p.Second);
    }

    private static Line Line(string exercise, string progression, string instrument) => Build(exercise, progression, instrument).Line;

    private static BuiltExercise Build(string exercise, string progression, string instrument)
    {
        var text = $"title: Neck\nkey: C minor\ninstrument: {instrument}\nlevel: 4\nprogression: {progression}\nexercises:\n  - {exercise}\n";
        var bag = new DiagnosticBag(new SourceText("neck.yaml", text));
        var lesson = LessonReader.Read(bag.Source, bag).ShouldNotBeNull(string.Join('\n', bag.Items.Select(d => d.Message)));
        var built = LessonBuilder.Build(lesson, bag);
        bag.HasErrors.ShouldBeFalse(string.Join('\n', bag.Items.Select(d => d.Message)));
        return built.Exercises[0];
    }
}

using NAudio.Midi;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests;

/// <summary>Count-in, click and chords beside the part (General MIDI level 1: channel 10 percussion, 76 and 77 wood blocks).</summary>
public class PlayAlongTests
{
    private static readonly MidiOptions Everything = new() { CountIn = true, Click = true, Chords = true };

    [Fact]
    public void A_bar_is_counted_in_and_the_click_goes_on()
    {
        var file = MidiScores.Read(MidiScores.Build([MidiScores.Measure()], MidiScores.Note(0, 4, "A1")), Everything);
        file.Starts().ShouldBe([4 * 960]);
        var click = file.TrackNamed("Click");
        file.Starts(click).ShouldBe([0, 960, 1920, 2880, 3840, 4800, 5760, 6720]);
        file.Notes(click).Select(n => n.Key).ShouldBe([76, 77, 77, 77, 76, 77, 77, 77]);
        file.Events[click].OfType<NoteOnEvent>().ShouldAllBe(e => e.Channel == 10);
    }

    [Fact]
    public void The_count_in_of_a_pickup_goes_on_up_to_it()
    {
        var score = MidiScores.Build([MidiScores.Measure(length: 1), MidiScores.Measure()], MidiScores.Note(0, 1, "E1"), MidiScores.Note(1, 4, "A1"));
        var counted = MidiScores.Read(score, new MidiOptions { CountIn = true });
        counted.Starts(counted.TrackNamed("Click")).ShouldBe([0, 960, 1920, 2880, 3840, 4800, 5760]);
        counted.Starts().ShouldBe([7 * 960, 8 * 960]);
        // Without a count-in the pickup still ends at a bar line.
        MidiScores.Read(score).Starts().ShouldBe([3 * 960, 4 * 960]);
    }

    [Theory]
    [InlineData(6, 8, new long[] { 0, 1440 })]
    [InlineData(7, 8, new long[] { 0, 960, 1920 })]
    [InlineData(3, 8, new long[] { 0, 480, 960 })]
    [InlineData(3, 4, new long[] { 0, 960, 1920 })]
    [InlineData(2, 2, new long[] { 0, 1920 })]
    [InlineData(5, 4, new long[] { 0, 960, 1920, 2880, 3840 })]
    public void The_click_marks_the_felt_beats(int beats, int unit, long[] expected)
    {
        var meter = new Meter(beats, unit);
        var file = MidiScores.Read(MidiScores.Build([MidiScores.Measure(meter)]), new MidiOptions { Click = true });
        file.Starts(file.TrackNamed("Click")).ShouldBe(expected);
    }

    [Fact]
    public void Chords_are_held_until_the_next_and_stop_for_no_chord()
    {
        var frame = new[]
        {
            MidiScores.Measure() with { Harmonies = [new HarmonyMark(0, Chord.Parse("Cm7")), new HarmonyMark(2, Chord.Parse("F7"))] },
            MidiScores.Measure() with { Harmonies = [new HarmonyMark(0, null)] },
        };
        var file = MidiScores.Read(MidiScores.Build(frame, MidiScores.Note(0, 8, "A1")), Everything with { CountIn = false });
        var chords = file.Notes(file.TrackNamed("Chords"));
        chords.Select(n => (n.Start, n.Length)).Distinct().ShouldBe([(0, 1920), (1920, 1920)]);
        // C Eb G Bb and F A C Eb, as pitch classes.
        chords.Where(n => n.Start == 0).Select(n => n.Key % 12).Order().ShouldBe([0, 3, 7, 10]);
        chords.Where(n => n.Start == 1920).Select(n => n.Key % 12).Order().ShouldBe([0, 3, 5, 9]);
        chords.ShouldAllBe(n => n.Key >= 54 && n.Key < 66);
    }

    [Fact]
    public void A_slash_bass_lies_below_and_a_large_chord_drops_its_fifth()
    {
        static List<int> Keys(string chord)
        {
            var file = MidiScores.Read(MidiScores.Build([MidiScores.Measure() with { Harmonies = [new HarmonyMark(0, Chord.Parse(chord))] }]), new MidiOptions { Chords = true });
            return [.. file.Notes(file.TrackNamed("Chords")).Select(n => n.Key).Order()];
        }
        Keys("C7/E")[0].ShouldBe(52);
        Keys("C7/E").Count.ShouldBe(5);
        var tones = Keys("C13").Select(k => k % 12).ToList();
        tones.ShouldNotContain(7);
        tones.Count.ShouldBeLessThanOrEqualTo(5);
        tones.ShouldContain(0);
        tones.ShouldContain(10);
    }

    [Fact]
    public void The_part_can_be_left_out()
    {
        var file = MidiScores.Read(MidiScores.Build([MidiScores.Measure()], MidiScores.Note(0, 4, "A1")), Everything with { Part = false });
        file.TrackNamed("4-string bass").ShouldBe(-1);
        file.TrackNamed("Chords").ShouldBe(1);
    }

    [Fact]
    public void A_lesson_plays_its_exercises_one_after_another_with_a_bar_between()
    {
        var first = MidiScores.Build([MidiScores.Measure()], MidiScores.Note(0, 4, "A1")) with { Title = "Roots ♭" };
        var second = MidiScores.Build([MidiScores.Measure(new Meter(3, 4))], MidiScores.Note(0, 3, "E1")) with { Title = "Fifths", Tempo = new Tempo(60, new NoteValue(NoteBase.Quarter)) };
        var stream = new MemoryStream();
        MidiWriter.WriteLesson([first, second], "Lesson", MidiOptions.Default, stream);
        var file = MidiScores.Read(stream.ToArray());
        file.Starts().ShouldBe([0, 8 * 960]);
        file.Events[0].OfType<TempoEvent>().Select(e => (e.AbsoluteTime, e.MicrosecondsPerQuarterNote)).ShouldBe([(0, 500_000), (8 * 960, 1_000_000)]);
        file.Events[0].OfType<TimeSignatureEvent>().Select(e => (e.AbsoluteTime, e.Numerator)).ShouldBe([(0, 4), (8 * 960, 3)]);
        file.Events[0].OfType<TextEvent>().Where(e => e.MetaEventType == MetaEventType.Marker).Select(e => e.Text).ShouldBe(["Roots b", "Fifths"]);
        file.TrackNamed("Lesson").ShouldBe(0);
        Should.Throw<ArgumentException>(() => MidiWriter.WriteLesson([], "Lesson", MidiOptions.Default, stream));
    }
}

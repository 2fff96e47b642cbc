using NAudio.Midi;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests;

/// <summary>The files read back with an independent library; numbers are those of MIDI 1.0, SMF 1.0 and General MIDI level 1.</summary>
public class MidiWriterTests
{
    private static readonly Fraction Half = new(1, 2);
    private static readonly Fraction Third = new(1, 3);

    [Fact]
    public void The_file_is_of_format_1_with_960_ticks_and_a_conductor_track()
    {
        var bytes = MidiScores.Bytes(MidiScores.Build([MidiScores.Measure()], MidiScores.Note(0, 4, "A1")));
        bytes[..14].ShouldBe("MThd"u8.ToArray().Concat(new byte[] { 0, 0, 0, 6, 0, 1, 0, 2, 3, 192 }));
        var file = MidiScores.Read(bytes);
        (file.FileFormat, file.DeltaTicksPerQuarterNote, file.Tracks).ShouldBe((1, 960, 2));
        file.TrackNamed("Test").ShouldBe(0);
        file.TrackNamed("4-string bass").ShouldBe(1);
    }

    [Fact]
    public void Tempo_meter_and_key_are_stated_and_change()
    {
        var score = MidiScores.Build(
            [MidiScores.Measure(), MidiScores.Measure(new Meter(6, 8)), MidiScores.Measure(new Meter(6, 8), key: "A major")],
            MidiScores.Note(0, 4, "A1"));
        var file = MidiScores.Read(score);
        // 120 quarters a minute are 500,000 microseconds each.
        file.Events[0].OfType<TempoEvent>().ShouldHaveSingleItem().MicrosecondsPerQuarterNote.ShouldBe(500_000);
        // The denominator is a power of two; a dotted quarter is 36 MIDI clocks.
        file.Events[0].OfType<TimeSignatureEvent>().Select(e => (e.AbsoluteTime, e.Numerator, e.Denominator, e.TicksInMetronomeClick, e.No32ndNotesInQuarterNote))
            .ShouldBe([(0, 4, 2, 24, 8), (4 * 960, 6, 3, 36, 8)]);
        file.Events[0].OfType<KeySignatureEvent>().Select(e => (e.AbsoluteTime, e.SharpsFlats, e.MajorMinor)).ShouldBe([(0, -3, 1), (7 * 960, 3, 0)]);
    }

    [Fact]
    public void The_tempo_counts_its_own_beat_and_follows_the_factor()
    {
        var score = MidiScores.Build([MidiScores.Measure(new Meter(6, 8))], MidiScores.Note(0, 3, "A1")) with { Tempo = new Tempo(80, new NoteValue(NoteBase.Quarter, 1)) };
        static int Tempo(MidiFile file) => file.Events[0].OfType<TempoEvent>().Single().MicrosecondsPerQuarterNote;
        Tempo(MidiScores.Read(score)).ShouldBe(500_000);
        Tempo(MidiScores.Read(score, new MidiOptions { TempoFactor = 0.5 })).ShouldBe(1_000_000);
        Should.Throw<ArgumentOutOfRangeException>(() => MidiScores.Bytes(score, new MidiOptions { TempoFactor = 0 }));
        Should.Throw<ArgumentOutOfRangeException>(() => MidiScores.Bytes(score, new MidiOptions { TempoFactor = double.NaN }));
    }

    [Fact]
    public void Notes_sound_at_pitch_with_ties_merged()
    {
        // E1 is MIDI 28 although it is written an octave higher.
        var file = MidiScores.Read(MidiScores.Build([MidiScores.Measure(), MidiScores.Measure()], MidiScores.Note(0, 3, "E1"), MidiScores.Note(3, 3, "A1"), MidiScores.Note(6, 2, "G2")));
        file.Notes().Select(n => (n.Start, n.Key)).ShouldBe([(0, 28), (3 * 960, 33), (6 * 960, 43)]);
        file.Notes()[1].Length.ShouldBe(3 * 960 * 15 / 16);
        file.Events[1].OfType<PatchChangeEvent>().ShouldHaveSingleItem().Patch.ShouldBe(33);
    }

    [Fact]
    public void Times_that_no_tick_divides_are_rounded_where_they_stand()
    {
        var seventh = new Fraction(1, 7);
        var notes = Enumerable.Range(0, 28).Select(i => MidiScores.Note(seventh * i, seventh, "A1")).ToArray();
        MidiScores.Read(MidiScores.Build([MidiScores.Measure()], notes)).Starts().ShouldBe(Enumerable.Range(0, 28).Select(i => (long)Math.Round(i * 960 / 7.0)));
    }

    [Fact]
    public void Repeats_and_endings_are_played_out()
    {
        var score = MidiScores.Build(
            [
                MidiScores.Measure(),
                MidiScores.Measure() with { EndingStart = [1], EndingStop = true, RepeatEndTimes = 2 },
                MidiScores.Measure() with { EndingStart = [2], EndingStop = true },
            ],
            MidiScores.Note(0, 4, "E1"), MidiScores.Note(4, 4, "A1"), MidiScores.Note(8, 4, "D2"));
        MidiScores.Read(score).Notes().Select(n => (n.Start / 960, n.Key)).ShouldBe([(0, 28), (4, 33), (8, 28), (12, 38)]);
    }

    [Fact]
    public void A_tie_into_a_repeated_bar_sounds_once_and_is_struck_again_where_nothing_leads_into_it()
    {
        // A1 is tied over the bar line into the repeated bar; the second time round it is struck.
        var score = MidiScores.Build(
            [MidiScores.Measure(), MidiScores.Measure() with { RepeatStart = true, RepeatEndTimes = 2 }],
            MidiScores.Note(2, 4, "A1"), MidiScores.Note(6, 2, "E1"));
        MidiScores.Read(score).Notes().Select(n => (n.Start / 960, n.Key)).ShouldBe([(2, 33), (6, 28), (8, 33), (10, 28)]);
    }

    [Fact]
    public void Swung_eighths_are_played_two_to_one_and_triplets_as_written()
    {
        var score = MidiScores.Build(
            Feel.SwingEighths,
            [MidiScores.Measure()],
            MidiScores.Note(0, Half, "A1"), MidiScores.Note(Half, Half, "A1"),
            MidiScores.Note(1, Third, "A1"), MidiScores.Note(1 + Third, Third, "A1"), MidiScores.Note(1 + (Third * 2), Third, "A1"),
            MidiScores.Note(2, Half, "A1"), MidiScores.Note(new Fraction(5, 2), 1, "A1"), MidiScores.Note(new Fraction(7, 2), Half, "A1"));
        var notes = MidiScores.Read(score).Notes();
        notes.Select(n => n.Start).ShouldBe([0, 640, 960, 1280, 1600, 1920, 1920 + 640, 2880 + 640]);
        // From the swung off-beat to the next one is a full quarter note; gaps are a sixteenth of a note's length.
        notes[6].Length.ShouldBe(960 * 15 / 16);
        notes[0].Length.ShouldBe(640 * 15 / 16);
    }

    [Fact]
    public void A_swung_pickup_keeps_its_place_in_the_bar()
    {
        var score = MidiScores.Build(
            Feel.SwingEighths,
            [MidiScores.Measure(length: new Fraction(3, 2)), MidiScores.Measure()],
            MidiScores.Note(0, Half, "E1"), MidiScores.Note(Half, Half, "E1"), MidiScores.Note(1, Half, "E1"), MidiScores.Note(new Fraction(3, 2), 4, "A1"));
        // The pickup starts on the off-beat of three, in a bar that is silent until then; it comes as late as any other off-beat.
        MidiScores.Read(score).Starts().ShouldBe([1920 + 640, 2880, 2880 + 640, 3840]);
    }

    [Fact]
    public void Sixteenths_swing_within_the_eighth()
    {
        var quarter = new Fraction(1, 4);
        var notes = Enumerable.Range(0, 16).Select(i => MidiScores.Note(quarter * i, quarter, "A1")).ToArray();
        MidiScores.Read(MidiScores.Build(Feel.SwingSixteenths, [MidiScores.Measure()], notes)).Starts().Take(4).ShouldBe([0, 320, 480, 800]);
        // Eighths of a straight feel stay where they are.
        MidiScores.Read(MidiScores.Build(Feel.Straight, [MidiScores.Measure()], notes)).Starts().Take(4).ShouldBe([0, 240, 480, 720]);
    }

    [Fact]
    public void Marks_change_length_and_loudness()
    {
        static LineNote With(int start, Articulations marks = Articulations.None, Notehead head = Notehead.Normal, Connection connection = Connection.None, string pitch = "A1")
        {
            var note = MidiScores.Note(start, 1, pitch);
            return note with { Articulations = marks, Connection = connection, Tones = [note.Tones[0] with { Head = head }] };
        }
        var notes = MidiScores.Read(MidiScores.Build(
            [MidiScores.Measure(), MidiScores.Measure()],
            With(0), With(1, Articulations.Accent), With(2, Articulations.Staccato), With(3, head: Notehead.Ghost),
            With(4, head: Notehead.Dead), With(5, connection: Connection.HammerOn), With(6, pitch: "B1"), With(7, Articulations.Tenuto))).Notes();
        var (plain, accent, staccato, ghost, dead, before, hammered, tenuto) = (notes[0], notes[1], notes[2], notes[3], notes[4], notes[5], notes[6], notes[7]);
        accent.Velocity.ShouldBeGreaterThan(plain.Velocity);
        ghost.Velocity.ShouldBeLessThan(plain.Velocity);
        staccato.Length.ShouldBe(480);
        dead.Length.ShouldBe(120);
        before.Length.ShouldBe(960);
        hammered.Velocity.ShouldBeLessThan(before.Velocity);
        tenuto.Length.ShouldBe(960);
        plain.Length.ShouldBeLessThan(960);
    }

    [Fact]
    public void Dynamics_and_hairpins_shape_the_velocity()
    {
        var frame = new[]
        {
            MidiScores.Measure() with { Directions = [new Direction(0, DirectionKind.Dynamic, "p"), new Direction(1, DirectionKind.CrescendoStart), new Direction(3, DirectionKind.HairpinStop), new Direction(3, DirectionKind.Dynamic, "f")] },
            MidiScores.Measure(),
        };
        var notes = MidiScores.Read(MidiScores.Build(frame, [.. Enumerable.Range(0, 8).Select(i => MidiScores.Note(i, 1, "A1"))])).Notes();
        notes.Select(n => n.Velocity).ShouldBe([49, 49, 72, 96, 96, 96, 96, 96]);
    }

    [Fact]
    public void Two_voices_are_each_as_loud_as_their_own_marks_say()
    {
        var upper = new Line([MidiScores.Note(0, 1, "A2") with { Dynamic = "p", Hairpin = Hairpin.Crescendo }, MidiScores.Note(1, 1, "B2"), MidiScores.Note(2, 2, "C3") with { Dynamic = "f" }], 4);
        var lower = new Line([MidiScores.Note(0, 2, "A1"), MidiScores.Note(2, 2, "E1") with { Dynamic = "ff" }], 4);
        var score = ScoreBuilder.Build(new ScoreHeader { Id = "test", Title = "Test", Instrument = MidiScores.Bass, Tempo = new Tempo(120, new NoteValue(NoteBase.Quarter)) }, [MidiScores.Measure()], upper, lower);
        var notes = MidiScores.Read(score).Notes().ToLookup(n => n.Key < 45);
        notes[false].Select(n => n.Velocity).ShouldBe([49, 72, 96]);
        notes[true].Select(n => n.Velocity).ShouldBe([80, 112]);
    }

    [Fact]
    public void A_bend_moves_the_wheel_and_brings_it_back()
    {
        var score = MidiScores.Build([MidiScores.Measure()], MidiScores.Note(0, 2, "A1") with { BendHalfSteps = 2 }, MidiScores.Note(2, 2, "E1"));
        var file = MidiScores.Read(score);
        var wheel = file.Events[1].OfType<PitchWheelChangeEvent>().ToList();
        // The range is set to 12 half steps, so 2 of them are a sixth of the way up from the middle, 8192.
        file.Events[1].OfType<ControlChangeEvent>().Where(e => (int)e.Controller == 6).ShouldHaveSingleItem().ControllerValue.ShouldBe(12);
        wheel.Max(e => e.Pitch).ShouldBe(8192 + (int)Math.Round(8192 / 6.0));
        wheel[^1].Pitch.ShouldBe(8192);
        wheel[^1].AbsoluteTime.ShouldBeLessThanOrEqualTo(1920);
    }

    [Fact]
    public void A_fermata_halves_the_tempo_for_its_note()
    {
        var score = MidiScores.Build([MidiScores.Measure()], MidiScores.Note(0, 3, "A1"), MidiScores.Note(3, 1, "E1") with { Articulations = Articulations.Fermata });
        MidiScores.Read(score).Events[0].OfType<TempoEvent>().Select(e => (e.AbsoluteTime, e.MicrosecondsPerQuarterNote)).ShouldBe([(0, 500_000), (2880, 1_000_000), (3840, 500_000)]);
    }

    // SMF 1.0: FF 51 03 and 60,000,000 / (quarter notes a minute) microseconds in three bytes, most significant first.
    [Fact]
    public void A_new_tempo_is_set_where_it_stands_and_taken_back_by_a_repeat()
    {
        var score = MidiScores.Build(
            [
                MidiScores.Measure(),
                MidiScores.Measure() with { RepeatEndTimes = 2, Directions = [Direction.OfTempo(2, new Tempo(90, new NoteValue(NoteBase.Quarter, 1)))] },
                MidiScores.Measure() with { Directions = [Direction.OfTempo(0, new Tempo(75, new NoteValue(NoteBase.Half)))] },
            ],
            MidiScores.Note(0, 4, "E1"), MidiScores.Note(4, 4, "A1"), MidiScores.Note(8, 4, "D2") with { Articulations = Articulations.Fermata });
        // 120, 90 dotted quarters = 135, 75 halves = 150, and half of that under the fermata.
        MidiScores.Read(score).Events[0].OfType<TempoEvent>().Select(e => (e.AbsoluteTime / 960, e.MicrosecondsPerQuarterNote))
            .ShouldBe([(0, 500_000), (6, 444_444), (8, 500_000), (14, 444_444), (16, 800_000), (20, 400_000)]);
        var bytes = MidiScores.Bytes(score);
        byte[] wanted = [0xFF, 0x51, 3, 444_444 >> 16, 444_444 >> 8 & 0xFF, 444_444 & 0xFF];
        Enumerable.Range(0, bytes.Length - wanted.Length).Count(i => bytes.AsSpan(i, wanted.Length).SequenceEqual(wanted)).ShouldBe(2);
        MidiScores.Read(score, new MidiOptions { TempoFactor = 0.5 }).Events[0].OfType<TempoEvent>().Select(e => e.MicrosecondsPerQuarterNote).Take(2).ShouldBe([1_000_000, 888_889]);
    }

    // 120 quarters a minute, then 120 dotted quarters, which are 180 quarters, each time; then its eighths, 360 a minute, as quarters.
    [Fact]
    public void An_equation_of_note_values_sets_the_tempo_it_leads_to()
    {
        var quarter = new NoteValue(NoteBase.Quarter);
        var score = MidiScores.Build(
            [
                MidiScores.Measure(),
                MidiScores.Measure(new Meter(6, 8)) with { RepeatEndTimes = 2, Directions = [Direction.OfEquation(0, new TempoEquation(quarter, new NoteValue(NoteBase.Quarter, 1)))] },
                MidiScores.Measure() with { Directions = [Direction.OfEquation(0, new TempoEquation(new NoteValue(NoteBase.Eighth), quarter))] },
            ],
            MidiScores.Note(0, 4, "E1"), MidiScores.Note(4, 3, "A1"), MidiScores.Note(7, 4, "D2"));
        MidiScores.Read(score).Events[0].OfType<TempoEvent>().Select(e => (e.AbsoluteTime / 960, e.MicrosecondsPerQuarterNote))
            .ShouldBe([(0, 500_000), (4, 333_333), (7, 500_000), (11, 333_333), (14, 166_667)]);
    }

    [Fact]
    public void The_same_score_gives_the_same_bytes()
    {
        var score = MidiScores.Build(Feel.SwingEighths, [MidiScores.Measure(), MidiScores.Measure()], MidiScores.Note(0, Half, "A1", "E2"), MidiScores.Note(Half, 5, "G2"));
        var options = new MidiOptions { CountIn = true, Click = true, Chords = true };
        MidiScores.Bytes(score, options).ShouldBe(MidiScores.Bytes(score, options));
    }
}

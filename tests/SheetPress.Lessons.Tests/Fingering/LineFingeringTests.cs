using System.Collections.Immutable;
using CsCheck;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons.Tests;

public class LineFingeringTests
{
    private static readonly Instrument Bass = InstrumentCatalogue.Find("bass-4")!;
    private static readonly Instrument Guitar = InstrumentCatalogue.Find("guitar-6")!;

    private static readonly ImmutableArray<Fraction> ChordStarts = [0, 1, 2, 3];

    private static Line Quarters(params string[] events) => new(
        [.. events.Select((e, i) => new LineNote
        {
            Start = i,
            Duration = 1,
            Tones = [.. e.Split(' ').Select(p => new LineTone(Pitch.Parse(p)))],
        })],
        events.Length);

    private static FingeringResult Finger(Line line, Instrument instrument, NeckRequest? neck = null, int level = 2) =>
        LineFingering.Apply(line, instrument, neck ?? new NeckRequest(), level, []);

    private static FretPosition At(FingeringResult result, int note, int tone = 0) => result.Line.Notes[note].Tones[tone].Position!.Value;

    private static void ShouldSoundAsWritten(Line line, Instrument instrument)
    {
        foreach (var tone in line.Notes.SelectMany(n => n.Tones))
        {
            var place = tone.Position.ShouldNotBeNull();
            instrument.MidiNumberAt(place.String, place.Fret).ShouldBe(tone.Pitch.MidiNumber);
            (tone.Finger == 0).ShouldBe(place.Fret == 0);
        }
    }

    // Common practice, shapes on strings tuned in fourths (strings up, frets up), for a root that stays in one position.
    [Theory]
    [InlineData("C2", "C3", 2, 2)]
    [InlineData("C2", "G2", 1, 2)]
    [InlineData("C2", "F2", 1, 0)]
    [InlineData("C2", "F#2", 1, 1)]
    [InlineData("C2", "Bb2", 2, 0)]
    [InlineData("C2", "B2", 2, 1)]
    [InlineData("C2", "Eb3", 3, 0)]
    [InlineData("C2", "E3", 3, 1)]
    public void Shapes_of_intervals_in_position(string root, string upper, int stringsUp, int fretsUp)
    {
        var result = Finger(Quarters(root, upper), Bass, new NeckRequest { Position = 7, OpenStrings = false });
        result.FailedNote.ShouldBe(-1);
        var (low, high) = (At(result, 0), At(result, 1));
        low.ShouldBe(new FretPosition(4, 8));
        (low.String - high.String).ShouldBe(stringsUp);
        (high.Fret - low.Fret).ShouldBe(fretsUp);
        result.Summary!.Shifts.ShouldBe(0);
    }

    [Fact]
    public void Low_positions_of_a_long_scale_span_three_frets_and_higher_ones_four()
    {
        // Common practice: 1-2-4 near the nut of a 34-inch bass, one finger a fret further up; a guitar has four frets everywhere.
        new HandModel(Bass).OneFingerAFret(1).ShouldBeFalse();
        new HandModel(Bass).OneFingerAFret(7).ShouldBeTrue();
        new HandModel(Guitar).OneFingerAFret(1).ShouldBeTrue();
    }

    // Common practice: the octave with 1 and 4 in the low three-fret hand, with 1 and 3 (or 2 and 4) where a finger takes each fret; root and
    // fifth alike.
    [Theory]
    [InlineData("G1", "G2", 3, "1 4")]
    [InlineData("A1", "A2", 5, "1 3")]
    [InlineData("C2", "C3", 8, "1 3")]
    [InlineData("G1", "D2", 3, "1 4")]
    [InlineData("C2", "G2", 8, "1 3")]
    public void Octaves_and_fifths_take_their_fingers(string root, string upper, int position, string fingers)
    {
        var result = Finger(Quarters(root, upper, root, upper), Bass, new NeckRequest { Position = position, OpenStrings = false });
        string.Join(' ', result.Line.Notes.Take(2).Select(n => n.Tones[0].Finger)).ShouldBe(fingers);
        At(result, 0).String.ShouldBe(4);
        result.Summary!.Shifts.ShouldBe(0);
    }

    // Common practice: a minor tenth lies on one fret and leaves a finger free between its two, a major one takes neighbours.
    [Theory]
    [InlineData("C2 Eb3", "1 3")]
    [InlineData("C2 E3", "1 2")]
    public void Tenths_take_their_fingers(string tenth, string fingers) =>
        string.Join(' ', Finger(Quarters(tenth), Bass).Line.Notes[0].Tones.Select(t => t.Finger)).ShouldBe(fingers);

    [Fact]
    public void A_line_on_a_ukulele_stays_off_the_high_fourth_string()
    {
        // Common practice: the fourth string, tuned above the third and second, is for chords; scales run over the other three.
        var ukulele = InstrumentCatalogue.Find("ukulele")!;
        foreach (var level in (int[])[1, 3, 5])
        {
            var result = Finger(Quarters("C4", "D4", "E4", "F4", "G4", "A4", "B4", "C5", "A4", "G4", "E4", "C4", "G4", "B4", "D5", "G4"), ukulele, level: level);
            result.Line.Notes.ShouldAllBe(n => n.Tones[0].Position!.Value.String < 4);
        }
    }

    [Fact]
    public void A_line_may_ask_for_the_high_fourth_string()
    {
        var result = Finger(Quarters("A4", "B4"), InstrumentCatalogue.Find("ukulele")!, new NeckRequest { Strings = [4] });
        result.Line.Notes.Select(n => n.Tones[0].Position!.Value).ShouldBe([new FretPosition(4, 2), new FretPosition(4, 4)]);
    }

    [Fact]
    public void The_third_finger_helps_when_the_little_one_stretches()
    {
        // Common practice: a major seventh arpeggio from the fourth fret, 2 1 4 3.
        var result = Finger(Quarters("Ab1", "C2", "Eb2", "G2"), Bass, new NeckRequest { Position = 3, OpenStrings = false }, level: 3);
        result.Line.Notes.Select(n => n.Tones[0].Finger!.Value).ShouldBe([2, 1, 4, 3]);
        result.Summary!.Shifts.ShouldBe(0);
    }

    [Fact]
    public void No_finger_hops_from_fret_to_fret_where_another_is_free() => Gen.Int[28, 55].Array[2, 16].Sample(midi =>
    {
        var line = new Line([.. midi.Select((m, i) => new LineNote { Start = new Fraction(i, 2), Duration = new Fraction(1, 2), Tones = [new LineTone(Pitch.AtOrAbove(Spelled(m), m))] })], new Fraction(midi.Length, 2));
        var hand = new HandModel(Bass);
        var costs = new FingeringCosts(hand, new NeckRequest(), 3);
        var step = new FingeringStep(1, false, true, false, false, false);
        var finder = new GripFinder(hand, costs, new NeckRequest(), 3);
        foreach (var (from, to) in line.Notes.Zip(line.Notes.Skip(1)))
        {
            foreach (var a in finder.Find(from))
            {
                foreach (var b in finder.Find(to))
                {
                    if (a.Finger == 0 || a.Finger != b.Finger || a.Hand != b.Hand || a.Fret == b.Fret) continue;
                    costs.Between(a, b, step).ShouldBeGreaterThanOrEqualTo(1);
                }
            }
        }
    }, iter: 20);

    [Fact]
    public void Beginners_take_the_lower_place()
    {
        // Common practice: E, B and E in the first months are the open string and two fingered notes beside it.
        var result = Finger(Quarters("E1", "B1", "E2", "A1", "E2", "A2"), Bass, level: 1);
        result.Line.Notes.Max(n => n.Tones[0].Position!.Value.Fret).ShouldBe(2);
    }

    [Fact]
    public void Scale_in_position_uses_no_shift()
    {
        var result = Finger(Quarters("C2", "D2", "E2", "F2", "G2", "A2", "B2", "C3"), Bass, new NeckRequest { OpenStrings = false, Position = 7 });
        result.Summary!.Shifts.ShouldBe(0);
        ShouldSoundAsWritten(result.Line, Bass);
        // Common practice: the major scale from the second finger.
        result.Line.Notes.Select(n => n.Tones[0].Finger!.Value).ShouldBe([2, 4, 1, 2, 4, 1, 3, 4]);
    }

    [Fact]
    public void Shell_voicing_lies_on_distinct_strings()
    {
        var result = Finger(Quarters("C2 Bb2 E3"), Bass);
        result.FailedNote.ShouldBe(-1);
        // Common practice: root, seventh and tenth on strings 4, 2 and 1 from the eighth fret.
        Enumerable.Range(0, 3).Select(t => At(result, 0, t)).ShouldBe([new FretPosition(4, 8), new FretPosition(2, 8), new FretPosition(1, 9)]);
    }

    [Fact]
    public void Full_guitar_chord_is_held_with_a_barre()
    {
        var result = Finger(Quarters("F2 C3 F3 A3 C4 F4"), Guitar, new NeckRequest { OpenStrings = false });
        result.FailedNote.ShouldBe(-1);
        ShouldSoundAsWritten(result.Line, Guitar);
        result.Line.Notes[0].Tones.Count(t => t.Finger == 1).ShouldBe(3);
    }

    [Fact]
    public void One_pitch_keeps_one_place_within_a_chord()
    {
        // Two chords of eight eighths: a shape that is played twice is fingered twice alike, its first note too.
        string[] pitches = ["D2", "Ab2", "D3", "C3", "D2", "Ab2", "D3", "C3", "G2", "D3", "G3", "F3", "G2", "D3", "G3", "F3"];
        var line = Quarters(pitches);
        line = line with { Notes = [.. line.Notes.Select((n, i) => n with { Start = new Fraction(i, 2), Duration = new Fraction(1, 2) })] };
        var result = LineFingering.Apply(line, Bass, new NeckRequest(), 3, [0, 4]);
        for (var chord = 0; chord < 2; chord++)
        {
            for (var i = 0; i < 4; i++) At(result, (8 * chord) + i).ShouldBe(At(result, (8 * chord) + i + 4));
        }
    }

    [Fact]
    public void Joined_notes_stay_on_one_string()
    {
        var line = Quarters("A1", "B1", "A1", "D2");
        line = line with { Notes = [.. line.Notes.Select((n, i) => n with { Connection = i switch { 0 => Connection.HammerOn, 1 => Connection.PullOff, 2 => Connection.Slide, _ => Connection.None } })] };
        var result = Finger(line, Bass);
        result.Line.Notes.Select(n => n.Tones[0].Position!.Value.String).Distinct().Count().ShouldBe(1);
        At(result, 2).Fret.ShouldBeGreaterThan(0, "a slide needs a finger on the string");
    }

    [Fact]
    public void Pinned_places_are_kept()
    {
        var line = Quarters("C2", "C2");
        line = line with { Notes = line.Notes.SetItem(1, line.Notes[1] with { Tones = [line.Notes[1].Tones[0] with { Position = new FretPosition(4, 8) }] }) };
        At(Finger(line, Bass), 1).ShouldBe(new FretPosition(4, 8));
    }

    [Theory]
    [InlineData("D1", "D1 is below the lowest note of the 4-string bass")]
    [InlineData("C6", "C6 is above the highest note of the 4-string bass")]
    public void Notes_off_the_neck_are_named(string pitch, string reason)
    {
        var result = Finger(Quarters("C2", pitch), Bass);
        result.FailedNote.ShouldBe(1);
        result.Reason.ShouldBe(reason);
    }

    [Fact]
    public void Chord_beyond_the_hand_is_refused()
    {
        var result = Finger(Quarters("F1 D3"), Bass, new NeckRequest { OpenStrings = false, HighestFret = 8, Strings = [4, 1] });
        result.FailedNote.ShouldBe(0);
        result.Reason.ShouldContain("cannot be held with one hand");
    }

    [Fact]
    public void Thumb_takes_low_strings_and_pop_high_ones()
    {
        var line = Quarters("E2", "E3", "E2", "E3");
        line = line with { Notes = [.. line.Notes.Select((n, i) => n with { Stroke = i % 2 == 0 ? Stroke.Thumb : Stroke.Pop })] };
        var result = Finger(line, Bass);
        for (var i = 0; i < 4; i++)
        {
            if (i % 2 == 0) At(result, i).String.ShouldBeGreaterThanOrEqualTo(3);
            else At(result, i).String.ShouldBeLessThanOrEqualTo(2);
        }
    }

    /// <summary>Common practice: one finger slides; a hammer-on or pull-off takes two fingers of a hand that stays, or an open string.</summary>
    [Fact]
    public void Slides_take_one_finger_and_hammered_notes_two()
    {
        Gen.Select(Gen.Int[29, 45], Gen.Int[1, 4], Gen.Int[1, 5], Gen.Int[1, 3]).Sample((low, step, level, join) =>
        {
            var connection = (Connection)join;
            if (connection != Connection.Slide && step > 3) return;
            var (first, second) = connection == Connection.PullOff ? (low + step, low) : (low, low + step);
            var notes = ImmutableArray.Create(Note(0, first) with { Connection = connection }, Note(1, second), Note(2, first), Note(3, second) with { Duration = 2 });
            var result = LineFingering.Apply(new Line(notes, 6), Bass, new NeckRequest(), level, []);
            result.FailedNote.ShouldBe(-1);
            var (a, b) = (result.Line.Notes[0].Tones[0], result.Line.Notes[1].Tones[0]);
            b.Position!.Value.String.ShouldBe(a.Position!.Value.String);
            if (a.Finger == 0 || b.Finger == 0) return;
            if (connection == Connection.Slide) b.Finger.ShouldBe(a.Finger);
            else b.Finger.ShouldNotBe(a.Finger);
        });

        static LineNote Note(int beat, int midi) => new() { Start = beat, Duration = 1, Tones = [new LineTone(Pitch.AtOrAbove(Spelled(midi), midi))] };
    }

    // Sayegh 1989: the optimum path; here compared with trying every path of short random lines.
    [Fact]
    public void Path_costs_the_same_as_brute_force()
    {
        var lines = Gen.Select(Gen.Int[28, 62].Array[1, 4], Gen.Int[0, 3].Array[4], Gen.Bool);
        lines.Sample((midi, joins, sixteenths) =>
        {
            var length = sixteenths ? new Fraction(1, 4) : Fraction.One;
            var notes = midi.Select((m, i) => new LineNote
            {
                Start = length * i,
                Duration = length,
                Tones = [new LineTone(Pitch.AtOrAbove(Spelled(m), m))],
                Connection = i + 1 < midi.Length ? (Connection)joins[i] : Connection.None,
            }).ToImmutableArray();
            var hand = new HandModel(Bass);
            var neck = new NeckRequest { HighestFret = 14 };
            var costs = new FingeringCosts(hand, neck, 3);
            var (grips, failed) = LineFingering.FindGrips(notes, new GripFinder(hand, costs, neck, 3));
            if (failed >= 0) return;
            var (path, unreached) = FingeringPath.Find(notes, grips, costs, ChordStarts);
            var least = BruteForce(notes, grips, costs);
            if (unreached >= 0) least.ShouldBe(double.PositiveInfinity);
            else FingeringPath.Cost(notes, path, costs, ChordStarts).ShouldBe(least, 1e-9);
        }, iter: 150);
    }

    [Fact]
    public void Every_note_sounds_as_written_within_the_hand()
    {
        var gen = Gen.Select(Gen.Int[40, 76].Array[1, 24], Gen.Int[1, 5], Gen.Bool);
        gen.Sample((midi, level, open) =>
        {
            var line = new Line([.. midi.Select((m, i) => new LineNote { Start = new Fraction(i, 2), Duration = new Fraction(1, 2), Tones = [new LineTone(Pitch.AtOrAbove(Spelled(m), m))] })], new Fraction(midi.Length, 2));
            var result = Finger(line, Guitar, new NeckRequest { OpenStrings = open ? null : false }, level);
            if (result.FailedNote >= 0)
            {
                // Only the open low E string has no other place.
                open.ShouldBeFalse();
                line.Notes[result.FailedNote].Tones[0].Pitch.MidiNumber.ShouldBe(40);
                return;
            }
            ShouldSoundAsWritten(result.Line, Guitar);
            result.Summary!.WidestStretch.ShouldBeLessThanOrEqualTo(HandModel.WidestSpan(level));
        }, iter: 300);
    }

    private static NoteName Spelled(int midi) => NoteName.Parse(new[] { "C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B" }[midi % 12]);

    private static double BruteForce(ImmutableArray<LineNote> notes, ImmutableArray<Grip>[] grips, FingeringCosts costs)
    {
        var path = new Grip[notes.Length];
        return Try(0);

        double Try(int n)
        {
            if (n == notes.Length) return FingeringPath.Cost(notes, path, costs, ChordStarts);
            var least = double.PositiveInfinity;
            foreach (var grip in grips[n])
            {
                path[n] = grip;
                least = Math.Min(least, Try(n + 1));
            }
            return least;
        }
    }
}

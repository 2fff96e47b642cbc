using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>Hand-built scores that together use everything a score can say.</summary>
internal static class SampleScores
{
    private static readonly NoteValue Quarter = new(NoteBase.Quarter);

    /// <summary>Every sample.</summary>
    public static ImmutableArray<Score> All { get; } =
    [
        Plain(), Swing(), Pickup(), KeysAndMeters(), Repeats(), ToTheCoda(), BackToTheStart(), Tuplets(), NestedTuplets(), Technique(), Bends(),
        TwoVoices(), Chords(), NoChord(), TabOnly(), StaffOnly(), Chart(), FiveStrings(), Ukulele(), CapoGuitar(), OwnTuning(), Silence(), RepeatedMeasures(),
        Clefs(), Phrases(), Tempos(), Equations(), VoicesOfTheirOwnLoudness(),
    ];

    /// <summary>The sample of a name.</summary>
    public static Score Named(string id) => All.Single(s => s.Id == id);

    public static ScoreHeader Header(string id, string instrument = "bass-4") => new()
    {
        Id = id,
        Title = "Study: " + id.Replace('-', ' '),
        Instruction = "Play it slowly & evenly, twice <softly>.",
        Instrument = InstrumentCatalogue.Find(instrument)!,
        Tempo = new Tempo(92, Quarter),
    };

    public static Score Build(ScoreHeader header, string meter, string key, string line, string? second = null, Func<ImmutableArray<FrameMeasure>, ImmutableArray<FrameMeasure>>? change = null)
    {
        var music = LineText.Read(header.Instrument, line);
        var m = MeterOf(meter);
        var count = (int)Math.Ceiling((music.Length / m.MeasureLength).ToDouble());
        ImmutableArray<FrameMeasure> frame = [.. Enumerable.Range(0, count).Select(_ => new FrameMeasure { Meter = m, Key = Key.Parse(key), Length = m.MeasureLength })];
        return ScoreBuilder.Build(header, change?.Invoke(frame) ?? frame, music, second is null ? null : LineText.Read(header.Instrument, second));
    }

    public static Meter MeterOf(string text) => new(int.Parse(text.Split('/')[0]), int.Parse(text.Split('/')[1]));

    private static HarmonyMark Symbol(string chord, string? roman = null, string at = "0") => new(LineText.ReadFraction(at), Chord.Parse(chord), roman);

    private static Direction Sign(DirectionKind kind, string text = "", string at = "0") => new(LineText.ReadFraction(at), kind, text);

    private static Score Plain() => Build(
        Header("plain") with { ShowFingers = true, ShowDegrees = true, ShowCounts = true, ShowRomans = true, MeasuresPerSystem = 2 },
        "4/4", "C minor",
        """
        C2:1/2!=1!°R Eb2:1/2!=&!°b3 G2:1/2!=2!°5 Bb2:1/2!=&!°b7 C3:1!=3!°8 r:1 |
        F1:3/2!°R Ab1:1/2!°b3 B1:1!°#4 Bb1:1!°4 | Bb1:4!°R | Bb1:1/2 D2:3/2 Eb2:2
        """,
        change: f =>
        [
            f[0] with { Harmonies = [Symbol("Cm7", "i7")], Directions = [Sign(DirectionKind.Rehearsal, "A"), Sign(DirectionKind.Dynamic, "mf")] },
            f[1] with { Harmonies = [Symbol("Fm7", "iv7"), Symbol("Bb7/D", "V7/III", "2")], Directions = [Sign(DirectionKind.CrescendoStart), Sign(DirectionKind.HairpinStop, at: "4")] },
            f[2] with { Harmonies = [Symbol("Ebmaj7", "IIImaj7"), Symbol("Dm7b5", "iiø7", "3")], Directions = [Sign(DirectionKind.Words, "let it breathe", "5/2"), Sign(DirectionKind.DiminuendoStart), Sign(DirectionKind.HairpinStop, at: "3")], BreakBefore = true },
            f[3] with { Harmonies = [Symbol("G7b9", "V7")], Directions = [Sign(DirectionKind.Dynamic, "espr.")] },
        ]);

    private static Score VoicesOfTheirOwnLoudness() => Build(
        Header("voices-of-their-own-loudness", "guitar-6"), "4/4", "C major", "E4:2!*mf!< G4:2 | C5:2!*f E4:2", "C3:1!*p G3:1 C3:2!> | A2:1 E3:1!*ff A2:2");

    private static Score Swing() => Build(
        Header("swing") with { Feel = Feel.SwingEighths, Tempo = new Tempo(132.5, Quarter) },
        "4/4", "F major", "F1:1/2 A1:1/2 C2:1/2 D2:1/2 Eb2:1/2 D2:1/2 C2:1/2 A1:1/2");

    private static Score Pickup() => Build(
        Header("pickup"), "3/4", "G major", "D2:1/2 F#2:1/2 | G2:1 B1:1 D2:1 | G2:2",
        change: f => [f[0] with { Length = 1 }, f[0], f[0] with { Length = 2 }]);

    private static Score KeysAndMeters() => Build(
        Header("keys-and-meters") with { Tempo = new Tempo(60, new NoteValue(NoteBase.Quarter, 1)) }, "6/8", "A major",
        "A1:1/2 C#2:1/2 E2:1/2 A2:3/2 | Bb1:1 F2:1 A2:1 Bb2:1 F2:1 | C#2:1/2 E2:1/2 G#2:1/2 B2:1/2 C#3:1/2 B2:1/2 G#2:1/2 | B#1:2",
        change: f =>
        [
            f[0],
            f[0] with { Meter = new Meter(5, 4), Length = 5, Key = Key.Parse("Bb lydian") },
            f[0] with { Meter = new Meter(7, 8), Length = new Fraction(7, 2), Key = Key.Parse("C# minor") },
            f[0] with { Meter = new Meter(2, 4), Length = 2, Key = Key.Parse("C# minor") },
        ]);

    private static Score Repeats() => Build(
        Header("repeats"), "4/4", "D dorian", "D2:4 | E2:4 | F2:4 | G2:4 | A2:4 | B2:4 | C3:4",
        change: f =>
        [
            f[0],
            f[0] with { RepeatEndTimes = 3 },
            f[0] with { RepeatStart = true },
            f[0] with { EndingStart = [1, 2], EndingStop = true, EndingClosed = true, RepeatEndTimes = 3 },
            f[0] with { EndingStart = [3], EndingStop = true },
            f[0] with { Barline = Barline.Double },
            f[0] with { RepeatStart = true, RepeatEndTimes = 2 },
        ]);

    private static Score ToTheCoda() => Build(
        Header("to-the-coda"), "4/4", "E minor", "E1:4 | F#1:4 | G1:4 | A1:4 | B1:4",
        change: f =>
        [
            f[0],
            f[0] with { Directions = [Sign(DirectionKind.Segno)] },
            f[0] with { Directions = [Sign(DirectionKind.ToCoda, at: "4")] },
            f[0] with { Directions = [Sign(DirectionKind.DalSegno, "D.S. al Coda", "4")], Barline = Barline.Double },
            f[0] with { Directions = [Sign(DirectionKind.Coda)] },
        ]);

    private static Score BackToTheStart() => Build(
        Header("back-to-the-start"), "2/4", "A minor", "A1:2 | B1:2 | C2:2",
        change: f =>
        [
            f[0],
            f[0] with { Directions = [Sign(DirectionKind.Fine, at: "2")], Barline = Barline.Double },
            f[0] with { Directions = [Sign(DirectionKind.DaCapo, "D.C. al Fine", "2")], RepeatEndTimes = 0 },
        ]);

    private static Score Tuplets() => Build(
        Header("tuplets"), "4/4", "C major",
        "C2:1/3 D2:1/3 E2:1/3 F2:2/3 G2:1/3 A2:1/3 r:1/3 B2:1/3 C3:1 | C2:1/5 D2:1/5 E2:1/5 F2:1/5 G2:1/5 C2:2/3 D2:2/3 E2:2/3 r:1");

    // A triplet whose second eighth is itself a triplet of sixteenths: durations a third and a ninth of a quarter note.
    private static Score NestedTuplets()
    {
        var header = Header("nested-tuplets");
        var triplet = new NoteValue(NoteBase.Eighth, 0, 3, 2);
        var inner = new NoteValue(NoteBase.Sixteenth, 0, 9, 4);
        var values = new[] { triplet, inner, inner, inner, triplet, new NoteValue(NoteBase.Quarter), new NoteValue(NoteBase.Half) };
        var at = Fraction.Zero;
        var events = ImmutableArray.CreateBuilder<ScoreEvent>();
        foreach (var value in values)
        {
            var pitch = Pitch.Parse("A1");
            events.Add(new ScoreEvent { Onset = at, Value = value, Tones = [new Tone(pitch) { Position = new FretPosition(3, 0) }] });
            at += value.Duration;
        }
        var score = Build(header, "4/4", "A minor", "A1:4");
        return score with { Measures = [score.Measures[0] with { Voices = [new Voice(events.ToImmutable(), [new TupletSpan(0, 4, 3, 2), new TupletSpan(1, 3, 3, 2, 1)])] }] };
    }

    private static Score Technique() => Build(
        Header("technique") with { ShowFingers = true }, "4/4", "E minor",
        """
        E1:1/2!Thumb gE1:1/2 xA1:1/2!Pop G2:1/2!Pop!Accent A1:1/2!H B1:1/2!P A1:1/2!S D2@3.5:1/2 |
        E1:1/2!PalmMute E1:1/2!PalmMute E1:1!Staccato!Down G1:1!Tenuto!Up A1:1!Marcato!PalmMute |
        E2:1!in-below!Index G2:1!in-above!Middle A2:1!out-below!Ring B2:1!out-above!Vibrato |
        oB4@1.9:1 oA3@2.7:1 E1:2!LetRing!Fermata | B1:3 D2@3.5:1!H | E2@3.7:1!P D2@3.5:3
        """);

    private static Score Bends() => Build(
        Header("bends", "guitar-6"), "4/4", "A minor", "C4@3.5:1!bend2 D4:1 G4:1!bend.5 A4@2.10+E5@1.12:1!bend1");

    private static Score TwoVoices() => Build(
        Header("two-voices", "guitar-6"), "3/4", "D major",
        "F#4:1 E4:1/2 D4:1/2 C#4:1 | r:1 D4:2 | D4:3", "D3:3 | A2:3 | r:3");

    private static Score Chords() => Build(
        Header("chords", "guitar-6"), "4/4", "G major",
        "G2@6.3+B2@5.2+D3@4.0:5 C3@5.3+E3@4.2+G3@3.0:2!S D3@5.5+F#3@4.4+A3@3.2:1 | D3@4.0:1 E3@4.2:1 F#3@4.4:1 F3@4.3:1",
        change: f =>
        [
            f[0] with { Harmonies = [Symbol("G") with { Frame = [new(6, 3), new(5, 2), new(4, 0), new(3, 0), new(2, 0), new(1, 3)] }] },
            f[0] with { Harmonies = [Symbol("C/E"), Symbol("D13#11", at: "2"), Symbol("F#m7b5", at: "3") with { Frame = [new(5, 9), new(4, 10), new(3, 9), new(2, 10)] }] },
            f[0] with { Harmonies = [Symbol("A7sus4"), Symbol("C#dim7", at: "1/2"), Symbol("Ebmaj7#11", at: "1"), Symbol("Abm6/9", at: "2")] },
        ]);

    private static Score NoChord() => Build(
        Header("no-chord"), "4/4", "C major", "C2:2 r:2 | r:4",
        change: f => [f[0] with { Harmonies = [Symbol("C"), new HarmonyMark(2, null)] }, f[0] with { Harmonies = [new HarmonyMark(0, null), Symbol("G7", at: "3")] }]);

    private static Score TabOnly() => Build(
        Header("tab-only") with { Layout = StaffLayout.Tab, ShowFingers = true }, "4/4", "C major",
        "C2:1/2 D2:1/2!H E2:1/2 r:1/2 xE1:1!Accent F2:1!bend1 | C2:1/3 D2:1/3 E2:1/3 F2:3");

    private static Score StaffOnly() => Build(
        Header("staff-only") with { Layout = StaffLayout.Staff }, "4/4", "Ab major", "Ab1@4.4:1!H Bb1@4.6:1 C2@3.3:1!S Db2@3.4:1");

    private static Score Chart() => Build(
        Header("chart") with { Layout = StaffLayout.ChordChart }, "4/4", "C major", "/C2:1 /C2:1 /C2:1 /C2:1 | /C2:3 /C2:1",
        change: f => [f[0] with { Harmonies = [Symbol("Dm7"), Symbol("G7", at: "2")] }, f[0] with { Harmonies = [Symbol("Cmaj7")] }]);

    private static Score FiveStrings() => Build(Header("five-strings", "bass-5"), "4/4", "B minor", "B0:1 D1:1 F#1:1 B1:1");

    private static Score Ukulele() => Build(Header("ukulele", "ukulele"), "4/4", "C major", "G4@4.0:1 C4@3.0:1 E4@2.0:1 A4@1.0:1");

    private static Score CapoGuitar() => Build(
        Header("capo", "guitar-6") with { Instrument = InstrumentCatalogue.Find("guitar-6")! with { Capo = 3 } }, "4/4", "Eb major", "Eb3@5.3:1 G3@4.2:1 Bb3@3.0:1 Eb4@2.1:1");

    private static Score OwnTuning() => Build(
        Header("own-tuning") with { Instrument = InstrumentCatalogue.Find("bass-4")! with { Id = "own", Name = "bass tuned a half step down", OpenStrings = [.. "Gb2 Db2 Ab1 Eb1".Split(' ').Select(Pitch.Parse)] } },
        "4/4", "Eb minor", "Eb1:1 Gb1:1 Cb2:1 Bb1:1");

    // Reached a second time, the first measure is at 92 again, and so is the second ending.
    private static Score Tempos() => Build(
        Header("tempos"), "4/4", "C major", "C2:4 | D2:4 | E2:4 | F2:4 | G2:4",
        change: f =>
        [
            f[0],
            f[0] with { RepeatStart = true },
            f[0] with { EndingStart = [1], EndingStop = true, EndingClosed = true, RepeatEndTimes = 2, Directions = [Direction.OfTempo(0, new Tempo(60, new NoteValue(NoteBase.Half))), Direction.OfTempo(2, new Tempo(50, new NoteValue(NoteBase.Quarter, 1)))] },
            f[0] with { EndingStart = [2], EndingStop = true },
            f[0] with { Directions = [Direction.OfTempo(0, new Tempo(66, Quarter))] },
        ]);

    private static Score Equations() => Build(
        Header("equations"), "4/4", "C major", "C2:4 | D2:3 | E2:4 | F2:4",
        change: f =>
        [
            f[0] with { RepeatStart = true },
            f[0] with { Meter = new Meter(6, 8), Length = 3, RepeatEndTimes = 2, Directions = [Direction.OfEquation(0, new TempoEquation(Quarter, new NoteValue(NoteBase.Quarter, 1)))] },
            f[0] with { Directions = [Direction.OfEquation(0, new TempoEquation(new NoteValue(NoteBase.Eighth), new NoteValue(NoteBase.Eighth)))] },
            f[0] with { Directions = [Direction.OfEquation(0, new TempoEquation(new NoteValue(NoteBase.Half, 1), new NoteValue(NoteBase.Half)))] },
        ]);

    private static Score Silence() => Build(Header("silence"), "5/4", "C major", "r:5 | C2:5 | r:5 | r:2 C2:3");

    private static Score RepeatedMeasures()
    {
        var score = Build(Header("repeated-measures"), "2/4", "C major", "C2:1 G1:1 | C2:1 G1:1 | C2:1 G1:1 | C2:2 | C2:2");
        return score with { Measures = [.. score.Measures.Select((m, i) => m with { RepeatsPrevious = i is 1 or 2 or 4 })] };
    }

    private static Score Clefs()
    {
        var score = Build(Header("clefs", "bass-6"), "2/4", "C major", "C2:2 | C4:2 | C2:2");
        return score with { Measures = [score.Measures[0], score.Measures[1] with { ClefChange = Clef.Treble }, score.Measures[2] with { ClefChange = Clef.Bass }] };
    }

    private static Score Phrases()
    {
        var score = Build(Header("phrases"), "4/4", "C major", "C2:1 D2:1!H E2:1 F2:1 | G2:2 A2:2 | E2:4");
        return score with
        {
            Measures = [Slur(score.Measures[0], 0, starts: true, stops: false), Slur(score.Measures[1], 0, starts: true, stops: true), Slur(score.Measures[2], 0, starts: false, stops: true)],
        };

        static Measure Slur(Measure measure, int index, bool starts, bool stops)
        {
            var voice = measure.Voices[0];
            return measure with { Voices = [voice with { Events = voice.Events.SetItem(index, voice.Events[index] with { SlurStart = starts, SlurStop = stops }) }] };
        }
    }
}

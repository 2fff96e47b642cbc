using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving.Tests;

/// <summary>Makes scores of every kind from a seed: instruments, keys, meters, rhythms, marks, forms. The same seed gives the same score.</summary>
internal sealed class ScoreCorpus(int seed)
{
    private static readonly string[] Keys = ["C major", "F major", "Bb major", "Eb major", "Ab major", "Db major", "Gb major", "B major", "E major", "A major", "D major", "G major", "A minor", "C minor", "F# minor", "D dorian"];
    private static readonly (int Beats, int Unit)[] Meters = [(4, 4), (4, 4), (4, 4), (3, 4), (2, 4), (5, 4), (6, 8), (9, 8), (12, 8), (7, 8), (2, 2), (6, 4)];

    private readonly Random _random = new(seed);
    private readonly bool _marked = seed % 3 == 0;

    /// <summary>The score of the seed.</summary>
    public Score Make()
    {
        var instrument = InstrumentCatalogue.All[seed % InstrumentCatalogue.All.Length];
        var layout = (StaffLayout)(_random.Next(10) switch { < 6 => 0, < 8 => 1, 8 => 2, _ => 3 });
        var (beats, unit) = Pick(Meters);
        var meter = new Meter(beats, unit);
        var key = Key.Parse(Pick(Keys));
        var count = 1 + _random.Next(16);
        var density = _random.Next(5);
        var frame = Frame(meter, key, count);
        var length = Sum(frame);
        var twoVoices = instrument.Family == InstrumentFamily.Guitar && layout != StaffLayout.ChordChart && _random.Next(3) == 0;
        var line = LineOf(instrument, key, meter, length, density, layout == StaffLayout.ChordChart, twoVoices ? 1 : 0);
        var second = twoVoices
            ? LineOf(instrument, key, meter, length, Math.Min(2, density), false, -1) : null;
        var header = new ScoreHeader
        {
            Id = "corpus",
            Title = "Corpus",
            Instrument = instrument,
            Tempo = new Tempo(60 + _random.Next(120), meter.IsCompound ? new NoteValue(NoteBase.Quarter, 1) : new NoteValue(NoteBase.Quarter)),
            Feel = (Feel)_random.Next(3),
            Layout = layout,
            ShowFingers = _random.Next(2) == 0,
            ShowDegrees = _random.Next(3) == 0,
            ShowCounts = _random.Next(4) == 0,
            ShowRomans = _random.Next(3) == 0,
            MeasuresPerSystem = _random.Next(6) == 0 ? 1 + _random.Next(4) : null,
        };
        return ScoreBuilder.Build(header, frame, line, second);
    }

    private static Fraction Sum(List<FrameMeasure> frame)
    {
        var sum = Fraction.Zero;
        foreach (var measure in frame) sum += measure.Length;
        return sum;
    }

    private T Pick<T>(IReadOnlyList<T> items) => items[_random.Next(items.Count)];

    private List<FrameMeasure> Frame(Meter meter, Key key, int count)
    {
        var measures = new List<FrameMeasure>();
        var repeated = count >= 4 && _random.Next(4) == 0;
        var chordsEach = _random.Next(3);
        for (var i = 0; i < count; i++)
        {
            var measure = new FrameMeasure { Meter = meter, Key = key, Length = meter.MeasureLength, Harmonies = Chords(meter, chordsEach) };
            if (repeated && i == 0) measure = measure with { RepeatStart = true };
            if (repeated && i == count - 2) measure = measure with { EndingStart = [1], EndingStop = true, EndingClosed = true, RepeatEndTimes = 2 };
            if (repeated && i == count - 1) measure = measure with { EndingStart = [2], EndingStop = true };
            if (_marked) measure = measure with { Directions = Directions(i, count) };
            measures.Add(measure);
        }
        if (_random.Next(6) == 0 && count > 2)
        {
            // The music moves to another key halfway.
            var other = Key.Parse(Pick(Keys));
            for (var i = count / 2; i < count; i++) measures[i] = measures[i] with { Key = other };
        }
        return measures;
    }

    private ImmutableArray<HarmonyMark> Chords(Meter meter, int each)
    {
        var marks = ImmutableArray.CreateBuilder<HarmonyMark>();
        var starts = meter.BeatStarts;
        for (var i = 0; i < Math.Min(each, starts.Length - 1); i++)
        {
            var root = NoteName.FromFifths(_random.Next(-5, 7));
            var chord = new Chord(root, Pick(ChordQualities.All), _random.Next(8) == 0 ? NoteName.FromFifths(_random.Next(-5, 7)) : null);
            var at = each == 1 ? Fraction.Zero : starts[i * (starts.Length - 1) / each];
            marks.Add(new HarmonyMark(at, _random.Next(20) == 0 ? null : chord, Pick(["ii7", "V7", "Imaj7", "bVII7", "V7/ii", "viiø7"])));
        }
        return marks.ToImmutable();
    }

    private ImmutableArray<Direction> Directions(int index, int count)
    {
        var list = new List<Direction>();
        if (index % 4 == 0) list.Add(new Direction(0, DirectionKind.Rehearsal, ((char)('A' + (index / 4))).ToString()));
        if (index % 3 == 0) list.Add(new Direction(0, DirectionKind.Dynamic, Pick(["p", "mf", "ff", "sfz"])));
        if (index % 5 == 1) list.Add(new Direction(1, DirectionKind.CrescendoStart));
        if (index % 5 == 2) list.Add(new Direction(1, DirectionKind.HairpinStop));
        if (index % 7 == 3) list.Add(new Direction(0, DirectionKind.Words, "a little slower"));
        if (index == count - 1 && index > 2) list.Add(new Direction(0, DirectionKind.DaCapo, "al Fine"));
        if (index == 1) list.Add(new Direction(0, DirectionKind.Segno));
        return [.. list.OrderBy(d => d.Offset)];
    }

    private Line LineOf(Instrument instrument, Key key, Meter meter, Fraction length, int density, bool slashes, int register)
    {
        var notes = ImmutableArray.CreateBuilder<LineNote>();
        var (low, high) = (instrument.OpenStrings.Min(p => p.MidiNumber), instrument.OpenStrings.Max(p => p.MidiNumber) + 12);
        // Two voices keep to the upper and the lower half of the compass, as parts written for one player do.
        if (register > 0) low = (low + high + 4) / 2;
        if (register < 0) high = (low + high - 4) / 2;
        var midi = _random.Next(low, high);
        var at = Fraction.Zero;
        while (at < length)
        {
            foreach (var value in Figure(meter, density))
            {
                if (at + value > length) return new Line(notes.ToImmutable(), length);
                if (_random.Next(9) != 0)
                {
                    midi = Math.Clamp(midi + _random.Next(-5, 6), low, high);
                    notes.Add(Note(instrument, key, at, value, midi, slashes, chords: register == 0));
                }
                at += value;
            }
        }
        return new Line(notes.ToImmutable(), length);
    }

    private Fraction[] Figure(Meter meter, int density)
    {
        if (meter.IsCompound)
        {
            return density switch
            {
                0 => [new Fraction(3, 2)],
                1 => Pick<Fraction[]>([[1, new Fraction(1, 2)], [new Fraction(1, 2), 1], [new Fraction(3, 2)]]),
                2 or 3 => [new Fraction(1, 2), new Fraction(1, 2), new Fraction(1, 2)],
                _ => [.. Enumerable.Repeat(new Fraction(1, 4), 6)],
            };
        }
        return density switch
        {
            0 => Pick<Fraction[]>([[2], [4], [1, 1], [3, 1]]),
            1 => Pick<Fraction[]>([[1], [1], [2], [new Fraction(3, 2), new Fraction(1, 2)]]),
            2 => Pick<Fraction[]>([[new Fraction(1, 2), new Fraction(1, 2)], [1], [new Fraction(1, 2), 1, new Fraction(1, 2)]]),
            3 => Pick<Fraction[]>([[new Fraction(1, 2), new Fraction(1, 2)], [new Fraction(1, 3), new Fraction(1, 3), new Fraction(1, 3)], [new Fraction(3, 4), new Fraction(1, 4)], [new Fraction(1, 4), new Fraction(1, 4), new Fraction(1, 2)], [new Fraction(1, 2), new Fraction(1, 2)]]),
            _ => Pick<Fraction[]>([[new Fraction(1, 4), new Fraction(1, 4), new Fraction(1, 4), new Fraction(1, 4)], [new Fraction(1, 6), new Fraction(1, 6), new Fraction(1, 6), new Fraction(1, 2)], [new Fraction(1, 5), new Fraction(1, 5), new Fraction(1, 5), new Fraction(1, 5), new Fraction(1, 5)], [new Fraction(1, 8), new Fraction(1, 8), new Fraction(1, 4), new Fraction(1, 2)]]),
        };
    }

    private LineNote Note(Instrument instrument, Key key, Fraction at, Fraction value, int midi, bool slash, bool chords)
    {
        var used = new HashSet<int>();
        var tones = ImmutableArray.CreateBuilder<LineTone>();
        tones.Add(Tone(instrument, key, midi, used));
        if (!slash && chords && _random.Next(7) == 0 && value >= new Fraction(1, 2))
        {
            foreach (var interval in Pick<int[]>([[7], [4, 7], [2], [1, 5], [10, 15], [12]]))
            {
                var tone = Tone(instrument, key, midi + interval, used);
                if (tone.Position is not null || instrument.StringCount == 0) tones.Add(tone);
            }
        }
        var note = new LineNote { Start = at, Duration = value, Tones = tones.ToImmutable() };
        if (slash) return note with { Tones = [note.Tones[0] with { Head = Notehead.Slash, Position = null }] };
        note = note with { Count = Pick(["1", "&", "2", "e", "a", "4"]) };
        if (!_marked) return note;
        var head = _random.Next(30) switch { 0 => Notehead.Ghost, 1 => Notehead.Dead, 2 when value >= 1 => Notehead.Harmonic, _ => Notehead.Normal };
        return note with
        {
            Tones = [.. note.Tones.Select(t => t with { Head = head })],
            Articulations = (Articulations)(_random.Next(4) == 0 ? 1 << _random.Next(8) : 0),
            Stroke = _random.Next(5) == 0 ? (Stroke)_random.Next(8) : Stroke.None,
            Connection = note.Tones.Length == 1 && _random.Next(6) == 0 ? (Connection)_random.Next(4) : Connection.None,
            SlideIn = _random.Next(30) == 0 ? LooseSlide.Below : LooseSlide.None,
            SlideOut = _random.Next(30) == 0 ? LooseSlide.Below : LooseSlide.None,
            BendHalfSteps = _random.Next(30) == 0 ? 2 : null,
        };
    }

    private LineTone Tone(Instrument instrument, Key key, int midi, HashSet<int> used)
    {
        // Mostly notes of the key, now and then a chromatic one, spelled by the line of fifths around the tonic.
        NoteName? name = null;
        for (var fifths = key.Fifths - 1; fifths <= key.Fifths + 5; fifths++) if (NoteName.FromFifths(fifths).PitchClass == midi % 12) name = NoteName.FromFifths(fifths);
        for (var fifths = key.Fifths - 4; name is null && fifths <= key.Fifths + 9; fifths++) if (NoteName.FromFifths(fifths).PitchClass == midi % 12) name = NoteName.FromFifths(fifths);
        var pitch = Pitch.AtOrAbove(name!.Value, midi);
        FretPosition? place = null;
        for (var s = 1; s <= instrument.StringCount; s++)
        {
            var fret = midi - instrument.OpenStrings[s - 1].MidiNumber;
            if (fret < 0 || fret > instrument.PlayableFrets || used.Contains(s)) continue;
            if (place is null || fret < place.Value.Fret) place = new FretPosition(s, fret);
        }
        if (place is { } found) used.Add(found.String);
        return new LineTone(pitch)
        {
            Position = place,
            Finger = place is { Fret: 0 } ? 0 : _random.Next(1, 5),
            Degree = new Degree(_random.Next(1, 11), _random.Next(-1, 2)),
        };
    }
}

using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests.Torture;

/// <summary>Scores of what lessons do not ask for, or seldom, so that it stays engraved well: nested tuplets of every kind, changes of clef with everything else, marks in odd places.</summary>
internal static class NotationScores
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<Score> All { get; } = [NestedTuplets(), ClefChanges(), OctaveClef(), LongSlursAndHairpins(), EveryChangeAtOnce(), TwoVoicesAndTuplets()];

    private static Score NestedTuplets() => Build(
        "Nested tuplets", "bass-4", "C major", "4/4",
        "C2:2/3 D2:2/9 E2:2/9 F2:2/9 G2:2/3 C2:2 | C2:2/5 D2:2/5 E2:2/15 F2:2/15 G2:2/15 E2:2/5 C2:2/5 G1:1 C2:1 | C2:1/3 E2:1/3 G2:1/9 F2:1/9 E2:1/9 C2:3");

    private static Score ClefChanges()
    {
        var score = Build("Changes of clef", "bass-6", "D major", "4/4", "D2:1 F#2:1 A2:1 D3:1 | A3:1 C#4:1 D4:1 F#4:1 | A4:2 F#4:2 | D3:1 A2:1 F#2:1 D2:1 | D2:4 | A3:4 | D2:4");
        return score with { Measures = [.. score.Measures.Select((m, i) => m with { ClefChange = i switch { 1 or 5 => Clef.Treble, 3 or 6 => Clef.Bass, _ => null } })] };
    }

    private static Score OctaveClef()
    {
        var score = Build("The treble clef with a small eight", "bass-4", "G major", "3/4", "G2:1 B2:1 D3:1 | E3:1 F#3:1 G3:1 | G1:3");
        return score with { Measures = [.. score.Measures.Select((m, i) => m with { ClefChange = i switch { 0 => Clef.Treble8, 2 => Clef.Bass, _ => null } })] };
    }

    private static Score LongSlursAndHairpins()
    {
        var score = Build("Slurs and hairpins over the end of a system", "bass-4", "F major", "4/4", string.Join(" | ", Enumerable.Repeat("F1:1/2 A1:1/2 C2:1/2 F2:1/2 A2:1/2 F2:1/2 C2:1/2 A1:1/2", 8)),
            (i, m) => m with
            {
                Directions = i switch
                {
                    0 => [new Direction(0, DirectionKind.Dynamic, "pp"), new Direction(1, DirectionKind.CrescendoStart)],
                    5 => [new Direction(2, DirectionKind.HairpinStop), new Direction(2, DirectionKind.Dynamic, "ff"), new Direction(3, DirectionKind.DiminuendoStart)],
                    7 => [new Direction(4, DirectionKind.HairpinStop)],
                    _ => [],
                },
            });
        return score with
        {
            MeasuresPerSystem = 3,
            Measures = [.. score.Measures.Select((m, i) => m with { Voices = [WithSlurs(m.Voices[0], start: i is 0 or 4, stop: i is 3 or 7)] })],
        };
    }

    private static Voice WithSlurs(Voice voice, bool start, bool stop)
    {
        var events = voice.Events.ToBuilder();
        if (start) events[0] = events[0] with { SlurStart = true };
        if (stop) events[^1] = events[^1] with { SlurStop = true };
        return voice with { Events = events.ToImmutable() };
    }

    private static Score EveryChangeAtOnce()
    {
        var score = Build("Key, meter and clef at once, at a repeat", "bass-6", "E major", "4/4", "E2:4 | G#2:4 | A3:3 | C4:3 | A2:3 | E2:3",
            (i, m) => i < 2 ? m with { RepeatStart = i == 0, RepeatEndTimes = i == 1 ? 3 : 0 }
                : m with { Key = Key.Parse(i < 4 ? "C major" : "Gb major"), Meter = new Meter(3, 4), Length = 3, RepeatStart = i == 2, RepeatEndTimes = i == 5 ? 2 : 0, BreakBefore = i == 4 });
        return score with { Measures = [.. score.Measures.Select((m, i) => m with { ClefChange = i switch { 2 => Clef.Treble, 4 => Clef.Bass, _ => null } })] };
    }

    private static Score TwoVoicesAndTuplets() => Build(
        "Tuplets, ties and articulations in two voices", "guitar-6", "A minor", "4/4",
        "E4:1/3 F4:1/3 E4:1/3 D4:1/2!st C4:1/2!st B3:1!ac A3:1!te | C4:3/2 D4:1/2 E4:3/2 B3:1/2 | A3:4!fe",
        lower: "A2:2 E3:2/3 D3:2/3 C3:2/3 | A2:1!ac E3:2 A2:1!st | A2:4!fe");

    private static Score Build(string title, string instrument, string key, string meter, string upper, Func<int, FrameMeasure, FrameMeasure>? change = null, string? lower = null)
    {
        var player = InstrumentCatalogue.Find(instrument)!;
        var parts = meter.Split('/').Select(p => int.Parse(p, CultureInfo.InvariantCulture)).ToArray();
        var line = LineOf(upper, player);
        var frame = new List<FrameMeasure>();
        for (var at = Fraction.Zero; at < line.Length; at += frame[^1].Length)
        {
            var measure = new FrameMeasure { Meter = new Meter(parts[0], parts[1]), Key = Key.Parse(key), Length = new Meter(parts[0], parts[1]).MeasureLength };
            frame.Add(change is null ? measure : change(frame.Count, measure));
        }
        var header = new ScoreHeader { Id = title.ToLowerInvariant().Replace(' ', '-').Replace(",", "", StringComparison.Ordinal), Title = title, Instrument = player, Tempo = new Tempo(88, new NoteValue(NoteBase.Quarter)) };
        return ScoreBuilder.Build(header, frame, line, lower is null ? null : LineOf(lower, player));
    }

    // "E2:1/2!ac": pitch, length in quarter notes, articulations.
    private static Line LineOf(string text, Instrument instrument)
    {
        var notes = ImmutableArray.CreateBuilder<LineNote>();
        var at = Fraction.Zero;
        foreach (var word in text.Split([' ', '|'], StringSplitOptions.RemoveEmptyEntries))
        {
            var pieces = word.Split(':', '!');
            var length = pieces[1].Split('/');
            var duration = new Fraction(long.Parse(length[0], CultureInfo.InvariantCulture), length.Length > 1 ? long.Parse(length[1], CultureInfo.InvariantCulture) : 1);
            var pitch = Pitch.Parse(pieces[0]);
            var marks = pieces.Skip(2).Aggregate(Articulations.None, (sum, p) => sum | p switch { "st" => Articulations.Staccato, "te" => Articulations.Tenuto, "ac" => Articulations.Accent, _ => Articulations.Fermata });
            notes.Add(new LineNote { Start = at, Duration = duration, Tones = [new LineTone(pitch) { Position = instrument.PositionsOf(pitch.MidiNumber).MinBy(p => p.Fret) }], Articulations = marks });
            at += duration;
        }
        return new Line(notes.ToImmutable(), at);
    }
}

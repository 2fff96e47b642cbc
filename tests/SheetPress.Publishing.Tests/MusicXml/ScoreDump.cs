using System.Text.Json;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>
/// What a MusicXML file of some scores has to say, straight from the scores, as JSON for readers in other languages
/// (tests/readback/musicxml-readback.mjs). Times are fractions of quarter notes; pitches sound.
/// </summary>
internal static class ScoreDump
{
    // Indexes of measures as they are played are given for one exercise alone: a reader takes a lesson for one piece.
    private static readonly JsonSerializerOptions Options = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    public static byte[] Of(string title, IReadOnlyList<Score> scores) => JsonSerializer.SerializeToUtf8Bytes(new FileDump(title, [.. MeasuresOf(scores)], scores.Count == 1 ? [.. PlaybackOrder.Of(scores[0])] : null), Options);

    private static IEnumerable<MeasureDump> MeasuresOf(IReadOnlyList<Score> scores)
    {
        var hasNotation = scores.Any(s => s.Layout != StaffLayout.Tab);
        var hasTab = scores.Any(s => s.Layout is StaffLayout.StaffAndTab or StaffLayout.Tab);
        var anySwing = scores.Any(s => s.Feel != Feel.Straight);
        foreach (var score in scores)
        {
            var joins = JoinsOf(score);
            for (var m = 0; m < score.Measures.Length; m++)
            {
                var measure = score.Measures[m];
                var before = m == 0 ? null : score.Measures[m - 1];
                var staves = new Dictionary<string, NoteDump[]>();
                if (hasNotation) staves["1"] = [.. NotesOf(score, m, joins, new StaffSaid(IsTab: false, Shown: score.Layout != StaffLayout.Tab, Sounds: true, Techniques: score.Layout is StaffLayout.Staff or StaffLayout.ChordChart))];
                if (hasTab) staves[hasNotation ? "2" : "1"] = [.. NotesOf(score, m, joins, new StaffSaid(IsTab: true, Shown: score.Layout is StaffLayout.StaffAndTab or StaffLayout.Tab, Sounds: !hasNotation, Techniques: true) { RestsShown = score.Layout == StaffLayout.Tab })];
                yield return new MeasureDump(
                    Implicit: before is null ? measure.Number == 0 : measure.Number == before.Number,
                    Key: measure.Key == before?.Key ? null : measure.Key.Fifths,
                    Meter: measure.Meter.ToString() == before?.Meter.ToString() ? null : measure.Meter.ToString(),
                    Length: Time(measure.Length),
                    Swing: m > 0 || !anySwing ? null : score.Feel switch { Feel.Straight => "straight", Feel.SwingEighths => "2:1 eighth", _ => "2:1 16th" },
                    Tempo: Millionths((m == 0 ? score.Tempo : measure.Directions.FirstOrDefault(d => d.Tempo is not null)?.Tempo)?.QuartersPerMinute),
                    staves,
                    [.. measure.Harmonies.Select(HarmonyOf)]);
            }
        }
    }

    private static IEnumerable<NoteDump> NotesOf(Score score, int m, HashSet<(int Measure, int Voice, int Event, int Tone, Connection Kind, bool Starts)> joins, StaffSaid staff)
    {
        var measure = score.Measures[m];
        if (!staff.Shown && !staff.Sounds)
        {
            // A hidden staff that only doubles is silent.
            yield return new NoteDump { Voice = 5, Onset = Time(0), Duration = Time(measure.Length), Rest = true, MeasureRest = true };
            yield break;
        }
        for (var v = 0; v < measure.Voices.Length; v++)
        {
            var voice = measure.Voices[v];
            for (var i = 0; i < voice.Events.Length; i++)
            {
                var e = voice.Events[i];
                var written = Enumerable.Range(0, e.Tones.Length).Where(t => !staff.IsTab || staff.Sounds || e.Tones[t].Position is not null).ToArray();
                var common = new NoteDump
                {
                    Voice = v + (staff.IsTab && !staff.Sounds ? 5 : 1),
                    Onset = Time(e.Onset),
                    Duration = Time(e.Duration),
                    TupletStarts = voice.Tuplets.Count(t => t.First == i),
                    TupletStops = voice.Tuplets.Count(t => t.Last == i),
                };
                if (written.Length == 0) yield return common with { Rest = true, MeasureRest = e.MeasureRest is not null, Shown = staff.Shown && (!staff.IsTab || staff.RestsShown) };
                foreach (var t in written)
                {
                    var tone = e.Tones[t];
                    var first = t == written[0];
                    yield return common with
                    {
                        Shown = true,
                        Silent = !staff.Sounds || tone.Head == Notehead.Slash,
                        Pitch = tone.Head == Notehead.Slash ? null : new PitchDump(tone.Pitch.Name.Letter.ToString(), tone.Pitch.Name.Alteration, tone.Pitch.Octave),
                        Harmonic = tone.Head == Notehead.Harmonic,
                        Head = tone.Head switch { Notehead.Ghost or Notehead.Dead => "x", Notehead.Slash => "slash", Notehead.Harmonic when !staff.IsTab => "diamond", _ => null },
                        TieStart = tone.TieStart,
                        TieStop = tone.TieStop,
                        TupletStarts = first ? common.TupletStarts : 0,
                        TupletStops = first ? common.TupletStops : 0,
                        String = staff.IsTab && staff.Shown ? tone.Position?.String : null,
                        Fret = staff.IsTab && staff.Shown ? tone.Position?.Fret : null,
                        Bend = staff.Techniques && staff.Shown ? e.BendHalfSteps : null,
                        HammerOns = staff.Techniques && staff.Shown ? Count(Connection.HammerOn) : 0,
                        PullOffs = staff.Techniques && staff.Shown ? Count(Connection.PullOff) : 0,
                        Slides = staff.Shown ? Count(Connection.Slide) : 0,
                    };
                    int Count(Connection kind) => joins.Count(j => (j.Measure, j.Voice, j.Event, j.Tone, j.Kind) == (m, v, i, t, kind));
                }
            }
        }
    }

    // Both ends of every join, tone by tone: along a string where two tones share one, else from the lowest tone to the lowest.
    private static HashSet<(int Measure, int Voice, int Event, int Tone, Connection Kind, bool Starts)> JoinsOf(Score score)
    {
        var ends = new HashSet<(int, int, int, int, Connection, bool)>();
        var places = from m in Enumerable.Range(0, score.Measures.Length)
                     from v in Enumerable.Range(0, score.Measures[m].Voices.Length)
                     from e in Enumerable.Range(0, score.Measures[m].Voices[v].Events.Length)
                     orderby v, m, e
                     select (m, v, e, Event: score.Measures[m].Voices[v].Events[e]);
        foreach (var (a, b) in places.Zip(places.Skip(1)))
        {
            if (a.Event.Connection == Connection.None || a.v != b.v || a.Event.IsRest || b.Event.IsRest) continue;
            var pairs = from x in Enumerable.Range(0, a.Event.Tones.Length)
                        from y in Enumerable.Range(0, b.Event.Tones.Length)
                        let p = a.Event.Tones[x].Position
                        let q = b.Event.Tones[y].Position
                        where p is not null && q is not null && p.Value.String == q.Value.String && p != q
                        select (x, y);
            foreach (var (x, y) in pairs.DefaultIfEmpty((0, 0)))
            {
                ends.Add((a.m, a.v, a.e, x, a.Event.Connection, true));
                ends.Add((b.m, b.v, b.e, y, a.Event.Connection, false));
            }
        }
        return ends;
    }

    private static HarmonyDump HarmonyOf(HarmonyMark mark)
    {
        if (mark.Chord is not { } chord) return new HarmonyDump(Time(mark.Offset), null, null, [], []);
        return new HarmonyDump(
            Time(mark.Offset), NameOf(chord.Root), chord.Bass is { } bass ? NameOf(bass) : null,
            [.. chord.Quality.Degrees.Select(d => d.HalfSteps)],
            [.. mark.Frame.OrderByDescending(p => p.String).Select(p => $"{p.String}.{p.Fret}")]);
    }

    private static NameDump NameOf(NoteName name) => new(name.Letter.ToString(), name.Alteration);

    private static long[] Time(Fraction time) => [time.Numerator, time.Denominator];

    private sealed record StaffSaid(bool IsTab, bool Shown, bool Sounds, bool Techniques)
    {
        public bool RestsShown { get; init; }
    }

    private sealed record FileDump(string Title, MeasureDump[] Measures, int[]? PlayOrder);

    // As exactly as a file says it.
    private static double? Millionths(double? tempo) => tempo is { } exact ? Math.Round(exact, 6) : null;

    private sealed record MeasureDump(bool Implicit, int? Key, string? Meter, long[] Length, string? Swing, double? Tempo, Dictionary<string, NoteDump[]> Staves, HarmonyDump[] Harmonies);

    private sealed record HarmonyDump(long[] Onset, NameDump? Root, NameDump? Bass, int[] Tones, string[] Frame);

    private sealed record NameDump(string Step, int Alter);

    private sealed record PitchDump(string Step, int Alter, int Octave);

    private sealed record NoteDump
    {
        public required int Voice { get; init; }
        public required long[] Onset { get; init; }
        public required long[] Duration { get; init; }
        public bool Rest { get; init; }
        public bool MeasureRest { get; init; }
        public bool Shown { get; init; }
        public bool Silent { get; init; }
        public PitchDump? Pitch { get; init; }
        public bool Harmonic { get; init; }
        public string? Head { get; init; }
        public int? String { get; init; }
        public int? Fret { get; init; }
        public double? Bend { get; init; }
        public bool TieStart { get; init; }
        public bool TieStop { get; init; }
        public int TupletStarts { get; init; }
        public int TupletStops { get; init; }
        public int HammerOns { get; init; }
        public int PullOffs { get; init; }
        public int Slides { get; init; }
    }
}

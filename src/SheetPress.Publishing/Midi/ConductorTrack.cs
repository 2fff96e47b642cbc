using System.Numerics;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Writes tempo, meter, key and marks: the first track of a format 1 file.</summary>
internal static class ConductorTrack
{
    /// <summary>Writes the marks of one score.</summary>
    /// <param name="track">The track.</param>
    /// <param name="performance">The score unrolled.</param>
    /// <param name="lead">Where its count-in begins, in quarter notes; meter, key and tempo hold from there.</param>
    /// <param name="start">Where its first note may sound.</param>
    /// <param name="tempoFactor">Factor on the tempo.</param>
    public static void Write(MidiTrack track, Performance performance, Fraction lead, Fraction start, double tempoFactor)
    {
        WriteTempos(track, performance, lead, start, tempoFactor);
        track.Marker(MidiClock.TickOf(lead), performance.Score.Title);
        Meter? meter = null;
        (int Fifths, bool Minor)? key = null;
        foreach (var played in performance.Measures)
        {
            var measure = played.Measure;
            var tick = MidiClock.TickOf(meter is null ? lead : start + played.Start);
            if (measure.Meter != meter) WriteMeter(track, tick, meter = measure.Meter);
            if (key != (measure.Key.Fifths, measure.Key.HasMinorThird))
            {
                key = (measure.Key.Fifths, measure.Key.HasMinorThird);
                track.KeySignature(tick, key.Value.Fifths, key.Value.Minor);
            }
            foreach (var direction in measure.Directions)
            {
                if (direction.Kind == DirectionKind.Rehearsal) track.Marker(MidiClock.TickOf(start + played.Start + direction.Offset), direction.Text);
            }
        }
    }

    // The tempo where it is another than before, and half of it under fermatas.
    private static void WriteTempos(MidiTrack track, Performance performance, Fraction lead, Fraction start, double tempoFactor)
    {
        var path = PathOf(performance, lead, start);
        double At(long tick) => path[path.FindLastIndex(p => p.Tick <= tick)].Tempo * tempoFactor;

        var states = new SortedDictionary<long, double>();
        foreach (var (tick, tempo) in path) states[tick] = tempo * tempoFactor;
        foreach (var (from, to) in Fermatas(performance, start))
        {
            foreach (var tick in states.Keys.Where(t => t > from && t < to).ToArray()) states[tick] = At(tick) / 2;
            states[from] = At(from) / 2;
            states[to] = At(to);
        }
        foreach (var (tick, tempo) in states) track.Tempo(tick, tempo);
    }

    // Quarter notes a minute from each tick on, in order; no two alike in a row.
    private static List<(long Tick, double Tempo)> PathOf(Performance performance, Fraction lead, Fraction start)
    {
        var path = new List<(long Tick, double Tempo)> { (MidiClock.TickOf(lead), performance.Measures[0].Tempo.QuartersPerMinute) };
        void Add(Fraction time, Tempo tempo)
        {
            if (path[^1].Tempo != tempo.QuartersPerMinute) path.Add((MidiClock.TickOf(start + time), tempo.QuartersPerMinute));
        }
        foreach (var played in performance.Measures)
        {
            Add(played.Start, played.Tempo);
            foreach (var direction in played.Measure.Directions.OrderBy(d => d.Offset)) if (direction.Tempo is { } tempo) Add(played.Start + direction.Offset, tempo);
        }
        return path;
    }

    // Clocks a click: 24 a quarter, on the felt beat where beats are alike, else on the unit.
    private static void WriteMeter(MidiTrack track, long tick, Meter meter)
    {
        var units = meter.Groups.All(g => g == meter.Groups[0]) && meter.Groups.Length > 1 ? meter.Groups[0] : 1;
        track.TimeSignature(tick, meter.Beats, BitOperations.Log2((uint)meter.BeatUnit), (int)(meter.UnitLength * units * 24).Floor);
    }

    // Under a fermata time runs at half speed: from where to where, in order.
    private static IEnumerable<(long From, long To)> Fermatas(Performance performance, Fraction start)
    {
        var held = new SortedDictionary<long, long>();
        foreach (var played in performance.Measures)
        {
            foreach (var e in played.Measure.Voices.SelectMany(v => v.Events))
            {
                if (!e.Articulations.HasFlag(Articulations.Fermata)) continue;
                var from = MidiClock.TickOf(start + played.Start + e.Onset);
                held[from] = Math.Max(held.GetValueOrDefault(from), MidiClock.TickOf(start + played.Start + e.End));
            }
        }
        var until = long.MinValue;
        foreach (var (from, to) in held)
        {
            if (from < until) continue;
            yield return (from, to);
            until = to;
        }
    }
}

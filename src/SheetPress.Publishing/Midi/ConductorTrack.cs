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
        var tempo = performance.Score.Tempo.QuartersPerMinute * tempoFactor;
        track.Tempo(MidiClock.TickOf(lead), tempo);
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
        WriteFermatas(track, performance, start, tempo);
    }

    // Clocks a click: 24 a quarter, on the felt beat where beats are alike, else on the unit.
    private static void WriteMeter(MidiTrack track, long tick, Meter meter)
    {
        var units = meter.Groups.All(g => g == meter.Groups[0]) && meter.Groups.Length > 1 ? meter.Groups[0] : 1;
        track.TimeSignature(tick, meter.Beats, BitOperations.Log2((uint)meter.BeatUnit), (int)(meter.UnitLength * units * 24).Floor);
    }

    // Under a fermata time runs at half speed.
    private static void WriteFermatas(MidiTrack track, Performance performance, Fraction start, double tempo)
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
            track.Tempo(from, tempo / 2);
            track.Tempo(to, tempo);
            until = to;
        }
    }
}

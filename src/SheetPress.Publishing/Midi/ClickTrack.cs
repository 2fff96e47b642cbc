using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Writes the beats as wood blocks on the percussion channel (General MIDI keys 76 high, 77 low).</summary>
internal static class ClickTrack
{
    private const int High = 76;
    private const int Low = 77;

    private static readonly Fraction Length = new(1, 8);

    public static void Write(MidiTrack track, int channel, Performance performance, Fraction start)
    {
        foreach (var played in performance.Measures) WriteMeasure(track, channel, played.Measure.Meter, start + played.Start - played.Offset, played.Offset, played.Offset + played.Measure.Length);
    }

    /// <summary>Clicks a stretch of a measure.</summary>
    /// <param name="track">The track.</param>
    /// <param name="channel">The channel, from 0.</param>
    /// <param name="meter">Meter of the measure.</param>
    /// <param name="start">Where the full measure starts, in quarter notes.</param>
    /// <param name="from">Start of the stretch within the full measure.</param>
    /// <param name="to">End of the stretch within the full measure.</param>
    public static void WriteMeasure(MidiTrack track, int channel, Meter meter, Fraction start, Fraction from, Fraction to)
    {
        var groups = meter.BeatStarts;
        foreach (var beat in Beats(meter))
        {
            if (beat < from || beat >= to) continue;
            var velocity = beat == 0 ? 112 : groups.Contains(beat) ? 88 : 72;
            track.Note(channel, MidiClock.TickOf(start + beat), MidiClock.TickOf(start + beat + Length), beat == 0 ? High : Low, velocity);
        }
    }

    // Every beat unit down to a quarter; in eighths and shorter the felt groups, or each unit where there is one group only.
    private static IEnumerable<Fraction> Beats(Meter meter)
    {
        if (meter.BeatUnit > 4 && meter.Groups.Length > 1) return meter.BeatStarts.Where(b => b < meter.MeasureLength);
        return Enumerable.Range(0, meter.Beats).Select(i => meter.UnitLength * i);
    }
}

using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>
/// Where written times of one voice of a measure sound under a swing feel: each pair is played 2:1, what lies between its ends is
/// moved in proportion. Pairs that a tuplet touches are played as written, and so are meters whose beats hold no such pairs.
/// </summary>
internal sealed class SwingTiming
{
    private readonly Fraction _pair;
    private readonly Fraction _offset;
    private readonly List<(Fraction Start, Fraction End)> _asWritten = [];

    /// <param name="feel">The feel.</param>
    /// <param name="measure">The measure.</param>
    /// <param name="voice">The voice of it.</param>
    /// <param name="offset">Where in a full measure it starts, in quarter notes.</param>
    public SwingTiming(Feel feel, Measure measure, Voice voice, Fraction offset)
    {
        _offset = offset;
        _pair = feel switch
        {
            Feel.SwingEighths when measure.Meter.BeatUnit <= 4 => 1,
            Feel.SwingSixteenths when measure.Meter.BeatUnit <= 8 => new Fraction(1, 2),
            _ => 0,
        };
        if (_pair == 0) return;
        foreach (var tuplet in voice.Tuplets) _asWritten.Add((voice.Events[tuplet.First].Onset, voice.Events[tuplet.Last].End));
    }

    /// <summary>The sounding time of a written time, both in quarter notes from the start of the measure.</summary>
    public Fraction Of(Fraction time)
    {
        if (_pair == 0) return time;
        var start = time + _offset - (time + _offset).Modulo(_pair) - _offset;
        var end = start + _pair;
        if (time == start) return time;
        foreach (var stretch in _asWritten) if (stretch.Start < end && stretch.End > start) return time;
        var part = (time - start) / _pair;
        var half = new Fraction(1, 2);
        var moved = part <= half ? part * new Fraction(4, 3) : new Fraction(2, 3) + ((part - half) * new Fraction(2, 3));
        return start + (moved * _pair);
    }
}

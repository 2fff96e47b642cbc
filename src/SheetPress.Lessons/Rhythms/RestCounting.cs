using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Gives the rests of a counted score their syllables in round brackets, "(2)": who counts goes on counting while nothing sounds. Common practice (from memory).</summary>
internal static class RestCounting
{
    /// <summary>The score with a syllable at each rest that has a usual one, where no voice sounds. A rest of a whole measure has none.</summary>
    /// <param name="score">The score.</param>
    /// <param name="rhythm">The rhythm it was written by, whose silent syllables are kept as they are written; null for none.</param>
    public static Score WithCountedRests(this Score score, RhythmPattern? rhythm)
    {
        var measures = score.Measures.ToBuilder();
        for (var i = 0; i < measures.Count; i++)
        {
            var measure = measures[i];
            var upbeat = i == 0 ? measure.Meter.MeasureLength - measure.Length : Fraction.Zero;
            measures[i] = measure with { Voices = [.. measure.Voices.Select(v => Counted(v, measure, upbeat, rhythm))] };
        }
        return score with { Measures = measures.ToImmutable() };
    }

    private static Voice Counted(Voice voice, Measure measure, Fraction upbeat, RhythmPattern? rhythm)
    {
        var places = voice.Events.Select(e => (e.Onset + upbeat, e.End + upbeat)).ToList();
        string? SyllableAt(Fraction offset) => WrittenAt(offset, measure.Meter, rhythm) ?? Counting.SyllableAmong(measure.Meter, offset, places);
        bool IsSilent(ScoreEvent e) => e.IsRest && e.MeasureRest is null && !measure.Voices.Any(v => v.Events.Any(o => !o.IsRest && o.Onset <= e.Onset && o.End > e.Onset));
        return voice with { Events = [.. voice.Events.Select(e => IsSilent(e) && SyllableAt(e.Onset + upbeat) is { } syllable ? e with { Count = $"({syllable})" } : e)] };
    }

    private static string? WrittenAt(Fraction offset, Meter meter, RhythmPattern? rhythm) =>
        rhythm?.Cells.FirstOrDefault(c => c.IsRest && c.Count is not null && c.Start.Modulo(meter.MeasureLength) == offset)?.Count;
}

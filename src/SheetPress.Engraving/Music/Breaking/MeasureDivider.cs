using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>A place within a measure where a system may end.</summary>
/// <param name="Measure">Index of the measure within the score.</param>
/// <param name="At">Quarter notes from the start of the measure.</param>
internal readonly record struct Division(int Measure, Fraction At);

/// <summary>
/// Divides measures that are too long for a line: the first part ends a system without a barline, the rest begins the next one. The
/// last resort of the handbooks (Gould 2011, from memory): at a beat, never through a note, a beam or a tuplet.
/// </summary>
internal static class MeasureDivider
{
    /// <summary>Where a measure may be divided: at its beats, or where it has none of use at any note.</summary>
    public static ImmutableArray<Fraction> Points(Measure measure)
    {
        if (measure.RepeatsPrevious) return [];
        var open = measure.Voices[0].Events.Select(e => e.Onset).Where(at => at > Fraction.Zero && measure.Voices.All(v => IsOpen(v, at))).ToImmutableArray();
        var beats = open.Where(at => (at / measure.Meter.UnitLength).Denominator == 1).ToImmutableArray();
        return beats.IsEmpty ? open : beats;
    }

    /// <summary>All places of a score where a measure may be divided.</summary>
    public static ImmutableArray<Division> Points(Score score) =>
        [.. score.Measures.SelectMany((measure, i) => Points(measure).Select(at => new Division(i, at)))];

    /// <summary>The score with measures divided; the second parts bear the number of the first.</summary>
    /// <param name="score">The score.</param>
    /// <param name="divisions">Where; in any order.</param>
    /// <param name="breaks">Whether each second part asks for a new system; otherwise it only may begin one.</param>
    public static Score Divide(Score score, IReadOnlyCollection<Division> divisions, bool breaks)
    {
        var points = divisions.ToLookup(d => d.Measure, d => d.At);
        var measures = ImmutableArray.CreateBuilder<Measure>(score.Measures.Length + divisions.Count);
        for (var i = 0; i < score.Measures.Length; i++)
        {
            var rest = score.Measures[i];
            var begun = Fraction.Zero;
            foreach (var at in points[i].Order())
            {
                measures.Add(First(rest, at - begun));
                rest = Second(rest, at - begun) with { BreakBefore = breaks };
                begun = at;
            }
            measures.Add(rest);
        }
        return score with { Measures = measures.DrainToImmutable() };
    }

    /// <summary>Index in the undivided score of each measure of the divided one.</summary>
    public static ImmutableArray<int> Sources(Score score, IReadOnlyCollection<Division> divisions)
    {
        var counts = divisions.ToLookup(d => d.Measure);
        return [.. Enumerable.Range(0, score.Measures.Length).SelectMany(i => Enumerable.Repeat(i, 1 + counts[i].Count()))];
    }

    private static bool IsOpen(Voice voice, Fraction at)
    {
        var index = IndexAt(voice, at);
        if (index == voice.Events.Length || voice.Events[index].Onset != at) return false;
        return BeamGroup.Of(voice).All(g => index <= g.First || index > g.Last) && voice.Tuplets.All(t => index <= t.First || index > t.Last);
    }

    // The first event that does not begin before a point.
    private static int IndexAt(Voice voice, Fraction at)
    {
        var index = 0;
        while (index < voice.Events.Length && voice.Events[index].Onset < at) index++;
        return index;
    }

    private static Measure First(Measure measure, Fraction at) => measure with
    {
        Length = at,
        Voices = [.. measure.Voices.Select(v => Part(v, 0, IndexAt(v, at), Fraction.Zero))],
        Harmonies = [.. measure.Harmonies.Where(h => h.Offset < at)],
        Directions = [.. measure.Directions.Where(d => d.Offset < at)],
        RepeatEndTimes = 0,
        EndingStop = false,
        EndingClosed = false,
        Barline = Barline.None,
    };

    private static Measure Second(Measure measure, Fraction at) => measure with
    {
        Length = measure.Length - at,
        Voices = [.. measure.Voices.Select(v => Part(v, IndexAt(v, at), v.Events.Length, at))],
        Harmonies = [.. measure.Harmonies.Where(h => h.Offset >= at).Select(h => h with { Offset = h.Offset - at })],
        Directions = [.. measure.Directions.Where(d => d.Offset >= at).Select(d => d with { Offset = d.Offset - at })],
        RepeatStart = false,
        EndingStart = [],
        ClefChange = null,
    };

    private static Voice Part(Voice voice, int first, int end, Fraction begun) => new(
        [.. voice.Events[first..end].Select(e => e with { Onset = e.Onset - begun })],
        [.. voice.Tuplets.Where(t => t.First >= first && t.Last < end).Select(t => t with { First = t.First - first, Last = t.Last - first })]);
}

using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>Writes lines of sounding notes into the measures of a frame: bar lines, ties, rests, tuplets, beams, numbers.</summary>
public static class ScoreBuilder
{
    /// <summary>Builds a score.</summary>
    /// <param name="header">Everything but the measures.</param>
    /// <param name="frame">The measures in written order; at least one.</param>
    /// <param name="line">The notes, timed from the start of the first measure. Measures after its end are filled with rests.</param>
    /// <param name="secondVoice">A lower voice in the same staff, or null. It is left out of measures where it is silent.</param>
    /// <exception cref="ArgumentException">The frame is empty or has a measure longer than its meter; notes overlap, have no tones or leave the frame; the line changes clef or tempo where no measure starts.</exception>
    /// <exception cref="UnwritableRhythmException">The rhythm of a measure cannot be written.</exception>
    public static Score Build(ScoreHeader header, IReadOnlyList<FrameMeasure> frame, Line line, Line? secondVoice = null)
    {
        if (frame.Count == 0) throw new ArgumentException("A score has at least one measure.", nameof(frame));
        var plans = MeasurePlan.Of(frame);
        if (line.Changes.FirstOrDefault(c => !plans.Any(p => p.Start == c.Start)) is { } astray) throw new ArgumentException($"No measure starts at {astray.Start}, where the line changes clef or tempo.", nameof(line));
        var upper = new VoiceWriter(line, frame, plans);
        var lower = secondVoice is null ? null : new VoiceWriter(secondVoice, frame, plans);
        var loudness = LineDynamics.Of(line, secondVoice, frame, plans);
        var measures = ImmutableArray.CreateBuilder<Measure>(frame.Count);
        for (var i = 0; i < frame.Count; i++)
        {
            var voice = upper.Write(i);
            ImmutableArray<Voice> voices = lower?.Write(i) is { } second && second.Events.Any(e => !e.IsRest) ? [voice, second] : [voice];
            var measure = WithChanges(ToMeasure(frame, i, plans[i].Number, voices), line, plans[i].Start);
            if (!loudness[i].IsEmpty) measure = measure with { Directions = [.. measure.Directions.Concat(loudness[i]).OrderBy(d => d.Offset)] };
            if (i > 0 && MeasureRepeats.IsOne(header.Layout, frame[i], plans[i], line, measures[i - 1], measure))
            {
                // In a chart the sign says that the chords are the same: what is played is the line's own, with its ties.
                measure = measure with { RepeatsPrevious = true, Voices = header.Layout == StaffLayout.ChordChart ? measure.Voices : measures[i - 1].Voices };
            }
            measures.Add(measure);
        }
        return TempoEquations.Solve(new Score(header, measures.MoveToImmutable()));
    }

    /// <summary>The measures of a frame with nothing written into them, as the order of play needs them.</summary>
    /// <param name="frame">The measures in written order.</param>
    public static ImmutableArray<Measure> Empty(IReadOnlyList<FrameMeasure> frame) => [.. frame.Select((_, i) => ToMeasure(frame, i, i + 1, []))];

    private static Measure WithChanges(Measure measure, Line line, Fraction start)
    {
        foreach (var change in line.Changes)
        {
            if (change.Start != start) continue;
            measure = measure with { ClefChange = change.Clef ?? measure.ClefChange };
            var tempo = change.Equation is { } equation ? Direction.OfEquation(Fraction.Zero, equation) : change.Tempo is { } wanted ? Direction.OfTempo(Fraction.Zero, wanted) : null;
            if (tempo is not null) measure = measure with { Directions = [.. measure.Directions.Where(d => d.Kind != DirectionKind.Tempo || d.Offset > Fraction.Zero), tempo] };
        }
        return measure;
    }

    private static Measure ToMeasure(IReadOnlyList<FrameMeasure> measures, int index, int number, ImmutableArray<Voice> voices)
    {
        var frame = measures[index];
        return new Measure
        {
            Number = number,
            Meter = frame.Meter,
            Key = frame.Key,
            Length = frame.Length,
            Voices = voices,
            Harmonies = frame.Harmonies,
            Directions = frame.Directions,
            RepeatStart = frame.RepeatStart,
            RepeatEndTimes = frame.RepeatEndTimes,
            EndingStart = frame.EndingStart,
            EndingStop = frame.EndingStop,
            EndingClosed = frame.EndingClosed,
            Barline = frame.Barline ?? BarlineAfter(measures, index),
            // Handbook rule, from memory: a coda stands apart from what comes before it, on a system of its own.
            BreakBefore = frame.BreakBefore || (index > 0 && IsCoda(frame)),
        };
    }

    // Handbook rule, from memory: a double barline where the player leaves for another place, and before the coda.
    private static Barline BarlineAfter(IReadOnlyList<FrameMeasure> measures, int index)
    {
        if (index == measures.Count - 1) return measures[index].RepeatEndTimes == 0 ? Barline.Final : Barline.Single;
        var leaves = measures[index].Directions.Any(d => d.Kind is DirectionKind.DaCapo or DirectionKind.DalSegno or DirectionKind.Fine);
        return leaves || IsCoda(measures[index + 1]) ? Barline.Double : Barline.Single;
    }

    private static bool IsCoda(FrameMeasure frame) => frame.Directions.BeginWith(DirectionKind.Coda);
}

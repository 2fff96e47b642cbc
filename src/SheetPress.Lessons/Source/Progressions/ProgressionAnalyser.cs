using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Says what every chord of a progression does in the key that rules where it stands.</summary>
internal static class ProgressionAnalyser
{
    /// <summary>
    /// The progression with an analysis on every chord and a roman numeral on every chord symbol, each in the key of its measure.
    /// </summary>
    public static Progression Analyse(Progression progression)
    {
        var spans = progression.Chords.ToBuilder();
        var analyses = HarmonicAnalysis.Analyze([.. spans.Select(c => c.Chord)], [.. spans.Select(c => progression.Measures[c.Measure].Key)]);
        for (var i = 0; i < spans.Count; i++) spans[i] = spans[i] with { Analysis = analyses[i] };
        return progression with { Measures = WithRomans(progression.Measures, spans), Chords = spans.ToImmutable() };
    }

    // The symbols of a measure are its chords that are not held, in order.
    private static ImmutableArray<FrameMeasure> WithRomans(ImmutableArray<FrameMeasure> measures, ImmutableArray<ChordSpan>.Builder spans)
    {
        var numbered = measures.ToBuilder();
        var next = 0;
        for (var m = 0; m < numbered.Count; m++)
        {
            var symbols = numbered[m].Harmonies.ToBuilder();
            for (var i = 0; next < spans.Count && spans[next].Measure == m; next++)
            {
                if (spans[next].IsHeld) continue;
                symbols[i] = symbols[i] with { Roman = spans[next].Analysis?.Roman };
                i++;
            }
            numbered[m] = numbered[m] with { Harmonies = symbols.ToImmutable() };
        }
        return numbered.ToImmutable();
    }
}

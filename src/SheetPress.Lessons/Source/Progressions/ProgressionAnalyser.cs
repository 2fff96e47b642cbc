using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Says what every chord of a progression does in the key that rules where it stands.</summary>
internal static class ProgressionAnalyser
{
    /// <summary>The progression with an analysis on every chord and a roman numeral on every chord symbol.</summary>
    public static Progression Analyse(Progression progression)
    {
        var chords = progression.Chords.ToBuilder();
        for (var first = 0; first < chords.Count;)
        {
            var key = KeyOf(progression, chords[first]);
            var end = first + 1;
            while (end < chords.Count && KeyOf(progression, chords[end]).Equals(key)) end++;
            var analyses = HarmonicAnalysis.Analyze([.. chords.Skip(first).Take(end - first).Select(c => c.Chord)], key);
            for (var i = first; i < end; i++) chords[i] = chords[i] with { Analysis = analyses[i - first] };
            first = end;
        }
        return new Progression(WithRomans(progression.Measures, chords), chords.ToImmutable());
    }

    private static Key KeyOf(Progression progression, ChordSpan chord) => progression.Measures[chord.Measure].Key;

    private static ImmutableArray<FrameMeasure> WithRomans(ImmutableArray<FrameMeasure> measures, IReadOnlyList<ChordSpan> chords)
    {
        var numbered = measures.ToBuilder();
        var start = Fraction.Zero;
        for (var m = 0; m < numbered.Count; m++)
        {
            var at = start;
            numbered[m] = numbered[m] with
            {
                Harmonies = [.. numbered[m].Harmonies.Select(h => h with { Roman = chords.FirstOrDefault(c => c.Start == at + h.Offset && !c.IsHeld)?.Analysis?.Roman })],
            };
            start += numbered[m].Length;
        }
        return numbered.ToImmutable();
    }
}

using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Makes the harmony table: one row for each chord and what it does, with the bars it stands in.</summary>
public static class HarmonyRows
{
    /// <summary>The rows of a progression in order of first appearance; a chord that comes back in the same role has one row.</summary>
    public static ImmutableArray<HarmonyRow> For(Progression progression)
    {
        var rows = ImmutableArray.CreateBuilder<HarmonyRow>();
        var groups = new List<(ChordAnalysis Analysis, List<int> Bars)>();
        foreach (var span in progression.Chords)
        {
            if (span.Analysis is not { } analysis) continue;
            var bar = BarNumber(progression, span.Measure);
            var known = groups.FindIndex(g => g.Analysis.Chord == analysis.Chord && g.Analysis.Roman == analysis.Roman && g.Analysis.FunctionMarkup == analysis.FunctionMarkup && g.Analysis.Scale == analysis.Scale);
            if (known < 0) groups.Add((analysis, [bar]));
            else if (groups[known].Bars[^1] != bar) groups[known].Bars.Add(bar);
        }
        foreach (var (analysis, bars) in groups) rows.Add(Row(analysis, bars));
        return rows.ToImmutable();
    }

    private static HarmonyRow Row(ChordAnalysis analysis, List<int> bars) => new()
    {
        Chord = analysis.Chord,
        Measures = Ranges(bars),
        Roman = analysis.Roman,
        Function = analysis.FunctionMarkup,
        Tones = [.. analysis.Chord.Tones.Select(t => Labelled(t, analysis))],
        GuideTones = [.. analysis.GuideTones.Select(t => Labelled(t, analysis))],
        ScaleName = analysis.Scale.ToDisplayString(),
        ScaleNotes = [.. analysis.ScaleNotes.Select(n => new ScaleNote(n.ToDisplayString(), analysis.ChangedNotes.Contains(n)))],
        Reason = analysis.ScaleReason,
    };

    private static LabelledTone Labelled(ChordTone tone, ChordAnalysis analysis) =>
        new(tone.Note.ToDisplayString(), tone.Degree, analysis.ChangedNotes.Any(n => n.PitchClass == tone.Note.PitchClass));

    /// <summary>The number printed for a measure: a pickup is 0.</summary>
    internal static int BarNumber(Progression progression, int measure)
    {
        var hasPickup = progression.Measures[0].Length < progression.Measures[0].Meter.MeasureLength;
        return hasPickup ? measure : measure + 1;
    }

    /// <summary>Numbers as ranges: 1, 5–6.</summary>
    internal static string Ranges(IReadOnlyList<int> numbers)
    {
        var parts = new List<string>();
        for (var i = 0; i < numbers.Count;)
        {
            var j = i;
            while (j + 1 < numbers.Count && numbers[j + 1] == numbers[j] + 1) j++;
            parts.Add(j == i
                ? numbers[i].ToString(CultureInfo.InvariantCulture)
                : string.Create(CultureInfo.InvariantCulture, $"{numbers[i]}–{numbers[j]}"));
            i = j + 1;
        }
        return string.Join(", ", parts);
    }
}

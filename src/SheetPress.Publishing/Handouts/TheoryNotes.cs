using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Lessons;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Theory notes written from the patterns of a progression, each led in by the bars it is about.</summary>
public static class TheoryNotes
{
    /// <summary>Most paragraphs on a sheet: more would not be read.</summary>
    private const int Most = 6;

    /// <summary>The paragraphs, as Markdown with chords and numerals in brackets. A sentence that is true of several places names them all.</summary>
    public static ImmutableArray<string> For(Progression progression, Key key)
    {
        ImmutableArray<ChordSpan> spans = [.. progression.Chords.Where(c => !c.IsHeld)];
        var notes = new List<(string Markup, List<string> Bars)>();
        foreach (var pattern in HarmonicAnalysis.FindPatterns([.. spans.Select(s => s.Chord)], key))
        {
            var bars = Bars(progression, spans[pattern.First], spans[pattern.Last]);
            var known = notes.FindIndex(n => n.Markup == pattern.Markup);
            if (known < 0) notes.Add((pattern.Markup, [bars]));
            else if (!notes[known].Bars.Contains(bars)) notes[known].Bars.Add(bars);
        }
        return [.. notes.Take(Most).Select(n => $"**{(n.Bars.Count == 1 && !n.Bars[0].Contains('–') ? "Bar" : "Bars")} {string.Join(", ", n.Bars)}:** {n.Markup}")];
    }

    private static string Bars(Progression progression, ChordSpan first, ChordSpan last)
    {
        var (from, to) = (HarmonyRows.BarNumber(progression, first.Measure), HarmonyRows.BarNumber(progression, last.Measure));
        return from == to ? from.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{from}–{to}");
    }
}

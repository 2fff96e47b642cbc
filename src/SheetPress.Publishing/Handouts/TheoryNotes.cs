using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Lessons;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Theory notes written from the forms and patterns of a progression, each led in by the bars it is about.</summary>
public static class TheoryNotes
{
    /// <summary>Most paragraphs on a sheet: more would not be read.</summary>
    private const int Most = 6;

    /// <summary>
    /// The paragraphs, as Markdown with chords and numerals in brackets: forms first, then patterns in order of their bars. A sentence that is
    /// true of several places names them all, and a kind of pattern is explained once.
    /// </summary>
    public static ImmutableArray<string> For(Progression progression)
    {
        var forms = BluesForms.Find(progression);
        var notes = new List<Note>();
        foreach (var form in forms) Add(notes, form.Markup, isAgain: false, Bars(progression, form.FirstBar, form.FirstBar + BluesForm.Bars - 1));
        var explained = new Dictionary<ProgressionPatternKind, string>();
        foreach (var (pattern, first, last) in Patterns(progression))
        {
            if (forms.Any(f => IsSaid(f, pattern.Kind, first, last))) continue;
            var kind = pattern.Kind.IsCycle() ? ProgressionPatternKind.CycleOfFourths : pattern.Kind;
            var isAgain = !explained.TryAdd(kind, pattern.Markup) && explained[kind] != pattern.Markup;
            Add(notes, isAgain ? pattern.Again ?? pattern.Markup : pattern.Markup, isAgain, Bars(progression, first, last));
        }
        // What has been explained before is the first to go.
        while (notes.Count > Most) notes.RemoveAt(notes.FindLastIndex(n => n.IsAgain) is var again and >= 0 ? again : notes.Count - 1);
        return [.. notes.Select(n => $"**{(n.Bars.Count == 1 && !n.Bars[0].Contains('–') ? "Bar" : "Bars")} {string.Join(", ", n.Bars)}:** {n.Markup}")];
    }

    // What is said, of which bars, and whether the same kind of thing has been explained before.
    private sealed record Note(string Markup, bool IsAgain, List<string> Bars);

    private static void Add(List<Note> notes, string markup, bool isAgain, string bars)
    {
        var known = notes.Find(n => n.Markup == markup);
        if (known is null) notes.Add(new Note(markup, isAgain, [bars]));
        else if (!known.Bars.Contains(bars)) known.Bars.Add(bars);
    }

    // Each pattern in the key in which it ends, with its first and last measures.
    private static List<(ProgressionPattern Pattern, int First, int Last)> Patterns(Progression progression)
    {
        ImmutableArray<ChordSpan> spans = [.. progression.Chords.Where(c => !c.IsHeld)];
        ImmutableArray<Chord?> chords = [.. spans.Select(s => s.Chord)];
        var found = new List<(ProgressionPattern Pattern, int First, int Last)>();
        foreach (var key in progression.Measures.Select(m => m.Key).Distinct())
        {
            foreach (var pattern in HarmonicAnalysis.FindPatterns(chords, key))
            {
                var (first, last) = (spans[pattern.First].Measure, spans[pattern.Last].Measure);
                if (progression.Measures[last].Key == key) found.Add((pattern, first, last));
            }
        }
        return [.. found.OrderBy(f => f.Pattern.First)];
    }

    // A turnaround inside a form leads back to no top, and of the dominant at its end the form has spoken.
    private static bool IsSaid(BluesForm form, ProgressionPatternKind kind, int first, int last)
    {
        var end = form.FirstBar + BluesForm.Bars - 1;
        if (first < form.FirstBar || last > end) return false;
        return kind.IsTurnaround() ? last < end : kind == ProgressionPatternKind.HalfClose && last == end;
    }

    private static string Bars(Progression progression, int first, int last)
    {
        var (from, to) = (HarmonyRows.BarNumber(progression, first), HarmonyRows.BarNumber(progression, last));
        return from == to ? from.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{from}–{to}");
    }
}

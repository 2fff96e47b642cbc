using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>One note value as a teacher writes it: "dotted quarter", "2 eighths", "e3", "rq.", "triplet eighth rest".</summary>
/// <param name="Value">The value.</param>
/// <param name="Tuplet">Notes of its tuplet, 0 outside tuplets.</param>
/// <param name="Count">How many.</param>
/// <param name="IsRest">Whether it is silent.</param>
/// <param name="IsFill">Whether it is a plural without a number: as many as fill the bar.</param>
/// <param name="Marks">Its marks.</param>
internal sealed record NotePhrase(NoteValue Value, int Tuplet, int Count, bool IsRest, bool IsFill, StrokeMarks Marks)
{
    private static readonly (string Singular, string Plural, char Letter, NoteBase Base)[] Names =
    [
        ("whole", "wholes", 'w', NoteBase.Whole),
        ("half", "halves", 'h', NoteBase.Half),
        ("quarter", "quarters", 'q', NoteBase.Quarter),
        ("eighth", "eighths", 'e', NoteBase.Eighth),
        ("sixteenth", "sixteenths", 's', NoteBase.Sixteenth),
        ("thirty-second", "thirty-seconds", 't', NoteBase.ThirtySecond),
    ];

    /// <summary>Words that can stand in a rhythm, for suggestions.</summary>
    public static IEnumerable<string> Words => [.. Names.Select(n => n.Singular), .. Names.Select(n => n.Plural), "dotted", "double-dotted", "triplet", "triplets", "rest", "notes"];

    /// <summary>Reads one phrase from an index on and moves the index behind it, at least one word on.</summary>
    /// <param name="words">All words.</param>
    /// <param name="at">Index of the first word.</param>
    /// <param name="bag">Where problems go; null to try without reporting.</param>
    public static NotePhrase? Read(ImmutableArray<LocatedText> words, ref int at, DiagnosticBag? bag)
    {
        var count = 0;
        var dots = 0;
        var tuplet = 0;
        var start = at;
        for (; at < words.Length; at++)
        {
            var (word, marks, isKnownMark) = Split(words[at], bag);
            var lower = word.ToLowerInvariant();
            if (count == 0 && dots == 0 && tuplet == 0 && int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 128) count = number;
            else if (lower == "dotted") dots = 1;
            else if (lower == "double-dotted") dots = 2;
            else if (lower == "triplet") tuplet = 3;
            else if (lower == "triplets" && tuplet == 0) return Finish(words, ref at, NoteBase.Eighth, dots, 3, count, isPlural: true, marks, isKnownMark, bag);
            else if (FindName(lower) is { } name) return Finish(words, ref at, name.Base, dots, tuplet, count, lower == name.Plural, marks, isKnownMark, bag);
            else if (count == 0 && dots == 0 && tuplet == 0 && ReadLetters(word) is { } letters)
            {
                at++;
                return isKnownMark ? letters with { Marks = letters.IsRest ? default : marks } : null;
            }
            else return Fail(words, ref at, word, bag);
        }
        bag?.Add(words[start].Span, RhythmProblems.UnknownRhythmWord(words[start].Value, null));
        return null;
    }

    // What may follow the name: "triplet(s)", "note(s)", "rest(s)".
    private static NotePhrase? Finish(ImmutableArray<LocatedText> words, ref int at, NoteBase noteBase, int dots, int tuplet, int count, bool isPlural, StrokeMarks marks, bool isKnownMark, DiagnosticBag? bag)
    {
        var isRest = false;
        var isKnown = isKnownMark;
        for (at++; at < words.Length; at++)
        {
            var (word, more, fine) = Split(words[at], null);
            var lower = word.ToLowerInvariant();
            if (lower is "rest" or "rests") isRest = true;
            else if (lower is "triplet" or "triplets" && tuplet == 0) tuplet = 3;
            else if (lower is not ("note" or "notes")) break;
            if (lower.EndsWith('s')) isPlural = true;
            if (!fine) Split(words[at], bag);
            isKnown &= fine;
            if (more != default) marks = more;
        }
        if (!isKnown) return null;
        var value = tuplet == 0 ? new NoteValue(noteBase, dots) : new NoteValue(noteBase, dots, 3, 2);
        return new NotePhrase(value, tuplet, Math.Max(1, count), isRest, isPlural && count == 0 && !isRest, isRest ? default : marks);
    }

    private static NotePhrase? ReadLetters(string word)
    {
        var at = 0;
        var isRest = word.Length > 1 && word[0] == 'r';
        if (isRest) at++;
        NoteBase? noteBase = null;
        foreach (var name in Names) if (at < word.Length && word[at] == name.Letter) noteBase = name.Base;
        if (noteBase is null) return null;
        at++;
        var dots = 0;
        for (; at < word.Length && word[at] == '.' && dots < 2; at++) dots++;
        var tuplet = 0;
        if (at < word.Length && word[at] is >= '2' and <= '7') tuplet = word[at++] - '0';
        if (at < word.Length) return null;
        var value = tuplet == 0 ? new NoteValue(noteBase.Value, dots) : new NoteValue(noteBase.Value, dots, tuplet, InTheTimeOf(tuplet));
        return new NotePhrase(value, tuplet, 1, isRest, false, default);
    }

    // Common practice: a tuplet takes the time of the next lower power of two, duplets and quadruplets that of three.
    private static int InTheTimeOf(int tuplet) => tuplet switch { 3 => 2, 2 or 4 => 3, _ => 4 };

    private static (string Word, StrokeMarks Marks, bool IsKnown) Split(LocatedText text, DiagnosticBag? bag)
    {
        var colon = text.Value.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0) return (text.Value, default, true);
        var marks = MarkWords.Read(text.Slice(colon + 1, text.Length - colon - 1), bag ?? new DiagnosticBag(new SourceText("", "")));
        return (text.Value[..colon], marks ?? default, marks is not null);
    }

    private static (string Plural, NoteBase Base)? FindName(string word)
    {
        foreach (var name in Names) if (word == name.Singular || word == name.Plural) return (name.Plural, name.Base);
        return null;
    }

    private static NotePhrase? Fail(ImmutableArray<LocatedText> words, ref int at, string word, DiagnosticBag? bag)
    {
        bag?.Add(words[at].SpanOf(0, word.Length), RhythmProblems.UnknownRhythmWord(word, NearestWord.Find(word, Words)));
        at++;
        return null;
    }
}

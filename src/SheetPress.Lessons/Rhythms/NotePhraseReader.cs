using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Reads one note value. In words: a number, "dotted" or "double-dotted", "triplet", the name, then "notes", "triplets" or "rest" as in
/// "3 triplet eighths", "quarter triplets", "dotted half rest". In letters: r for a rest, the letter, points, the number of a tuplet;
/// e3in3 is an eighth of a triplet that lies within a triplet.
/// </summary>
internal sealed class NotePhraseReader(ImmutableArray<LocatedText> words, int at, DiagnosticBag bag)
{
    private const int MostNotes = 128;

    private static readonly (string Singular, string Plural, char Letter, NoteBase Base)[] Names =
    [
        ("whole", "wholes", 'w', NoteBase.Whole),
        ("half", "halves", 'h', NoteBase.Half),
        ("quarter", "quarters", 'q', NoteBase.Quarter),
        ("eighth", "eighths", 'e', NoteBase.Eighth),
        ("sixteenth", "sixteenths", 's', NoteBase.Sixteenth),
        ("thirty-second", "thirty-seconds", 't', NoteBase.ThirtySecond),
    ];

    /// <summary>The words that can stand in a phrase.</summary>
    public static IEnumerable<string> Words => [.. Names.Select(n => n.Singular), .. Names.Select(n => n.Plural), "dotted", "double-dotted", "triplet", "triplets", "rest", "notes"];

    private int _count;
    private int _dots;
    private int _tuplet;
    private bool _isPlural;
    private bool _isRest;
    private StrokeMarks _marks;
    private bool _marksAreKnown = true;

    /// <summary>Index of the first word behind the phrase.</summary>
    public int At { get; private set; } = at;

    /// <summary>The phrase; null with the reason reported.</summary>
    public NotePhrase? Read()
    {
        var start = At;
        while (At < words.Length)
        {
            var word = WithoutMarks(words[At]);
            if (At == start && ReadLetters(word) is { } letters)
            {
                TakeMarks(words[At++]);
                return Finish(letters);
            }
            var lower = word.ToLowerInvariant();
            if (At == start && int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= MostNotes) _count = number;
            else if (lower is "dotted" or "double-dotted" && _dots == 0) _dots = lower == "dotted" ? 1 : 2;
            else if (lower == "triplet" && _tuplet == 0) _tuplet = 3;
            else if (lower == "triplets" && _tuplet == 0) return ReadRest(NoteBase.Eighth, isTripletsAlone: true);
            else if (FindName(lower) is { } noteBase) return ReadRest(noteBase, isTripletsAlone: false);
            else return Fail(word);
            At++;
        }
        At = start + 1;
        bag.Add(words[start].Span, RhythmProblems.UnknownRhythmWord(words[start].Value, null));
        return null;
    }

    // From the name on: the name itself and what may follow it.
    private NotePhrase? ReadRest(NoteBase noteBase, bool isTripletsAlone)
    {
        if (isTripletsAlone) _tuplet = 3;
        _isPlural = WithoutMarks(words[At]).EndsWith('s') || WithoutMarks(words[At]).EndsWith('S');
        TakeMarks(words[At++]);
        for (; At < words.Length; At++)
        {
            var lower = WithoutMarks(words[At]).ToLowerInvariant();
            if (lower == "triplets" && _tuplet == 0) _tuplet = 3;
            else if (lower is "rest" or "rests") _isRest = true;
            else if (lower is not ("note" or "notes")) break;
            _isPlural |= lower.EndsWith('s');
            TakeMarks(words[At]);
        }
        var value = _tuplet == 0 ? new NoteValue(noteBase, _dots) : new NoteValue(noteBase, _dots, 3, 2);
        return Finish(new NotePhrase(value) { Tuplet = _tuplet, Count = Math.Max(1, _count), IsRest = _isRest, IsFill = _isPlural && _count == 0 && !_isRest });
    }

    private NotePhrase? Finish(NotePhrase phrase) => _marksAreKnown ? phrase with { Marks = phrase.IsRest ? default : _marks } : null;

    private NotePhrase? Fail(string word)
    {
        var near = NearestWord.Find(word, Words);
        bag.Add(words[At].SpanOf(0, word.Length), RhythmProblems.UnknownRhythmWord(word, word.Equals(near, StringComparison.OrdinalIgnoreCase) ? null : near));
        At++;
        return null;
    }

    private static string WithoutMarks(LocatedText word)
    {
        var colon = word.Value.IndexOf(':', StringComparison.Ordinal);
        return colon < 0 ? word.Value : word.Value[..colon];
    }

    private void TakeMarks(LocatedText word)
    {
        var colon = word.Value.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0) return;
        if (MarkWords.Read(word.Slice(colon + 1, word.Length - colon - 1), bag) is { } marks) _marks = marks;
        else _marksAreKnown = false;
    }

    private static NotePhrase? ReadLetters(string word)
    {
        var at = word.Length > 1 && word[0] == 'r' ? 1 : 0;
        NoteBase? noteBase = null;
        foreach (var name in Names) if (at < word.Length && word[at] == name.Letter) noteBase = name.Base;
        if (noteBase is null) return null;
        var isRest = at == 1;
        at++;
        var dots = 0;
        for (; at < word.Length && word[at] == '.' && dots < 2; at++) dots++;
        var tuplet = at < word.Length && word[at] is >= '2' and <= '7' ? word[at++] - '0' : 0;
        if (word[at..] is ['i', 'n', '3' or '5' or '6' or '7'] && tuplet is 3 or 5 or 6 or 7)
        {
            var outer = word[^1] - '0';
            var nested = new NoteValue(noteBase.Value, dots, tuplet * outer, InTheTimeOf(tuplet) * InTheTimeOf(outer));
            return new NotePhrase(nested) { Tuplet = outer, InnerTuplet = tuplet, InnerTime = nested.WrittenDuration * new Fraction(InTheTimeOf(tuplet), tuplet), IsRest = isRest };
        }
        if (at < word.Length) return null;
        var value = tuplet == 0 ? new NoteValue(noteBase.Value, dots) : new NoteValue(noteBase.Value, dots, tuplet, InTheTimeOf(tuplet));
        return new NotePhrase(value) { Tuplet = tuplet, IsRest = isRest };
    }

    // Common practice: a tuplet takes the time of the next lower power of two, duplets and quadruplets that of three.
    private static int InTheTimeOf(int tuplet) => tuplet switch { 3 => 2, 2 or 4 => 3, _ => 4 };

    private static NoteBase? FindName(string word)
    {
        foreach (var name in Names) if (word == name.Singular || word == name.Plural) return name.Base;
        return null;
    }
}

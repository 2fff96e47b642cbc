using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Reads note values in words ("dotted quarter", "triplet eighth") and letters ("q.", "e3", "rq").</summary>
internal static class ValueWords
{
    private static readonly (string Name, string Plural, char Letter, NoteBase Base)[] Values =
    [
        ("whole", "wholes", 'w', NoteBase.Whole), ("half", "halves", 'h', NoteBase.Half), ("quarter", "quarters", 'q', NoteBase.Quarter),
        ("eighth", "eighths", 'e', NoteBase.Eighth), ("sixteenth", "sixteenths", 's', NoteBase.Sixteenth), ("thirty-second", "thirty-seconds", 't', NoteBase.ThirtySecond),
    ];

    /// <summary>The words, for suggestions.</summary>
    public static IEnumerable<string> Names => [.. Values.Select(v => v.Name), .. Values.Select(v => v.Plural), "dotted", "triplet"];

    /// <summary>Reads a value that starts at a word; moves to its last word.</summary>
    public static bool TryRead(List<LocatedText> words, ref int at, out NoteValue value, out bool isRest)
    {
        value = default;
        isRest = false;
        if (TryReadLetters(words[at].Value, out value, out isRest)) return true;
        var end = at;
        var dots = 0;
        var isTriplet = false;
        for (; end < words.Count; end++)
        {
            if (words[end].Value == "dotted") dots = 1;
            else if (words[end].Value == "triplet") isTriplet = true;
            else break;
        }
        if (end == words.Count) return false;
        foreach (var (name, plural, _, noteBase) in Values)
        {
            if (words[end].Value != name && words[end].Value != plural) continue;
            value = isTriplet ? new NoteValue(noteBase, dots, 3, 2) : new NoteValue(noteBase, dots);
            at = end;
            return true;
        }
        return false;
    }

    private static bool TryReadLetters(string word, out NoteValue value, out bool isRest)
    {
        value = default;
        var at = 0;
        isRest = word.Length > 1 && word[0] == 'r';
        if (isRest) at++;
        NoteBase? found = null;
        foreach (var known in Values) if (known.Letter == word[at]) found = known.Base;
        if (found is not { } noteBase) return false;
        at++;
        var dots = 0;
        for (; at < word.Length && word[at] == '.' && dots < 2; at++) dots++;
        var tuplet = 0;
        if (at < word.Length && word[at] is >= '2' and <= '7') tuplet = word[at++] - '0';
        if (at < word.Length) return false;
        // Common practice: a tuplet takes the time of the next lower power of two, duplets and quadruplets that of three.
        value = tuplet == 0 ? new NoteValue(noteBase, dots) : new NoteValue(noteBase, dots, tuplet, tuplet switch { 3 => 2, 2 or 4 => 3, _ => 4 });
        return true;
    }
}

using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Finds the name of a part at the start of a line, where teachers write it without brackets: "Verse 1: C | G", or "Chorus" on a line of its own.</summary>
internal static class PartName
{
    private const int Longest = 24;

    private static readonly string[] Names =
    [
        "intro", "introduction", "verse", "chorus", "refrain", "bridge", "pre-chorus", "prechorus", "interlude", "solo", "solos", "break", "tag", "vamp", "outro", "ending", "theme",
        "turnaround", "hook", "middle", "section", "part",
    ];

    /// <summary>The length of the name that starts at an index; 0 when none does. The colon behind it is left out.</summary>
    /// <param name="text">The progression.</param>
    /// <param name="start">Index of the first character of the line that is no blank.</param>
    /// <param name="end">Index of the line's end.</param>
    public static int LengthAt(LocatedText text, int start, int end)
    {
        var line = text.Value.AsSpan(start, end - start).TrimEnd();
        if (line.IsEmpty || !char.IsLetter(line[0])) return 0;
        var at = 0;
        while (at < line.Length && (char.IsLetterOrDigit(line[at]) || line[at] is ' ' or '-' or '\'' or '.')) at++;
        var name = line[..at].TrimEnd();
        if (name.Length > Longest) return 0;
        if (at == line.Length) return IsName(name) ? name.Length : 0;
        var isNamed = line[at] == ':' && (at + 1 == line.Length || line[at + 1] == ' ' || (line[at + 1] == '|' && !line[at..].StartsWith(":|", StringComparison.Ordinal)));
        return isNamed && !BeginsWithChord(name) ? at : 0;
    }

    // A known word, alone or with a number or letter.
    private static bool IsName(ReadOnlySpan<char> name)
    {
        var blank = name.IndexOf(' ');
        if (blank >= 0 && name[(blank + 1)..].Trim().Length > 2) return false;
        var word = blank < 0 ? name : name[..blank];
        foreach (var known in Names) if (word.Equals(known, StringComparison.OrdinalIgnoreCase)) return true;
        return false;
    }

    // "Cm7: F7" is a chord that lost its beats; "A: Cm7" is the first part.
    private static bool BeginsWithChord(ReadOnlySpan<char> name)
    {
        var blank = name.IndexOf(' ');
        var word = (blank < 0 ? name : name[..blank]).ToString();
        return word.Length > 1 && (ChordParser.Parse(word).Success || RomanNumeralParser.Parse(word).Success);
    }
}

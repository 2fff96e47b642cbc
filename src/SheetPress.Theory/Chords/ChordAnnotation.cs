namespace SheetPress.Theory;

/// <summary>
/// Reads chords in the plain-text syntax of chord annotations, a root and a colon: "C:maj7", "Bb:min7/b3", "A:7(#9)", "D:hdim7", "C:(1,5)".
/// </summary>
/// <remarks>
/// After Harte, Sandler, Abdallah and Gomez, Symbolic representation of musical chords, ISMIR 2005: behind the colon stands a shorthand or a list
/// of degrees in brackets, or both; an asterisk takes a degree of the shorthand away. The bass behind a slash is a degree above the root. All
/// degrees count against the major scale: 7 is a major seventh. The elevenths and thirteenths, which the paper has no shorthands for, are in
/// use in collections that followed it.
/// </remarks>
internal static class ChordAnnotation
{
    /// <summary>Reads what stands behind the colon.</summary>
    internal static ChordParseResult Read(NoteName root, string text, int start)
    {
        var slash = text.IndexOf('/', start);
        var end = slash < 0 ? text.Length : slash;
        var open = text.IndexOf('(', start, end - start);
        var shorthand = text[start..(open < 0 ? end : open)].Trim();
        if (Degrees(shorthand) is not { } own || (shorthand.Length == 0 && open < 0))
        {
            return Error(start, "Behind a colon comes a shorthand such as maj7, min7, 7, dim, hdim7 or sus4, or degrees in brackets", root, text, start);
        }
        var degrees = DegreeList.Read(own).ToList();
        if (open >= 0)
        {
            if (text[end - 1] != ')') return Error(open, "The bracket is not closed", root, text, start);
            foreach (var part in text[(open + 1)..(end - 1)].Split(',', StringSplitOptions.TrimEntries))
            {
                var omitted = part.StartsWith('*');
                if (!Degree.TryParse(omitted ? part[1..] : part, out var degree) || !IsUsual(degree)) return Error(open + 1, $"'{part}' is no degree", root, text, start);
                if (omitted) degrees.Remove(degree);
                else if (!degrees.Contains(degree)) degrees.Add(degree);
            }
        }
        NoteName? bass = null;
        if (slash >= 0)
        {
            if (!Degree.TryParse(text[(slash + 1)..], out var degree)) return Error(slash + 1, "Behind the slash comes the bass as a degree, as in C:maj/3", root, text, start);
            bass = root + degree.ToInterval();
        }
        // A minor third beside a major one is heard as a raised ninth.
        if (degrees.Contains(new(3)) && degrees.Remove(new(3, -1))) degrees.Add(new(9, 1));
        var chord = new Chord(root, ChordQuality.FromDegrees(degrees), bass == root ? null : bass);
        return ChordParser.Parse(chord.ToString()).Chord == chord ? new() { Chord = chord } : Error(start, "No chord symbol has these tones", root, text, start);
    }

    private static bool IsUsual(Degree degree) => degree.Number switch
    {
        1 => degree.Alteration == 0,
        3 => degree.Alteration is 0 or -1,
        7 => degree.Alteration is 0 or -1 or -2,
        2 or 4 or 5 or 6 or 9 or 11 or 13 => degree.Alteration is -1 or 0 or 1,
        _ => false,
    };

    private static string? Degrees(string shorthand) => shorthand switch
    {
        "" or "1" => "1",
        "5" => "1 5",
        "maj" => "1 3 5",
        "min" => "1 b3 5",
        "dim" => "1 b3 b5",
        "aug" => "1 3 #5",
        "maj7" => "1 3 5 7",
        "min7" => "1 b3 5 b7",
        "7" => "1 3 5 b7",
        "dim7" => "1 b3 b5 bb7",
        "hdim7" => "1 b3 b5 b7",
        "minmaj7" => "1 b3 5 7",
        "maj6" or "6" => "1 3 5 6",
        "min6" => "1 b3 5 6",
        "9" => "1 3 5 b7 9",
        "maj9" => "1 3 5 7 9",
        "min9" => "1 b3 5 b7 9",
        "sus2" => "1 2 5",
        "sus4" => "1 4 5",
        "11" => "1 3 5 b7 9 11",
        "maj11" => "1 3 5 7 9 11",
        "min11" => "1 b3 5 b7 9 11",
        "13" => "1 3 5 b7 9 13",
        "maj13" => "1 3 5 7 9 13",
        "min13" => "1 b3 5 b7 9 11 13",
        _ => null,
    };

    private static ChordParseResult Error(int index, string message, NoteName root, string text, int start) =>
        new() { ErrorIndex = index, Message = message, Suggestion = ChordParser.Parse(root + text[start..]).Chord?.ToString() };
}

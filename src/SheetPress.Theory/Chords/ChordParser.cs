namespace SheetPress.Theory;

/// <summary>
/// Reads chord symbols as players write them: "Bbm7b5", "B♭ø7", "C7(b9,#11)", "Cm(maj7)", "F#-7/E", "N.C.". ♭ and b, ♯ and # are alike.
/// </summary>
/// <remarks>
/// The root is a capital. What is not in the table of <see cref="ChordQualities"/> is built from its parts: any basic name with alterations
/// ("7b5#9", "m11b5"), additions ("add#11"), suspensions and omissions ("no3", "omit5") in any order. An accidental straight after the root
/// belongs to the root: "Cb5" is a power chord on C flat, "C(b5)" a triad on C. An altered tension without a seventh is added to the triad
/// ("C(#11)"), except after maj or sus, which then speak of the seventh chord ("Cmaj#11", "Csusb9"). A bare 2 is an added ninth, a bare 4 a
/// suspended fourth; both are marked as ambiguous. A number behind a slash is an added tone ("C7/9"). What has a colon behind its root is read by
/// <see cref="ChordAnnotation"/>.
/// </remarks>
public static class ChordParser
{
    /// <summary>Reads a text that is one chord symbol or "no chord"; blanks around it do not matter.</summary>
    public static ChordParseResult Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = WithoutSuperscripts(text);
        var start = 0;
        while (start < text.Length && char.IsWhiteSpace(text[start])) start++;
        var end = text.Length;
        while (end > start && char.IsWhiteSpace(text[end - 1])) end--;
        var symbol = text[..end];
        if (start == end) return Error(start, "A chord symbol is missing", null);
        if (IsNoChord(symbol.AsSpan(start))) return new() { IsNoChord = true };
        if (symbol[start] is < 'A' or > 'G') return Error(start, RootMessage(symbol[start]), WithCapital(symbol, start));
        NoteName.TryRead(symbol, start, out var root, out var suffixStart);
        if (Math.Abs(root.Alteration) > 2) return Error(start + 3, "A root has at most two flats or sharps", root.Simplest + symbol[suffixStart..]);
        if (suffixStart < symbol.Length && symbol[suffixStart] == ':') return ChordAnnotation.Read(root, symbol, suffixStart + 1);
        var reader = new ChordSuffixReader(symbol, suffixStart, slashAdds: true);
        if (reader.Read() is not { } shape)
        {
            return Error(reader.At, reader.Error!, RootMeant(symbol, start, suffixStart) ?? SlashMeant(symbol) ?? NearestSymbol.Find(root, symbol, suffixStart));
        }
        var quality = ChordQualities.Of(shape);
        if (reader.At == symbol.Length) return new() { Chord = new(root, quality), IsAmbiguous = reader.IsBareNumber };
        var bassStart = reader.At + 1;
        if (bassStart < symbol.Length && symbol[bassStart] is >= 'A' and <= 'G' && NoteName.TryRead(symbol, bassStart, out var bass, out var bassEnd) && bassEnd == symbol.Length && Math.Abs(bass.Alteration) <= 2)
        {
            return new() { Chord = new(root, quality, bass == root ? null : bass), IsAmbiguous = reader.IsBareNumber };
        }
        return BassError(new Chord(root, quality), symbol, bassStart, suffixStart);
    }

    // Raised figures and signs, as they come from web pages, stand for the plain ones; so does the hyphen that keeps a line together.
    private static string WithoutSuperscripts(string text)
    {
        const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁽⁾‑";
        const string Plain = "0123456789+-()-";
        var plain = "";
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsAscii(text[i]) && Raised.IndexOf(text[i], StringComparison.Ordinal) is >= 0 and var at) plain = (plain.Length > 0 ? plain : text).Remove(i, 1).Insert(i, Plain[at..(at + 1)]);
        }
        return plain.Length > 0 ? plain : text;
    }

    private static ChordParseResult BassError(Chord chord, string symbol, int bassStart, int suffixStart)
    {
        var written = symbol[bassStart..];
        if (written.Length > 1 && Parse(written).Chord is { } lower)
        {
            return Error(bassStart, "After the slash comes one bass note, not a second chord", (chord with { Bass = lower.Root == chord.Root ? null : lower.Root }).ToString());
        }
        // A small letter, or the bass as a degree of the chord.
        if (written.Length > 0 && NoteName.TryParse(char.ToUpperInvariant(written[0]) + written[1..], out var note)) return Bass(note);
        if (Degree.TryParse(written, out var degree) && degree.Number is 3 or 5 or 7) return Bass(chord.NoteOf(degree.Alteration == 0 && RomanNumeral.OwnTone(chord.Quality, degree.Number) is { } own ? own : degree));
        return Error(bassStart, "After the slash comes one bass note, as in C7/E", NearestSymbol.Find(chord.Root, symbol, suffixStart));

        ChordParseResult Bass(NoteName note) => Error(bassStart, "After the slash comes the bass as a note, a capital letter", (chord with { Bass = note }).ToString());
    }

    private static string? SlashMeant(string symbol) =>
        symbol.Contains('\\', StringComparison.Ordinal) && symbol.Replace('\\', '/') is var meant && Parse(meant).Success ? meant : null;

    // A flat written as a capital B (EB7), and the note names of other languages (Es7, Fis).
    private static string? RootMeant(string symbol, int start, int suffixStart)
    {
        if (suffixStart != start + 1 || suffixStart >= symbol.Length) return null;
        var letter = symbol[start];
        var rest = symbol.AsSpan(suffixStart);
        var (sign, length) = rest switch
        {
            ['B', ..] => ("b", 1),
            ['i', 's', ..] => ("#", 2),
            ['e', 's', ..] => ("b", 2),
            ['s', ..] when letter is 'A' or 'E' => ("b", 1),
            _ => ("", 0),
        };
        if (length == 0) return null;
        var meant = string.Concat(symbol.AsSpan(start, 1), sign, rest[length..]);
        return Parse(meant).Success ? meant : null;
    }

    private static ChordParseResult Error(int index, string message, string? suggestion) =>
        new() { ErrorIndex = index, Message = message, Suggestion = suggestion };

    internal static bool IsNoChord(ReadOnlySpan<char> text) => text.Equals("NC", StringComparison.OrdinalIgnoreCase)
        || text.Equals("N.C.", StringComparison.OrdinalIgnoreCase) || text.Equals("N.C", StringComparison.OrdinalIgnoreCase)
        || text.Equals("N. C.", StringComparison.OrdinalIgnoreCase) || text.Equals("N/C", StringComparison.OrdinalIgnoreCase)
        || text is "N" || text.Equals("tacet", StringComparison.OrdinalIgnoreCase) || text.Equals("no chord", StringComparison.OrdinalIgnoreCase);

    private static string RootMessage(char first) => first switch
    {
        >= 'a' and <= 'g' => "The root is written as a capital letter",
        'H' or 'h' => "There is no root H: write B for the note below C, Bb for the half step under it",
        _ => "A chord symbol starts with its root, a letter A to G (or write N.C. for no chord)",
    };

    private static string? WithCapital(string symbol, int start)
    {
        var first = char.ToUpperInvariant(symbol[start]);
        if (first == 'H') first = 'B';
        if (first is < 'A' or > 'G') return null;
        var candidate = first + symbol[(start + 1)..];
        return Parse(candidate).Success ? candidate : null;
    }
}

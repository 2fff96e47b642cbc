namespace SheetPress.Theory;

/// <summary>
/// Reads chord symbols as players write them: "Bbm7b5", "B♭ø7", "C7(b9,#11)", "Cm(maj7)", "F#-7/E", "N.C.". ♭ and b, ♯ and # are alike.
/// </summary>
/// <remarks>
/// The root is a capital. What is not in the table of <see cref="ChordQualities"/> is built from its parts: any basic name with alterations
/// ("7b5#9", "m11b5"), additions ("add#11"), suspensions and omissions ("no3", "omit5") in any order. An accidental straight after the root
/// belongs to the root: "Cb5" is a power chord on C flat, "C(b5)" a triad on C. An altered tension without a seventh is added to the triad
/// ("C(#11)"), except after maj or sus, which then speak of the seventh chord ("Cmaj#11", "Csusb9").
/// </remarks>
public static class ChordParser
{
    /// <summary>Reads a text that is one chord symbol or "no chord"; blanks around it do not matter.</summary>
    public static ChordParseResult Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
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
        var reader = new ChordSuffixReader(symbol, suffixStart);
        if (reader.Read() is not { } shape)
        {
            return Error(reader.At, reader.Error!, NearestSymbol.Find(root, symbol, suffixStart));
        }
        var quality = ChordQualities.Of(shape);
        if (reader.At == symbol.Length) return new() { Chord = new(root, quality) };
        var bassStart = reader.At + 1;
        if (bassStart < symbol.Length && symbol[bassStart] is >= 'A' and <= 'G' && NoteName.TryRead(symbol, bassStart, out var bass, out var bassEnd) && bassEnd == symbol.Length && Math.Abs(bass.Alteration) <= 2)
        {
            return new() { Chord = new(root, quality, bass == root ? null : bass) };
        }
        return Error(bassStart, "After the slash comes one bass note, as in C7/E", NearestSymbol.Find(root, symbol, suffixStart));
    }

    private static ChordParseResult Error(int index, string message, string? suggestion) =>
        new() { ErrorIndex = index, Message = message, Suggestion = suggestion };

    internal static bool IsNoChord(ReadOnlySpan<char> text) => text.Equals("NC", StringComparison.OrdinalIgnoreCase)
        || text.Equals("N.C.", StringComparison.OrdinalIgnoreCase) || text.Equals("N.C", StringComparison.OrdinalIgnoreCase)
        || text.Equals("no chord", StringComparison.OrdinalIgnoreCase);

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

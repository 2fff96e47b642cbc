using System.Text;

namespace SheetPress.Theory;

/// <summary>Sentences with chords and roman numerals in square brackets, so that a page can set them as music.</summary>
public static class MarkedText
{
    /// <summary>A chord in such a sentence: "[Bbmaj7]".</summary>
    public static string Mark(Chord chord)
    {
        ArgumentNullException.ThrowIfNull(chord);
        return $"[{chord}]";
    }

    /// <summary>A roman numeral in such a sentence: "[bVI]".</summary>
    public static string Mark(RomanNumeral numeral)
    {
        ArgumentNullException.ThrowIfNull(numeral);
        return $"[{numeral}]";
    }

    /// <summary>The symbols of such brackets, parted by blanks; "V7/3 of ii" is one of them. Two blanks in a row part an empty one.</summary>
    public static IReadOnlyList<string> Symbols(string group)
    {
        ArgumentNullException.ThrowIfNull(group);
        var symbols = new List<string>(group.Split(' '));
        for (var i = 1; i + 1 < symbols.Count; i++)
        {
            if (symbols[i] != "of") continue;
            symbols[i - 1] += RomanNumeral.Of + symbols[i + 1];
            symbols.RemoveRange(i, 2);
        }
        return symbols;
    }

    /// <summary>The sentence in plain text, with real flat and sharp signs: "B♭maj7". Brackets that hold neither chord nor numeral stay.</summary>
    public static string Plain(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = new StringBuilder(text.Length);
        for (var at = 0; at < text.Length; at++)
        {
            var close = text[at] == '[' ? text.IndexOf(']', at) : -1;
            if (close < 0 || Symbol(text[(at + 1)..close]) is not { } symbol)
            {
                plain.Append(text[at]);
                continue;
            }
            plain.Append(symbol);
            at = close;
        }
        return plain.ToString();
    }

    private static string? Symbol(string text) =>
        Chord.TryParse(text, out var chord) ? chord.ToDisplayString()
        : RomanNumeral.TryParse(text, out var numeral) ? numeral.ToDisplayString()
        : null;
}

using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads a key: "C minor", "Eb major", "F# dorian", "Am", "Bb".</summary>
internal static class KeyReader
{
    /// <summary>The key, or null with the reason reported.</summary>
    public static Key? Read(LocatedText text, DiagnosticBag bag)
    {
        text = text.Trim();
        if (Key.TryParse(text.Value, out var key) || Key.TryParse(WithSigns(text.Value), out key)) return key;
        var value = text.Value;
        var upper = value.Length > 0 ? char.ToUpperInvariant(value[0]) + value[1..] : value;
        if (!NoteName.TryRead(upper, 0, out var tonic, out var end) || char.ToUpperInvariant(value[0]) is < 'A' or > 'G')
        {
            bag.Add(text.Span, FieldProblems.UnknownKeyTonic(value));
            return null;
        }
        var word = value[end..].Trim();
        var modes = Enum.GetNames<Mode>().Select(n => n.ToLowerInvariant());
        if (Enum.TryParse<Mode>(word, true, out var mode) || word is "" or "m" or "min" or "M" or "maj")
        {
            if (word is "m" or "min") mode = Mode.Minor;
            var easier = Key.Nearest(tonic, mode);
            bag.Add(text.Span, FieldProblems.KeyTooFar(value, easier.ToString()));
            return null;
        }
        var near = NearestWord.Find(word, modes);
        var wordStart = value.Length - word.Length;
        bag.Add(text.SpanOf(wordStart, word.Length), FieldProblems.UnknownMode(word, near, near is null ? null : $"{tonic} {near}"));
        return null;
    }

    // "E flat major", "f-sharp minor": the words as signs.
    private static string WithSigns(string text)
    {
        foreach (var (word, sign) in (ReadOnlySpan<(string, string)>)[("flat", "b"), ("sharp", "#")])
        {
            if (text.Length > 2 && text[1] is ' ' or '-' && text.AsSpan(2).StartsWith(word, StringComparison.OrdinalIgnoreCase)) return text[..1] + sign + text[(2 + word.Length)..];
        }
        return text;
    }
}

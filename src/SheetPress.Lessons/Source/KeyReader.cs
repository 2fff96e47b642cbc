using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads a key: "C minor", "Eb major", "F# dorian", "Am", "Bb".</summary>
internal static class KeyReader
{
    /// <summary>The key, or null with the reason reported.</summary>
    public static Key? Read(LocatedText text, DiagnosticBag bag)
    {
        text = text.Trim();
        var value = text.Value;
        if (Key.TryParse(value, out var key) || Key.TryParse(WithSigns(value), out key))
        {
            // In some countries a small letter alone says minor.
            var isLone = char.IsAsciiLetterLower(value[0]) && (value.Length == 1 || value[1..] is "b" or "#" or "♭" or "♯");
            if (isLone) bag.Add(text.Span, FieldProblems.KeyInSmallLetter(value, key.ToString(), Key.Nearest(key.Tonic, Mode.Minor).ToString()));
            return key;
        }
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
        if (word.Equals("blues", StringComparison.OrdinalIgnoreCase))
        {
            bag.Add(text.SpanOf(value.Length - word.Length, word.Length), FieldProblems.BluesForMode(tonic.ToString()));
            return null;
        }
        // "D dorian mode", "C major scale".
        var near = NearestWord.Find(word, modes) ?? NearestWord.Find(word.Split(' ')[0], modes);
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

using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads one chord symbol or roman numeral and moves it to the key to be played.</summary>
/// <param name="rekeying">The way from the written key.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class HarmonyReader(KeyTransposition rekeying, DiagnosticBag bag)
{
    /// <summary>Whether a text is written like a roman numeral: accidentals, then I or V in either case.</summary>
    public static bool LooksRoman(string text)
    {
        var at = 0;
        while (at < text.Length && text[at] is 'b' or '#' or '♭' or '♯') at++;
        return at < text.Length && text[at] is 'I' or 'V' or 'i' or 'v';
    }

    /// <summary>Whether a text says that there is no chord.</summary>
    public static bool IsNoChord(string text) => ChordParser.Parse(text).IsNoChord;

    /// <summary>The chord, or null with the reason reported.</summary>
    /// <param name="text">The symbol or numeral.</param>
    /// <param name="key">The key in force, as it is played.</param>
    public Chord? Read(LocatedText text, Key key)
    {
        if (LooksRoman(text.Value)) return ReadRoman(text, key);
        if (!text.Value.Any(char.IsAsciiLetter))
        {
            bag.Add(text.Span, ProgressionProblems.SignForChord(text.Value));
            return null;
        }
        var result = ChordParser.Parse(text.Value);
        if (result.Chord is { } chord) return rekeying.Move(chord);
        bag.Add(text.Span, ProgressionProblems.UnknownChord(text.Value, result.Message ?? "it is no chord", result.Suggestion));
        return null;
    }

    private Chord? ReadRoman(LocatedText text, Key key)
    {
        var result = RomanNumeralParser.Parse(text.Value);
        if (result.Numeral is { } numeral)
        {
            return numeral.ToChord(key).Readable;
        }
        bag.Add(text.Span, ProgressionProblems.UnknownRoman(text.Value, result.Message ?? "it is no numeral", result.Suggestion));
        return null;
    }
}

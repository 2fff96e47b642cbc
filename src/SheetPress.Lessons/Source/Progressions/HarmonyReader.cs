using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Reads one chord symbol or roman numeral and moves it to the key to be played.</summary>
/// <param name="rekeying">The way from the written key.</param>
/// <param name="bag">Where problems go.</param>
internal sealed class HarmonyReader(KeyTransposition rekeying, DiagnosticBag bag)
{
    // Quotation marks as word processors write them.
    private const string CurlyMarks = "“”„‘’‚«»";

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
    /// <param name="before">What stands before it in its bar; null at the front.</param>
    public Chord? Read(LocatedText text, Key key, string? before = null)
    {
        if (LooksRoman(text.Value)) return ReadRoman(text, key);
        var result = ChordParser.Parse(text.Value);
        if (result.Chord is { } chord)
        {
            if (result.IsAmbiguous) bag.Add(text.Span, ProgressionProblems.TwoMeanings(text.Value, chord.ToString(), OtherMeaning(chord)));
            return rekeying.Move(chord);
        }
        bag.Add(text.Span, WhatIsWrong(text.Value, before, result));
        return null;
    }

    private static string OtherMeaning(Chord chord) => chord.Root + (chord.Quality.Find(3) is null ? "add11" : "sus2");

    private static Problem WhatIsWrong(string text, string? before, ChordParseResult result)
    {
        if (text is "-" or "–" or "—" or ">" or "->" or "→" or ";" or "+") return ProgressionProblems.SignBetweenChords(text);
        if (text[0] is >= '1' and <= '7' && ChordParser.Parse("C" + text[1..]) is { Chord: { Bass: null } kind, IsAmbiguous: false })
        {
            return ProgressionProblems.NumberForChord(text, new RomanNumeral(text[0] - '0', 0, kind.Quality).ToDisplayString());
        }
        if (text.Any(c => CurlyMarks.Contains(c, StringComparison.Ordinal))) return ProgressionProblems.CurlyQuote(text);
        if (before is not null && ChordParser.Parse(before + text).Success) return ProgressionProblems.KindAlone(text, before + text);
        if (Parted(text) is { } parted) return ProgressionProblems.ChordsJoined(text, parted);
        if (!text.Any(char.IsAsciiLetter)) return ProgressionProblems.SignForChord(text);
        if (result.Suggestion is null && text.Length > 3 && text.All(char.IsLetter)) return ProgressionProblems.NameForChord(text);
        return ProgressionProblems.UnknownChord(text, result.Message ?? "it is no chord", result.Suggestion);
    }

    // "C-G-Am", "C>F", "C→F": all parts are chords.
    private static string? Parted(string text)
    {
        var parts = text.Split(['-', '–', '—', '>', '→', ';', '.'], StringSplitOptions.RemoveEmptyEntries);
        return parts.Length > 1 && parts.All(p => ChordParser.Parse(p).Success || RomanNumeral.TryParse(p, out _)) ? string.Join(" | ", parts) : null;
    }

    private Chord? ReadRoman(LocatedText text, Key key)
    {
        var result = RomanNumeralParser.Parse(text.Value);
        if (result.Numeral is { } numeral)
        {
            return numeral.ToChord(key).Readable;
        }
        if (Parted(text.Value) is { } parted)
        {
            bag.Add(text.Span, ProgressionProblems.ChordsJoined(text.Value, parted));
            return null;
        }
        if (text.Length > 3 && result.Suggestion is null && text.Value.All(char.IsLetter) && !text.Value.All(c => c is 'I' or 'V' or 'X' or 'i' or 'v' or 'x'))
        {
            bag.Add(text.Span, ProgressionProblems.NameForChord(text.Value));
            return null;
        }
        bag.Add(text.Span, ProgressionProblems.UnknownRoman(text.Value, result.Message ?? "it is no numeral", result.Suggestion));
        return null;
    }
}

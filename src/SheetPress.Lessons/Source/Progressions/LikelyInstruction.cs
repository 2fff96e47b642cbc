using System.Globalization;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Tells brackets that ask for something from rehearsal marks and names of parts, so that none is printed as a mark and not done.</summary>
internal static class LikelyInstruction
{
    private static readonly string[] Modulations = ["modulate", "modulation", "transpose", "key", "new key", "change key", "change to key", "go to key"];

    // Words of the trade for how it goes; the first words of the longer ones.
    private static readonly string[] Manners =
    [
        "rit", "ritardando", "ritenuto", "rall", "rallentando", "accel", "accelerando", "a tempo", "tempo primo", "poco", "molto", "slower", "faster", "slow down", "speed up",
        "swing", "swung", "straight", "shuffle", "half time", "half-time", "double time", "double-time", "crescendo", "cresc", "diminuendo", "dim", "decrescendo", "fade", "softer", "louder",
        "pp", "mp", "mf", "ff", "sfz",
    ];

    /// <summary>What is wrong with a mark that is none; null for one that may be a name.</summary>
    /// <param name="text">What stands in the bracket.</param>
    public static Problem? In(string text)
    {
        var lower = text.ToLowerInvariant().Trim();
        if (KeyIn(text) is { } key) return ProgressionProblems.UnknownMark(text, "key " + key);
        if (TempoIn(lower) is { } tempo) return ProgressionProblems.UnknownMark(text, "tempo " + tempo);
        if (MeterIn(lower) is { } meter) return ProgressionProblems.UnknownMark(text, meter);
        if (lower is "repeat" or "repeats" || TimesIn(lower) is not null) return ProgressionProblems.RepeatForMark(text, TimesIn(lower));
        if (lower.EndsWith(" clef", StringComparison.Ordinal) || lower.StartsWith("clef ", StringComparison.Ordinal)) return ProgressionProblems.ClefForMark(text);
        if (Array.Exists(Modulations, m => m != "key" && StartsWithWords(lower, m, out _))) return ProgressionProblems.UnknownKeyForMark(text);
        return Array.Exists(Manners, m => StartsWithWords(lower, m, out _)) ? ProgressionProblems.WordsForMark(text) : null;
    }

    // "modulate to D", "key: D", "key=G minor", "D major".
    private static string? KeyIn(string text)
    {
        foreach (var word in Modulations)
        {
            if (!StartsWithWords(text.ToLowerInvariant(), word, out var rest)) continue;
            var name = text[^rest.Length..];
            foreach (var filler in (ReadOnlySpan<string>)["to ", "into ", "the key of ", "of ", "key of "])
            {
                if (name.StartsWith(filler, StringComparison.OrdinalIgnoreCase)) name = name[filler.Length..];
            }
            if (Key.TryParse(name, out _)) return name;
        }
        return text.Contains(' ', StringComparison.Ordinal) && Key.TryParse(text, out _) ? text : null;
    }

    // "tempo: 90", "90 bpm", "quarter = 90", "quarter = dotted quarter".
    private static string? TempoIn(string text)
    {
        if (StartsWithWords(text, "tempo", out var rest) && rest.Length > 0 && (char.IsAsciiDigit(rest[^1]) || TempoReader.IsSoundEquation(rest))) return rest;
        if (text.EndsWith("bpm", StringComparison.Ordinal) && IsNumber(text[..^3].Trim())) return text[..^3].Trim();
        var sign = text.IndexOf('=', StringComparison.Ordinal);
        return sign > 0 && (IsNumber(text[(sign + 1)..].Trim()) || TempoReader.IsSoundEquation(text)) ? text : null;
    }

    // "common time", "meter 3/4", "time signature: 6/8".
    private static string? MeterIn(string text)
    {
        if (text is "common time") return "4/4";
        if (text is "cut time" or "alla breve") return "2/2";
        foreach (var word in (ReadOnlySpan<string>)["time signature", "meter", "metre", "time"])
        {
            if (StartsWithWords(text, word, out var rest) && IsMeter(rest)) return rest;
        }
        return text.EndsWith(" time", StringComparison.Ordinal) && IsMeter(text[..^5]) ? text[..^5] : null;

        static bool IsMeter(string text) => text.Length > 2 && char.IsAsciiDigit(text[0]) && text.Contains('/', StringComparison.Ordinal);
    }

    // "x3", "3x", "3 times", "repeat 3".
    private static string? TimesIn(string text)
    {
        if (StartsWithWords(text, "repeat", out var rest)) text = rest;
        foreach (var word in (ReadOnlySpan<string>)["times", "time", "x", "×"])
        {
            if (text.EndsWith(word, StringComparison.Ordinal) && IsNumber(text[..^word.Length].Trim())) return text[..^word.Length].Trim();
        }
        if (text.Length > 1 && text[0] is 'x' or '×' && IsNumber(text[1..].Trim())) return text[1..].Trim();
        return rest.Length > 0 && IsNumber(rest) ? rest : null;
    }

    // Whole words, with a colon, a point or an equals sign behind them perhaps.
    private static bool StartsWithWords(string text, string words, out string rest)
    {
        rest = "";
        if (!text.StartsWith(words, StringComparison.Ordinal)) return false;
        var after = text[words.Length..];
        if (after.Length > 0 && after[0] is not (' ' or ':' or '=' or '.' or ',')) return false;
        rest = after.TrimStart(' ', ':', '=', '.', ',');
        return true;
    }

    private static bool IsNumber(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out _);
}

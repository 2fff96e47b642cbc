using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>
/// Music within running text. Square brackets hold chord symbols or roman numerals, braces hold degrees, several of a kind parted
/// by spaces or bars: <c>[Cm7]</c>, <c>[Dm7b5 | G7 | Cm7]</c>, <c>[iiø7 V7 i]</c>, <c>{b3}</c>, <c>{R b3 5 b7}</c>. What does not
/// read as such stays as it was written.
/// </summary>
public static class MusicMarkup
{
    /// <summary>Splits a plain text into words and music.</summary>
    /// <param name="text">The text.</param>
    /// <param name="emphasis">Emphasis of all parts.</param>
    /// <param name="link">Link of all parts, or null.</param>
    public static ImmutableArray<Inline> Read(string text, Emphasis emphasis = Emphasis.None, string? link = null)
    {
        var parts = ImmutableArray.CreateBuilder<Inline>();
        var start = 0;
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] is not ('[' or '{')) continue;
            var close = text.IndexOf(text[at] == '[' ? ']' : '}', at);
            if (close < 0) continue;
            var music = ReadGroup(text[(at + 1)..close], isDegrees: text[at] == '{');
            if (music.IsEmpty) continue;
            AddText(text[start..at]);
            foreach (var part in music) parts.Add(part with { Emphasis = emphasis, Link = link });
            at = close;
            start = close + 1;
        }
        AddText(text[start..]);
        return parts.DrainToImmutable();

        void AddText(string words)
        {
            if (words.Length > 0) parts.Add(new TextInline(words) { Emphasis = emphasis, Link = link });
        }
    }

    private static ImmutableArray<Inline> ReadGroup(string content, bool isDegrees)
    {
        var parts = ImmutableArray.CreateBuilder<Inline>();
        foreach (var word in MarkedText.Symbols(content))
        {
            if (word.Length == 0) continue;
            Inline? part = word is "|" or "–" or "-" ? new TextInline(word == "-" ? "–" : word)
                : isDegrees ? (Degree.TryParse(word, out var degree) ? new DegreeInline(degree) : null)
                : ReadHarmony(word);
            if (part is null) return [];
            if (parts.Count > 0) parts.Add(new TextInline(" "));
            parts.Add(part);
        }
        return parts.DrainToImmutable();
    }

    private static Inline? ReadHarmony(string word) =>
        word[0] is >= 'A' and <= 'G' && Chord.TryParse(word, out var chord) ? new ChordInline(chord)
        // As it was written, but for a bass and a degree behind slashes that look alike.
        : RomanNumeral.TryParse(word, out var numeral) ? new RomanInline(numeral is { Bass: not null, Target: not null } ? numeral.ToString() : word)
        : null;
}

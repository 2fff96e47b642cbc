using System.Text;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Moves the chord symbols in the square brackets of running text, "[Dm7b5 | G7 | Cm7]", to another key. A bracket moves only when all
/// in it reads as chords or numerals, and never as the text of a Markdown link. Numerals and degrees hold in every key and stay.
/// </summary>
internal static class MarkupRekeyer
{
    /// <summary>The text in the key to be played.</summary>
    public static string Move(string text, KeyTransposition rekeying)
    {
        if (rekeying.IsNone() || !text.Contains('[', StringComparison.Ordinal)) return text;
        var moved = new StringBuilder(text.Length);
        var at = 0;
        while (at < text.Length)
        {
            var close = text[at] == '[' ? text.IndexOf(']', at) : -1;
            var isLink = close >= 0 && close + 1 < text.Length && text[close + 1] is '(' or '[' or ':';
            if (close < 0 || isLink || MoveGroup(text[(at + 1)..close], rekeying) is not { } group)
            {
                moved.Append(text[at++]);
                continue;
            }
            moved.Append('[').Append(group).Append(']');
            at = close + 1;
        }
        return moved.ToString();
    }

    private static string? MoveGroup(string group, KeyTransposition rekeying)
    {
        var words = MarkedText.Symbols(group).ToArray();
        for (var i = 0; i < words.Length; i++)
        {
            if (words[i] is "" or "|" or "-" or "–" || RomanNumeral.TryParse(words[i], out _)) continue;
            var result = ChordParser.Parse(words[i]);
            if (!result.Success) return null;
            if (result.Chord is { } chord) words[i] = rekeying.Move(chord).ToString();
        }
        return string.Join(' ', words);
    }
}

using System.Globalization;

namespace SheetPress.Engraving;

/// <summary>
/// Scripts written without spaces, in signs of one width: Chinese and Japanese. A line may end between any two signs but for those
/// that must not begin or end one (from memory of JIS X 4051).
/// </summary>
internal static class WideScripts
{
    // Small kana, the sign that lengthens a vowel, and repetition signs belong to what stands before them.
    private const string Trailing = "ぁぃぅぇぉっゃゅょゎァィゥェォッャュョヮヵヶーゝゞヽヾ々";

    /// <summary>Whether a line end of the source between two characters stands for nothing, where in other scripts it stands for a space.</summary>
    internal static bool JoinLines(char before, char after) => IsWide(before) && IsWide(after);

    /// <summary>Whether a line may end between two characters with no space between them, because one of them is of such a script.</summary>
    internal static bool CanBreak(char before, char after)
    {
        if (!IsWide(before) && !IsWide(after)) return false;
        if (IsOpening(before) || (char.IsPunctuation(after) && !IsOpening(after)) || char.IsLowSurrogate(after) || Trailing.Contains(after, StringComparison.Ordinal)) return false;
        return IsWide(before) || !char.IsPunctuation(before);
    }

    private static bool IsOpening(char c) => CharUnicodeInfo.GetUnicodeCategory(c) is UnicodeCategory.OpenPunctuation or UnicodeCategory.InitialQuotePunctuation;

    // Kana, ideographs, their punctuation, and the wide forms of other signs. Korean has spaces.
    private static bool IsWide(char c) => c is (>= '\u3001' and <= '\u30FF') or (>= '\u3400' and <= '\u9FFF') or (>= '\uF900' and <= '\uFAFF') or (>= '\uFF01' and <= '\uFF60');
}

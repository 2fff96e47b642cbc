namespace SheetPress.Theory;

/// <summary>The part of a numeral behind the letters: the suffix of the chord symbol without the m that small letters already say.</summary>
internal static class RomanSuffix
{
    internal static string Write(ChordQuality quality)
    {
        var shape = quality.Shape;
        var suffix = quality.Suffix;
        if (shape.IsDiminished) return string.Concat("°", suffix.AsSpan(3)).Replace("Maj", "maj", StringComparison.Ordinal);
        if (shape.IsAugmented) return string.Concat("+", suffix.AsSpan(3));
        if (!shape.IsMinor) return suffix;
        if (shape.FifthIs(-1) && shape.Seventh is { Alteration: -1 })
        {
            // "m7" and then "b5".
            var parts = quality.Parts;
            return "ø" + new SuffixParts(parts.Main[1..], parts.Changes.RemoveAt(0));
        }
        return suffix[1..].Replace("Maj", "maj", StringComparison.Ordinal);
    }

    /// <summary>The chord suffix that the text behind small letters stands for: "7" is "m7", "ø7" and "m7" say it themselves.</summary>
    internal static bool NeedsMinor(ReadOnlySpan<char> suffix)
    {
        if (suffix.IsEmpty) return true;
        foreach (var start in (string[])["dim", "hdim", "half-dim", "min", "mi", "°", "º", "˚", "ø", "Ø", "∅", "-", "−", "–"])
        {
            if (suffix.StartsWith(start, StringComparison.OrdinalIgnoreCase)) return false;
        }
        if (suffix[0] == 'o') return suffix.StartsWith("omit", StringComparison.OrdinalIgnoreCase);
        // A small m is minor, but not in "maj7" or "ma7".
        return suffix[0] != 'm' || suffix.StartsWith("ma", StringComparison.Ordinal) && !suffix.StartsWith("madd", StringComparison.Ordinal);
    }
}

namespace SheetPress.Engraving;

/// <summary>What a part of a chord suffix is, which decides how it is set.</summary>
internal enum ChordSuffixKind
{
    /// <summary>Letters of the quality: m, maj, sus, add.</summary>
    Quality,
    /// <summary>A plain number: 7, 6/9, 13.</summary>
    Number,
    /// <summary>A number with an accidental: b5, #11.</summary>
    Alteration,
    /// <summary>The circle of the diminished chord.</summary>
    Diminished,
    /// <summary>The slashed circle of the half-diminished chord.</summary>
    HalfDiminished,
    /// <summary>The triangle of the major seventh.</summary>
    MajorSeventh,
    /// <summary>A bracket.</summary>
    Bracket,
}

/// <summary>A part of a chord suffix.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Its text; for an alteration the number.</param>
/// <param name="Alteration">Half steps of an alteration.</param>
internal readonly record struct ChordSuffixPart(ChordSuffixKind Kind, string Text, int Alteration = 0)
{
    /// <summary>Splits a plain suffix such as "m7b5", "maj7#11", "6/9" or "7sus4".</summary>
    public static IReadOnlyList<ChordSuffixPart> Split(string suffix)
    {
        var parts = new List<ChordSuffixPart>();
        for (var at = 0; at < suffix.Length;)
        {
            var start = at;
            var c = suffix[at];
            if (IsAccidental(c))
            {
                var alteration = 0;
                while (at < suffix.Length && IsAccidental(suffix[at])) alteration += suffix[at++] is 'b' or '♭' ? -1 : 1;
                var number = at;
                while (at < suffix.Length && char.IsAsciiDigit(suffix[at])) at++;
                parts.Add(new ChordSuffixPart(ChordSuffixKind.Alteration, suffix[number..at], alteration));
            }
            else if (char.IsAsciiDigit(c))
            {
                while (at < suffix.Length && (char.IsAsciiDigit(suffix[at]) || (suffix[at] == '/' && at + 1 < suffix.Length && char.IsAsciiDigit(suffix[at + 1])))) at++;
                parts.Add(new ChordSuffixPart(ChordSuffixKind.Number, suffix[start..at]));
            }
            else if (Sign(c) is { } sign)
            {
                at++;
                parts.Add(new ChordSuffixPart(sign, suffix[start..at]));
            }
            else
            {
                while (at < suffix.Length && !IsAccidental(suffix[at]) && !char.IsAsciiDigit(suffix[at]) && Sign(suffix[at]) is null) at++;
                parts.Add(new ChordSuffixPart(ChordSuffixKind.Quality, suffix[start..at]));
            }
        }
        return parts;
    }

    // A b is a flat only in front of a number; no quality in use has the letter otherwise.
    private static bool IsAccidental(char c) => c is 'b' or '#' or '♭' or '♯';

    private static ChordSuffixKind? Sign(char c) => c switch
    {
        '°' => ChordSuffixKind.Diminished,
        'ø' => ChordSuffixKind.HalfDiminished,
        'Δ' => ChordSuffixKind.MajorSeventh,
        '(' or ')' => ChordSuffixKind.Bracket,
        _ => null,
    };
}

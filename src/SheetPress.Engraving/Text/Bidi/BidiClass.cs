using System.Globalization;
using System.Text;

namespace SheetPress.Engraving;

/// <summary>Classes of characters by the direction they are written in (Unicode Standard Annex #9, table 4), but for those of explicit formatting.</summary>
internal enum BidiClass : byte
{
    /// <summary>Left to right.</summary>
    L,
    /// <summary>Right to left.</summary>
    R,
    /// <summary>Right to left, Arabic letter.</summary>
    AL,
    /// <summary>European number.</summary>
    EN,
    /// <summary>Sign between European numbers, plus and minus.</summary>
    ES,
    /// <summary>Sign at a European number, such as a currency.</summary>
    ET,
    /// <summary>Arabic number.</summary>
    AN,
    /// <summary>Sign between numbers of either kind, comma and full stop.</summary>
    CS,
    /// <summary>Mark that goes with the character before it.</summary>
    NSM,
    /// <summary>Without a place of its own.</summary>
    BN,
    /// <summary>Paragraph separator.</summary>
    B,
    /// <summary>Segment separator.</summary>
    S,
    /// <summary>White space.</summary>
    WS,
    /// <summary>Other neutral.</summary>
    ON,
}

/// <summary>
/// Finds the class of a character from its general category, its block, and the characters that are exceptions in the Unicode
/// character database (version 15.0). Characters of explicit formatting count as <see cref="BidiClass.BN"/>.
/// </summary>
internal static class BidiClasses
{
    /// <summary>Whether any character of a text asks for more than left to right.</summary>
    internal static bool HasRightToLeft(ReadOnlySpan<char> text)
    {
        foreach (var c in text)
        {
            // Hebrew, Arabic and their neighbours, the marks of direction, presentation forms, and the high surrogates of the scripts above U+10800 and U+1E800.
            if (c is (>= '\u0590' and <= '\u08FF') or '\u200F' or (>= '\uFB1D' and <= '\uFDFF') or (>= '\uFE70' and <= '\uFEFC') or (>= '\uD802' and <= '\uD803') or '\uD83A' or '\uD83B') return true;
        }
        return false;
    }

    /// <summary>The class of a character.</summary>
    internal static BidiClass Of(Rune rune)
    {
        var c = rune.Value;
        // A flat or sharp belongs to the letter before it, whatever stands around: a deviation from the standard, where it is neutral.
        if (c is >= 0x266D and <= 0x266F) return BidiClass.NSM;
        if (c < 0x80 && Ascii(c) is { } ascii) return ascii;
        if (IsEuropeanNumber(c)) return BidiClass.EN;
        if (IsArabicNumber(c)) return BidiClass.AN;
        if (c is (>= 0x207A and <= 0x207B) or (>= 0x208A and <= 0x208B) or 0x2212 or 0xFB29 or (>= 0xFE62 and <= 0xFE63) or 0xFF0B or 0xFF0D) return BidiClass.ES;
        if (IsTerminator(c)) return BidiClass.ET;
        if (c is 0xA0 or 0x060C or 0x202F or 0x2044 or 0xFE50 or 0xFE52 or 0xFE55 or 0xFF0C or (>= 0xFF0E and <= 0xFF0F) or 0xFF1A) return BidiClass.CS;
        return ByCategory(c, Rune.GetUnicodeCategory(rune));
    }

    private static BidiClass? Ascii(int c) => c switch
    {
        >= '0' and <= '9' => BidiClass.EN,
        '+' or '-' => BidiClass.ES,
        '#' or '$' or '%' => BidiClass.ET,
        ',' or '.' or '/' or ':' => BidiClass.CS,
        '\t' or 0x0B or 0x1F => BidiClass.S,
        '\n' or '\r' or 0x1C or 0x1D or 0x1E => BidiClass.B,
        ' ' or 0x0C => BidiClass.WS,
        (>= 'A' and <= 'Z') or (>= 'a' and <= 'z') => BidiClass.L,
        < ' ' or 0x7F => BidiClass.BN,
        _ => BidiClass.ON,
    };

    private static bool IsEuropeanNumber(int c) =>
        c is 0xB2 or 0xB3 or 0xB9 or (>= 0x06F0 and <= 0x06F9) or 0x2070 or (>= 0x2074 and <= 0x2079) or (>= 0x2080 and <= 0x2089)
            or (>= 0x2488 and <= 0x249B) or (>= 0xFF10 and <= 0xFF19) or (>= 0x102E1 and <= 0x102FB) or (>= 0x1D7CE and <= 0x1D7FF);

    private static bool IsArabicNumber(int c) =>
        c is (>= 0x0600 and <= 0x0605) or (>= 0x0660 and <= 0x0669) or 0x066B or 0x066C or 0x06DD or 0x0890 or 0x0891 or 0x08E2
            or (>= 0x10D30 and <= 0x10D39) or (>= 0x10E60 and <= 0x10E7E);

    private static bool IsTerminator(int c) =>
        c is (>= 0xA2 and <= 0xA5) or 0xB0 or 0xB1 or 0x058F or 0x0609 or 0x060A or 0x066A or 0x09F2 or 0x09F3 or 0x09FB or 0x0AF1 or 0x0BF9
            or 0x0E3F or 0x17DB or (>= 0x2030 and <= 0x2034) or (>= 0x20A0 and <= 0x20CF) or 0x212E or 0x2213 or 0xA838 or 0xA839 or 0xFE5F
            or 0xFE69 or 0xFE6A or (>= 0xFF03 and <= 0xFF05) or 0xFFE0 or 0xFFE1 or 0xFFE5 or 0xFFE6;

    private static BidiClass ByCategory(int c, UnicodeCategory category) => category switch
    {
        UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark => BidiClass.NSM,
        UnicodeCategory.SpaceSeparator or UnicodeCategory.LineSeparator => BidiClass.WS,
        UnicodeCategory.ParagraphSeparator => BidiClass.B,
        UnicodeCategory.Control => c == 0x85 ? BidiClass.B : BidiClass.BN,
        UnicodeCategory.Format => c switch { 0x200E => BidiClass.L, 0x200F => BidiClass.R, 0x061C or 0x070F => BidiClass.AL, _ => BidiClass.BN },
        UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter or UnicodeCategory.TitlecaseLetter or UnicodeCategory.OtherLetter
            or UnicodeCategory.DecimalDigitNumber or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.LetterNumber
            or UnicodeCategory.PrivateUse or UnicodeCategory.Surrogate => Strong(c),
        UnicodeCategory.ModifierLetter => c is 0x02B9 or 0x02BA or (>= 0x02C6 and <= 0x02CF) or 0x02EC or 0x0374 ? BidiClass.ON : Strong(c),
        _ => c is 0x0606 or 0x0607 or 0x060E or 0x060F or 0x06DE or 0x06E9 or (>= 0xFD3E and <= 0xFD4F) or (>= 0xFDCF and <= 0xFDCF) or (>= 0xFDFD and <= 0xFDFF) ? BidiClass.ON
            : Strong(c) is var strong && strong != BidiClass.L ? strong
            : IsLettered(c) ? BidiClass.L : BidiClass.ON,
    };

    // Right-to-left scripts by block.
    private static BidiClass Strong(int c) => c switch
    {
        (>= 0x0590 and <= 0x05FF) or (>= 0x07C0 and <= 0x085F) or 0x200F or (>= 0xFB1D and <= 0xFB4F) => BidiClass.R,
        (>= 0x0600 and <= 0x07BF) or (>= 0x0860 and <= 0x08FF) or (>= 0xFB50 and <= 0xFDFF) or (>= 0xFE70 and <= 0xFEFF) => BidiClass.AL,
        (>= 0x10D00 and <= 0x10D3F) or (>= 0x10F30 and <= 0x10F6F) or (>= 0x1EC70 and <= 0x1ECBF) or (>= 0x1ED00 and <= 0x1ED4F) or (>= 0x1EE00 and <= 0x1EEFF) => BidiClass.AL,
        (>= 0x10800 and <= 0x10FFF) or (>= 0x1E800 and <= 0x1EFFF) => BidiClass.R,
        _ => BidiClass.L,
    };

    // Punctuation and symbols that belong to a left-to-right script or are letters in all but name.
    private static bool IsLettered(int c) =>
        c is 0x0482 or (>= 0x055A and <= 0x055F) or 0x0589 or 0x214F or (>= 0x2336 and <= 0x237A) or 0x2395 or (>= 0x249C and <= 0x24E9)
            or 0x26AC or (>= 0x2800 and <= 0x28FF) or (>= 0x3021 and <= 0x3029);
}

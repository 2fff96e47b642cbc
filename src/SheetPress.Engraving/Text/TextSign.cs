namespace SheetPress.Engraving;

/// <summary>Signs of music within text that come from the music font, since text fonts have none or have them in another hand.</summary>
internal static class TextSign
{
    private const int DoubleFlat = 0x1D12B;
    private const int DoubleSharp = 0x1D12A;
    private const int HalfNote = 0x1D15E;
    private const int QuarterNote = 0x1D15F;

    /// <summary>Staff spaces of a SMuFL font to the em of a text of matching size: four, as SMuFL has it.</summary>
    internal const double StaffSpacesPerEm = 4;

    /// <summary>The glyph name of the sign at an index, and how many chars it takes; null when there is none.</summary>
    internal static string? At(string text, int index, out int length)
    {
        length = 1;
        var c = text[index];
        if (IsDouble(text, index))
        {
            length = 2;
            return c == '♭' ? "csymAccidentalDoubleFlat" : "csymAccidentalDoubleSharp";
        }
        switch (c)
        {
            case '♭': return "csymAccidentalFlat";
            case '♯': return "csymAccidentalSharp";
            case '♮': return "csymAccidentalNatural";
            case '♩': return "metNoteQuarterUp";
            case '♪': return "metNote8thUp";
        }
        if (!char.IsHighSurrogate(c) || index + 1 >= text.Length || !char.IsLowSurrogate(text[index + 1])) return null;
        length = 2;
        return char.ConvertToUtf32(c, text[index + 1]) switch
        {
            DoubleFlat => "csymAccidentalDoubleFlat",
            DoubleSharp => "csymAccidentalDoubleSharp",
            HalfNote => "metNoteHalfUp",
            QuarterNote => "metNoteQuarterUp",
            _ => null,
        };
    }

    /// <summary>Whether two flats or two sharps in a row start at an index, which are one sign; of three the first stands alone.</summary>
    internal static bool IsDouble(string text, int index)
    {
        if (text[index] is not ('♭' or '♯')) return false;
        var end = index + 1;
        while (end < text.Length && text[end] == text[index]) end++;
        return (end - index) % 2 == 0;
    }

    /// <summary>
    /// How far a sign is raised from the baseline, in its staff spaces. A note has the middle of its head on the baseline of its glyph; in a
    /// line it stands on it. A double sharp, which is not as tall as a sharp, has its middle where a sharp has it.
    /// </summary>
    internal static double Rise(string glyph)
    {
        var bounds = MusicFont.Shipped[glyph].Bounds;
        if (IsNote(glyph)) return bounds.Bottom;
        if (glyph != "csymAccidentalDoubleSharp") return 0;
        var sharp = MusicFont.Shipped["csymAccidentalSharp"].Bounds;
        return (bounds.Top + bounds.Bottom - sharp.Top - sharp.Bottom) / 2;
    }

    /// <summary>Whether a glyph is a note rather than an accidental: a dot that follows it belongs to it.</summary>
    internal static bool IsNote(string glyph) => glyph.StartsWith("metNote", StringComparison.Ordinal);
}

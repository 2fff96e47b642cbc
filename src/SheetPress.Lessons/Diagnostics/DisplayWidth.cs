using System.Globalization;
using System.Text;

namespace SheetPress.Lessons;

/// <summary>
/// Columns that characters take on a terminal: none for combining signs and joiners, two for wide East Asian characters and pictographs,
/// else one. The wide ranges are the blocks of the Unicode standard (UAX 11, East Asian Width W and F), rounded to whole blocks.
/// </summary>
internal static class DisplayWidth
{
    private static readonly (int First, int Last)[] Wide =
    [
        (0x1100, 0x115F), (0x231A, 0x231B), (0x2E80, 0x303E), (0x3041, 0xA4CF), (0xA960, 0xA97F), (0xAC00, 0xD7A3), (0xF900, 0xFAFF),
        (0xFE30, 0xFE6F), (0xFF01, 0xFF60), (0xFFE0, 0xFFE6), (0x1F300, 0x1F64F), (0x1F680, 0x1F6FF), (0x1F900, 0x1F9FF), (0x20000, 0x3FFFD),
    ];

    /// <summary>Columns of one character.</summary>
    public static int Of(Rune rune)
    {
        if (rune.Value < 0x300) return 1;
        if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format) return 0;
        foreach (var (first, last) in Wide) if (rune.Value >= first && rune.Value <= last) return 2;
        return 1;
    }
}

using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>The figures of a meter, one number over the other.</summary>
internal static class MeterSigns
{
    /// <summary>The figures from x = 0.</summary>
    /// <param name="meter">The meter.</param>
    /// <param name="middle">y of the middle between the numbers.</param>
    /// <param name="origin">Origin of the marks.</param>
    public static List<Mark> Of(Meter meter, double middle, MarkOrigin origin)
    {
        var (upper, lower) = (Digits(meter.Beats), Digits(meter.BeatUnit));
        var width = Math.Max(Width(upper), Width(lower));
        var marks = new List<Mark>();
        Add(marks, upper, (width - Width(upper)) / 2, middle - 1, origin);
        Add(marks, lower, (width - Width(lower)) / 2, middle + 1, origin);
        return marks;
    }

    private static List<MusicGlyph> Digits(int number) =>
        [.. number.ToString(CultureInfo.InvariantCulture).Select(c => Ink.Glyph($"timeSig{c}"))];

    private static double Width(List<MusicGlyph> digits) => digits.Sum(d => d.Advance);

    private static void Add(List<Mark> marks, List<MusicGlyph> digits, double x, double y, MarkOrigin origin)
    {
        foreach (var digit in digits)
        {
            marks.Add(new GlyphMark(digit, new Point(x, y)) { Role = MarkRole.Meter, Origin = origin });
            x += digit.Advance;
        }
    }
}

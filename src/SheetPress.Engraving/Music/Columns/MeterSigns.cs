using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>The figures of a meter, one number over the other.</summary>
internal static class MeterSigns
{
    // On the five lines of a staff the middle line parts the numbers, each of which is two spaces high.
    private const double HalfHeight = 1;

    // A tab may have no line there: white between its numbers keeps them apart, and they are a little smaller where its lines are few.
    private const double TabGap = 0.3;
    private const double TabSize = 0.95;
    private const int FewLines = 4;

    /// <summary>The figures on a staff, from x = 0.</summary>
    /// <param name="meter">The meter.</param>
    /// <param name="origin">Origin of the marks.</param>
    public static List<Mark> OnStaff(Meter meter, MarkOrigin origin) => Of(meter, StaffSteps.Middle, 1, 0, origin);

    /// <summary>The figures on a tab that stands alone, from x = 0.</summary>
    /// <param name="meter">The meter.</param>
    /// <param name="strings">Strings of the tab.</param>
    /// <param name="origin">Origin of the marks.</param>
    public static List<Mark> OnTab(Meter meter, int strings, MarkOrigin origin) =>
        Of(meter, TabRhythm.BottomLine(strings) / 2, strings > FewLines ? 1 : TabSize, TabGap, origin);

    private static List<Mark> Of(Meter meter, double middle, double size, double gap, MarkOrigin origin)
    {
        var (upper, lower) = (Digits(meter.Beats), Digits(meter.BeatUnit));
        var (upperWidth, lowerWidth) = (Width(upper) * size, Width(lower) * size);
        var width = Math.Max(upperWidth, lowerWidth);
        var away = (HalfHeight * size) + (gap / 2);
        var marks = new List<Mark>();
        Add(marks, upper, (width - upperWidth) / 2, middle - away, size, origin);
        Add(marks, lower, (width - lowerWidth) / 2, middle + away, size, origin);
        return marks;
    }

    private static List<MusicGlyph> Digits(int number) =>
        [.. number.ToString(CultureInfo.InvariantCulture).Select(c => Ink.Glyph($"timeSig{c}"))];

    private static double Width(List<MusicGlyph> digits) => digits.Sum(d => d.Advance);

    private static void Add(List<Mark> marks, List<MusicGlyph> digits, double x, double y, double size, MarkOrigin origin)
    {
        foreach (var digit in digits)
        {
            marks.Add(new GlyphMark(digit, new Point(x, y), size) { Role = MarkRole.Meter, Origin = origin });
            x += digit.Advance * size;
        }
    }
}

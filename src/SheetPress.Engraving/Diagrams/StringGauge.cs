using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>How thick strings are drawn.</summary>
public static class StringGauge
{
    private const double Thickest = 0.62;
    private const double Thinnest = 0.16;

    /// <summary>
    /// Thickness of a string on paper in millimetres. At equal tension and length the diameter of a string goes inversely with its
    /// frequency (Mersenne's laws, 1636), so thickness follows from the tuning; the lowest string is 0.62 mm and none below 0.16 mm.
    /// </summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="stringNumber">Number of the string.</param>
    public static double Thickness(Instrument instrument, int stringNumber)
    {
        var lowest = double.PositiveInfinity;
        foreach (var pitch in instrument.OpenStrings) lowest = Math.Min(lowest, pitch.Frequency);
        return Math.Max(Thinnest, Thickest * lowest / instrument.OpenStrings[stringNumber - 1].Frequency);
    }
}

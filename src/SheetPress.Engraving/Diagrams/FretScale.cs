namespace SheetPress.Engraving;

/// <summary>Where frets lie along a diagram.</summary>
public sealed class FretScale
{
    private readonly double[] _lines;
    private readonly int _firstFret;

    private FretScale(int firstFret, double[] lines)
    {
        _firstFret = firstFret;
        _lines = lines;
    }

    /// <summary>
    /// Frets in true proportion: fret n of a string of length L lies L (1 - 2^(-n/12)) from the nut (equal temperament), and the
    /// stretch shown is brought to a length.
    /// </summary>
    /// <param name="firstFret">Lowest fret shown, counted from the nut, 1 or more.</param>
    /// <param name="lastFret">Highest fret shown.</param>
    /// <param name="length">Length from the line before the first fret to the last fret.</param>
    public static FretScale True(int firstFret, int lastFret, double length)
    {
        var lines = new double[lastFret - firstFret + 2];
        var (start, end) = (Distance(firstFret - 1), Distance(lastFret));
        for (var i = 0; i < lines.Length; i++) lines[i] = (Distance(firstFret - 1 + i) - start) / (end - start) * length;
        return new FretScale(firstFret, lines);
    }

    /// <summary>Frets at equal distances.</summary>
    /// <param name="firstFret">Lowest fret shown, counted from the nut, 1 or more.</param>
    /// <param name="lastFret">Highest fret shown.</param>
    /// <param name="length">Length from the line before the first fret to the last fret.</param>
    public static FretScale Even(int firstFret, int lastFret, double length)
    {
        var lines = new double[lastFret - firstFret + 2];
        for (var i = 0; i < lines.Length; i++) lines[i] = length * i / (lines.Length - 1);
        return new FretScale(firstFret, lines);
    }

    /// <summary>Distance of the nut to a fret as a share of the string.</summary>
    private static double Distance(int fret) => 1 - Math.Pow(2, -fret / 12.0);

    /// <summary>Place of a fret's wire; the one before the first fret is at 0.</summary>
    /// <param name="fret">A fret shown, or the one before the first.</param>
    public double Wire(int fret) => _lines[fret - _firstFret + 1];

    /// <summary>The middle of the space behind a fret, where the finger goes.</summary>
    /// <param name="fret">A fret shown.</param>
    public double Middle(int fret) => (Wire(fret - 1) + Wire(fret)) / 2;

    /// <summary>Width of the narrowest space.</summary>
    public double Narrowest => _lines[^1] - _lines[^2];
}

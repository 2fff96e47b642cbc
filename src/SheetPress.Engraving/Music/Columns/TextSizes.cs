namespace SheetPress.Engraving;

/// <summary>Sizes of the kinds of text in music, as em in staff spaces; none comes out below seven points.</summary>
internal sealed class TextSizes(double staffSpaceMillimetres)
{
    private const double MillimetresPerPoint = 25.4 / 72;
    private const double SmallestPoints = 7;

    /// <summary>Seven points in staff spaces.</summary>
    public double Smallest { get; } = SmallestPoints * MillimetresPerPoint / staffSpaceMillimetres;

    /// <summary>Root of a chord symbol: its suffix, at three quarters, must still be large enough.</summary>
    public double Chord => Math.Max(2.7, Smallest / ChordSymbolText.SmallShare);

    /// <summary>Fret numbers: digits a little lower than the space between tab lines.</summary>
    public double Fret => Math.Max(1.95, Smallest);

    /// <summary>Degree names and counting syllables.</summary>
    public double Row => Math.Max(1.85, Smallest);

    /// <summary>Roman numerals.</summary>
    public double Roman => Math.Max(2.1, Smallest / ChordSymbolText.SmallShare);

    /// <summary>Tempo words, endings, rehearsal letters and signs of navigation.</summary>
    public double Direction => Math.Max(2.2, Smallest);

    /// <summary>Words of expression.</summary>
    public double Words => Math.Max(2.0, Smallest);

    /// <summary>Technique letters, words of technique spans, measure numbers.</summary>
    public double Small => Math.Max(1.6, Smallest);

    /// <summary>Amounts with a fraction, whose figures, two fifths of the em, must still be read at a music stand: at least 1.4 mm.</summary>
    public double Fraction => Math.Max(2.3, 1.5 * Smallest);
}

using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Position dots of the fingerboard.</summary>
public static class Inlays
{
    /// <summary>
    /// How many dots a fret has: 0, 1 or 2. Common practice: 3 5 7 9, two at 12, and an octave higher again; on ukulele, mandolin
    /// and banjo 10 takes the place of 9.
    /// </summary>
    /// <param name="family">Family of the instrument.</param>
    /// <param name="fret">Fret counted from the nut, also with a capo.</param>
    public static int Count(InstrumentFamily family, int fret)
    {
        var upper = family is InstrumentFamily.Ukulele or InstrumentFamily.Mandolin or InstrumentFamily.Banjo ? 10 : 9;
        if (fret < 1) return 0;
        var within = ((fret - 1) % 12) + 1;
        return within == 12 ? 2 : within is 3 or 5 or 7 || within == upper ? 1 : 0;
    }
}

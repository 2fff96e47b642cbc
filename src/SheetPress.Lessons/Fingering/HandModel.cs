using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// The fretting hand on one neck: which finger reaches which fret from a hand position, in real distances.
/// A hand position is the fret under the index finger, counted from the capo, 1 and up.
/// </summary>
/// <remarks>
/// Common practice: one finger a fret spans four frets; in the lowest positions of a long scale the hand spans three frets with
/// fingers 1-2-4, since four would stretch it too far. Where that changes follows from the distance in millimetres.
/// </remarks>
internal sealed class HandModel
{
    /// <summary>Widest comfortable distance from index to little finger, in millimetres (from memory of teaching practice).</summary>
    public const double ComfortableSpan = 105;

    private readonly double[] _fretMillimetres;

    public HandModel(Instrument instrument)
    {
        Instrument = instrument;
        HighestFret = instrument.PlayableFrets;
        _fretMillimetres = new double[HighestFret + 6];
        for (var fret = 0; fret < _fretMillimetres.Length; fret++) _fretMillimetres[fret] = instrument.FretDistance(instrument.Capo + fret);
    }

    public Instrument Instrument { get; }

    public int HighestFret { get; }

    /// <summary>Widest distance the hand can hold, in millimetres; beyond it a grip is refused. It grows with level.</summary>
    public static double WidestSpan(int level) => 112 + (4 * level);

    /// <summary>The highest fret at which a level (1 to 5) is at home; the advanced are at home on the whole neck.</summary>
    public static int HomeFret(int level) => level switch { <= 1 => 5, 2 => 7, 3 => 9, 4 => 12, _ => 36 };

    /// <summary>Millimetres along the neck between two frets.</summary>
    public double Distance(int fretA, int fretB) => Math.Abs(_fretMillimetres[fretA] - _fretMillimetres[fretB]);

    /// <summary>Whether the four fingers can lie one a fret at a hand position.</summary>
    public bool OneFingerAFret(int hand) => Distance(hand, hand + 3) <= ComfortableSpan;

    /// <summary>
    /// Frets above the hand position at which a finger (1 to 4) lies without stretching. Finger 3 is used in a three-fret hand only
    /// when the little finger stretches a fret beyond it.
    /// </summary>
    public int Reach(int finger, int hand) => finger switch
    {
        1 => 0,
        2 => 1,
        3 => 2,
        _ => OneFingerAFret(hand) ? 3 : 2,
    };

    /// <summary>Whether a finger is in use at a hand position, for a hand that can hold a span in millimetres.</summary>
    public bool Uses(int finger, int hand, double span) => finger != 3 || OneFingerAFret(hand) || Distance(hand, hand + 3) <= span;
}

using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>Places on a five-line staff: steps of half a staff space above the middle line, and the y of a step.</summary>
internal static class StaffSteps
{
    /// <summary>y of the middle line.</summary>
    public const double Middle = 2;

    /// <summary>y of the bottom line.</summary>
    public const double BottomLine = 4;

    /// <summary>Step of the top line; -4 is the bottom line.</summary>
    public const int TopLineStep = 4;

    /// <summary>Step of the first ledger line above the staff; -6 is the first below it.</summary>
    public const int FirstLedger = 6;

    // Written D3 is the middle line of the bass clef, written B4 that of the treble clef.
    private const int BassMiddle = (3 * 7) + (int)Letter.D;
    private const int TrebleMiddle = (4 * 7) + (int)Letter.B;

    /// <summary>The step of a sounding pitch.</summary>
    public static int Of(Pitch sounding, Clef clef, Instrument instrument) => clef switch
    {
        Clef.Bass => instrument.ToWritten(sounding).StaffStep - BassMiddle,
        Clef.Treble => instrument.ToWritten(sounding).StaffStep - TrebleMiddle,
        // The small 8 says that the staff is read an octave above the sound, whatever the instrument.
        _ => sounding.StaffStep + 7 - TrebleMiddle,
    };

    /// <summary>The y of a step, the top line being 0.</summary>
    public static double Y(int step) => Middle - (step / 2.0);

    /// <summary>Whether a step is a line (ledger lines included).</summary>
    public static bool IsLine(int step) => step % 2 == 0;
}

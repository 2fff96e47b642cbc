using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Accidentals of a key signature on the staff.</summary>
internal static class KeySignatureSigns
{
    // Steps in the treble clef in the order they are written: sharps F C G D A E B, flats B E A D G C F.
    private static ReadOnlySpan<sbyte> SharpSteps => [4, 1, 5, 2, -1, 3, 0];
    private static ReadOnlySpan<sbyte> FlatSteps => [0, 3, -1, 2, -2, 1, -3];

    // The same letters lie two steps lower on the bass staff.
    private const int BassOffset = -2;

    // Flats and naturals tuck into each other a little; sharps stand edge to edge.
    private const double SharpPitch = 1.02;
    private const double FlatPitch = 0.92;
    private const double NaturalPitch = 0.8;

    /// <summary>
    /// The signs of a signature from x = 0. A signature without sharps and flats cancels the one before with naturals; between
    /// other signatures the new one is enough (modern practice).
    /// </summary>
    /// <param name="fifths">Sharps (positive) or flats (negative).</param>
    /// <param name="cancelled">The signature it replaces, 0 when none is to be cancelled.</param>
    /// <param name="clef">The clef.</param>
    /// <param name="origin">Origin of the marks.</param>
    public static List<Mark> Of(int fifths, int cancelled, Clef clef, MarkOrigin origin)
    {
        var (count, name, pitch) = fifths switch
        {
            > 0 => (fifths, "accidentalSharp", SharpPitch),
            < 0 => (-fifths, "accidentalFlat", FlatPitch),
            _ => (Math.Abs(cancelled), "accidentalNatural", NaturalPitch),
        };
        var sharps = fifths > 0 || (fifths == 0 && cancelled > 0);
        var marks = new List<Mark>(count);
        for (var i = 0; i < count; i++)
        {
            var step = (sharps ? SharpSteps[i] : FlatSteps[i]) + (clef == Clef.Bass ? BassOffset : 0);
            marks.Add(Ink.At(name, i * pitch, StaffSteps.Y(step), MarkRole.KeySignature, origin));
        }
        return marks;
    }
}

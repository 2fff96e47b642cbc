using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Which heads of a chord stand on the far side of the stem.</summary>
internal static class ChordShape
{
    /// <summary>
    /// Common practice: of a second the upper note stands right of the stem. With the stem up one starts from the bottom, with
    /// the stem down from the top, and every note a second (or unison) from an undisplaced one is displaced.
    /// </summary>
    /// <param name="steps">Steps from low to high.</param>
    /// <param name="direction">Direction of the stem (or of the one a whole note would have).</param>
    public static bool[] Displaced(ImmutableArray<int> steps, StemDirection direction)
    {
        var displaced = new bool[steps.Length];
        if (direction == StemDirection.Up)
        {
            for (var i = 1; i < steps.Length; i++) displaced[i] = !displaced[i - 1] && steps[i] - steps[i - 1] < 2;
        }
        else
        {
            for (var i = steps.Length - 2; i >= 0; i--) displaced[i] = !displaced[i + 1] && steps[i + 1] - steps[i] < 2;
        }
        return displaced;
    }
}

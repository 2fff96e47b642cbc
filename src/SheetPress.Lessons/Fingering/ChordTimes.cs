using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Finds the chord that sounds at a time.</summary>
internal static class ChordTimes
{
    /// <summary>Index of the last chord that has started at a time; -1 before the first.</summary>
    /// <param name="starts">Starts of the chords in order.</param>
    /// <param name="time">The time, in quarter notes.</param>
    public static int IndexAt(ImmutableArray<Fraction> starts, Fraction time)
    {
        var at = starts.BinarySearch(time);
        return at >= 0 ? at : ~at - 1;
    }
}

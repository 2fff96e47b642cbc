using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The outcome of fingering a line.</summary>
/// <param name="Line">The line with string, fret and finger on every tone; the line as given where it failed.</param>
/// <param name="FailedNote">Index of the first note that cannot be played; -1 when all can.</param>
/// <param name="Reason">Why it cannot be played; empty when all can.</param>
public sealed record FingeringResult(Line Line, int FailedNote, string Reason);

/// <summary>Finds string, fret and finger for every note of a line by a shortest path over the whole line.</summary>
public static class LineFingering
{
    /// <summary>Fingers a line.</summary>
    /// <param name="line">The line; tones that have a position already keep it.</param>
    /// <param name="instrument">The instrument.</param>
    /// <param name="neck">What the author asked for.</param>
    /// <param name="level">Level 1 to 5.</param>
    public static FingeringResult Apply(Line line, Instrument instrument, NeckRequest neck, int level) => throw new NotImplementedException();
}

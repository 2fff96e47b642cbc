using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The outcome of fingering a line.</summary>
/// <param name="Line">The line with string, fret and finger on every tone; the line as given where it failed.</param>
/// <param name="FailedNote">Index of the first note that cannot be played; -1 when all can.</param>
/// <param name="Reason">Why it cannot be played; empty when all can.</param>
public sealed record FingeringResult(Line Line, int FailedNote, string Reason)
{
    /// <summary>What the hand has to do; null where it failed.</summary>
    public FingeringSummary? Summary { get; init; }
}

/// <summary>What the fretting hand does over a line.</summary>
/// <param name="LowestPosition">Lowest hand position (fret under the index finger).</param>
/// <param name="HighestPosition">Highest hand position.</param>
/// <param name="Shifts">How often the hand moves along the neck.</param>
/// <param name="WidestStretch">Widest distance held at once or within one hand position, in millimetres.</param>
/// <param name="HardestNote">Index of the note that is hardest to reach.</param>
public sealed record FingeringSummary(int LowestPosition, int HighestPosition, int Shifts, double WidestStretch, int HardestNote);

using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>A place for one note: when it sounds, over which chord, and the marks its rhythm asks for.</summary>
/// <param name="Start">Quarter notes from the start of the progression.</param>
/// <param name="Duration">Quarter notes, above zero.</param>
/// <param name="Weight">How strong the place is in its measure.</param>
/// <param name="Cell">The cell of the rhythm it comes from; null where a chord change struck it anew.</param>
internal readonly record struct Slot(Fraction Start, Fraction Duration, MetricWeight Weight, RhythmCell? Cell)
{
    /// <summary>End in quarter notes from the start of the progression.</summary>
    public Fraction End => Start + Duration;
}

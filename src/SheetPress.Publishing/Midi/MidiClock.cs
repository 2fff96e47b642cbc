using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Ticks of a MIDI file: 960 a quarter note, which every value down to a sixty-fourth, triplets and quintuplets divide; others are rounded where they stand, so that errors never add up.</summary>
internal static class MidiClock
{
    public const int TicksPerQuarter = 960;

    /// <summary>The nearest tick of a time in quarter notes, halves up.</summary>
    public static long TickOf(Fraction quarters) => ((quarters * TicksPerQuarter) + new Fraction(1, 2)).Floor;
}

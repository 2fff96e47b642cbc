using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// How the last chord of an exercise comes to rest: its figure is played until a beat in the second half of the chord, and
/// from there the root is held. Some notes of the figure come before, where the rhythm has room for them.
/// </summary>
internal static class Resting
{
    /// <summary>Notes of the figure that come before the held root, when there is room.</summary>
    public const int UsualNotesBefore = 3;

    /// <summary>The slots of the last chord, the last of them held to the chord's end.</summary>
    /// <param name="slots">The slots of the last chord.</param>
    /// <param name="end">The chord's end.</param>
    /// <param name="notesBefore">How many come before the held note, at least; 0 to hold the first.</param>
    public static ImmutableArray<Slot> Shorten(ImmutableArray<Slot> slots, Fraction end, int notesBefore = UsualNotesBefore)
    {
        if (slots.Length == 0) return slots;
        if (notesBefore == 0) return [Held(slots[0], end)];
        var half = slots[0].Start + ((end - slots[0].Start) / 2);
        var rest = slots.Length - 1;
        for (var i = Math.Min(notesBefore, slots.Length - 1); i < slots.Length; i++)
        {
            if (slots[i].Start < half || slots[i].Weight == MetricWeight.OffBeat) continue;
            rest = i;
            break;
        }
        return [.. slots[..rest], Held(slots[rest], end)];
    }

    // The held note is played plainly, whatever the rhythm marks there.
    private static Slot Held(Slot slot, Fraction end) => slot with
    {
        Duration = end - slot.Start,
        Cell = slot.Cell is { } from ? new RhythmCell { Start = from.Start, Duration = from.Duration, Count = from.Count } : null,
    };

    /// <summary>The root in the octave nearest to the note before, on the neck; not that note over again if it is an upper octave.</summary>
    /// <param name="step">The last chord.</param>
    /// <param name="planned">Its planned root.</param>
    /// <param name="previous">The note before.</param>
    /// <param name="range">What can be played.</param>
    public static NamedPitch Root(HarmonyStep step, Pitch planned, Pitch previous, NeckRange range)
    {
        var best = planned;
        if (previous.Name == planned.Name) return new NamedPitch(planned, Degree.Root);
        for (var octaves = 1; octaves <= 2; octaves++)
        {
            var higher = planned + (Interval.Octave * octaves);
            if (!range.CanPlay(higher.MidiNumber)) continue;
            if (Math.Abs(higher.MidiNumber - previous.MidiNumber) < Math.Abs(best.MidiNumber - previous.MidiNumber)) best = higher;
        }
        return new NamedPitch(best, best == planned ? Degree.Root : new Degree(1 + best.StaffStep - planned.StaffStep));
    }
}

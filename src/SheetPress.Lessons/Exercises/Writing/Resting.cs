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

    // Half steps by which another octave has to lie nearer: a line comes home to the root it started its last chord from.
    private const double AwayFromPlan = 3;

    private const Articulations OfHeldNotes = Articulations.Accent | Articulations.Marcato | Articulations.Tenuto | Articulations.Vibrato;

    /// <summary>The slots of the last chord, the last of them held to the chord's end.</summary>
    /// <param name="slots">The slots of the last chord.</param>
    /// <param name="end">The chord's end.</param>
    /// <param name="notesBefore">How many come before the held note, where a beat is left behind them; 0 to hold the first.</param>
    public static ImmutableArray<Slot> Shorten(ImmutableArray<Slot> slots, Fraction end, int notesBefore = UsualNotesBefore)
    {
        if (slots.Length == 0) return slots;
        if (notesBefore == 0) return [Held(slots[0], end)];
        var half = slots[0].Start + ((end - slots[0].Start) / 2);
        bool IsRestingPlace(int i) => slots[i].Start >= half && slots[i].Weight != MetricWeight.OffBeat;
        // Where no beat is left behind so many notes, an earlier beat is a better end than a note between beats.
        var rest = Enumerable.Range(0, slots.Length).Where(IsRestingPlace).OrderBy(i => i < notesBefore).ThenBy(i => Math.Abs(i - notesBefore)).FirstOrDefault(slots.Length - 1);
        return [.. slots[..rest], Held(slots[rest], end)];
    }

    // The root that is held is struck as its rhythm says, but sounds plainly: no ghost or dead note, and nothing that asks for a short one
    // where it is held for longer. A popped one is for the thumb, since it is a root.
    private static Slot Held(Slot slot, Fraction end)
    {
        var held = slot with { Duration = end - slot.Start };
        if (slot.Cell is not { } cell) return held;
        var articulations = held.Duration > slot.Duration ? cell.Marks.Articulations & OfHeldNotes : cell.Marks.Articulations;
        return held with { Cell = cell with { Marks = new(articulations, cell.Marks.Stroke == Stroke.Pop ? Stroke.Thumb : cell.Marks.Stroke) } };
    }

    /// <summary>The root to rest on: on the neck, near the note before, but not that very note again when another octave is as good.</summary>
    /// <param name="planned">The planned root of the last chord.</param>
    /// <param name="previous">The note before.</param>
    /// <param name="range">What can be played.</param>
    public static NamedPitch Root(Pitch planned, Pitch previous, NeckRange range)
    {
        var best = default(Pitch?);
        var lowest = double.MaxValue;
        for (var pitch = Pitch.AtOrAbove(planned.Name, range.Lowest); pitch.MidiNumber <= range.Highest; pitch += Interval.Octave)
        {
            if (!range.CanPlay(pitch.MidiNumber)) continue;
            var again = pitch.MidiNumber == previous.MidiNumber ? 13 : 0;
            var cost = Math.Abs(pitch.MidiNumber - previous.MidiNumber) + again + range.Strain(pitch.MidiNumber) + (pitch == planned ? 0 : AwayFromPlan);
            if (cost >= lowest) continue;
            lowest = cost;
            best = pitch;
        }
        var root = best ?? planned;
        var octaves = (root.StaffStep - planned.StaffStep) / 7;
        return new NamedPitch(root, new Degree(1 + (7 * Math.Max(0, octaves))));
    }
}

using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The named ways to lead from one chord into the first note of the next.</summary>
internal static class Leads
{
    /// <summary>The names, as options offer them.</summary>
    public static ImmutableArray<string> Names { get; } =
    [
        "chromatic-below", "chromatic-above", "scale-below", "scale-above", "double-chromatic-below", "double-chromatic-above", "enclosure", "dominant",
    ];

    /// <summary>What each name means, in one line.</summary>
    public const string Explained = "a half or scale step from below or above, two half steps, both neighbours (enclosure), or the dominant of the next root";

    /// <summary>The lead of a name. Where it would leave the neck it comes from the other side.</summary>
    public static LeadIn Of(string name) => (step, target, room, range) =>
    {
        var notes = Notes(name, step, target, range);
        if (Array.Exists(notes, n => !range.CanPlay(n.MidiNumber))) notes = Notes(Mirrored(name), step, target, range);
        return Named(step, notes, room);
    };

    /// <summary>Scale steps that run into the target, from the other side where the neck ends.</summary>
    /// <param name="count">How many.</param>
    /// <param name="fromBelow">Whether they come from below.</param>
    /// <param name="overshoot">Whether they pass the target by a step and come back to it.</param>
    public static LeadIn Run(int count, bool fromBelow, bool overshoot) => (step, target, room, range) =>
    {
        var length = Math.Min(count, room);
        var notes = RunNotes(step, target, length, fromBelow, overshoot);
        if (Array.Exists(notes, n => !range.CanPlay(n.MidiNumber))) notes = RunNotes(step, target, length, !fromBelow, overshoot);
        return Named(step, notes, room);
    };

    private static Pitch[] Notes(string name, HarmonyStep step, Pitch target, NeckRange range) => name switch
    {
        "chromatic-above" => [ApproachNotes.ChromaticAbove(target)],
        "scale-below" => [ApproachNotes.ScaleBelow(step, target)],
        "scale-above" => [ApproachNotes.ScaleAbove(step, target)],
        "double-chromatic-below" => [ApproachNotes.ChromaticBelow(ApproachNotes.ChromaticBelow(target)), ApproachNotes.ChromaticBelow(target)],
        "double-chromatic-above" => [ApproachNotes.ChromaticAbove(ApproachNotes.ChromaticAbove(target)), ApproachNotes.ChromaticAbove(target)],
        "enclosure" => [ApproachNotes.ScaleAbove(step, target), ApproachNotes.ChromaticBelow(target)],
        "dominant" => [ApproachNotes.Dominant(target, below: range.CanPlay(target.MidiNumber - 5))],
        _ => [ApproachNotes.ChromaticBelow(target)],
    };

    private static string Mirrored(string name) => name.EndsWith("below", StringComparison.Ordinal) ? name[..^5] + "above" : name.EndsWith("above", StringComparison.Ordinal) ? name[..^5] + "below" : "scale-above";

    private static Pitch[] RunNotes(HarmonyStep step, Pitch target, int length, bool fromBelow, bool overshoot)
    {
        var notes = new List<Pitch>();
        var at = target;
        if (overshoot)
        {
            // The step too far, and before it the target's own pitch on the way there.
            notes.Add(fromBelow ? ApproachNotes.ScaleAbove(step, target) : ApproachNotes.ScaleBelow(step, target));
            notes.Add(target);
        }
        while (notes.Count < length)
        {
            at = fromBelow ? StepDown(step, at) : StepUp(step, at);
            notes.Add(at);
        }
        notes.Reverse();
        return [.. notes.TakeLast(length)];
    }

    private static Pitch StepDown(HarmonyStep step, Pitch from) => Nearest(step, from, -1) ?? ApproachNotes.ScaleBelow(step, from);

    private static Pitch StepUp(HarmonyStep step, Pitch from) => Nearest(step, from, 1) ?? ApproachNotes.ScaleAbove(step, from);

    private static Pitch? Nearest(HarmonyStep step, Pitch from, int direction)
    {
        for (var distance = 1; distance <= 4; distance++)
        {
            var midi = from.MidiNumber + (direction * distance);
            foreach (var degree in step.Scale)
            {
                var note = step.Chord.NoteOf(degree);
                if (note.PitchClass == NoteMath.Modulo(midi, 12)) return Pitch.AtOrAbove(note, midi);
            }
        }
        return null;
    }

    private static ImmutableArray<NamedPitch> Named(HarmonyStep step, Pitch[] notes, int room) =>
        [.. notes.TakeLast(room).Select(n => new NamedPitch(n, step.NameOf(n.Name)))];
}

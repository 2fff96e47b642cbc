using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>How the tones of a voicing are played.</summary>
internal enum VoicingPlay
{
    /// <summary>Struck together.</summary>
    Together,
    /// <summary>One after the other from low to high.</summary>
    Broken,
    /// <summary>One after the other, left to ring into each other.</summary>
    Ringing,
}

/// <summary>
/// Chords held by the hand, each voicing led to the next by small steps (see <see cref="VoicingPath"/>). The last chord is struck
/// once and held.
/// </summary>
internal static class VoicingLine
{
    /// <summary>Writes the line; null when some chord has no voicing that can be held.</summary>
    /// <param name="context">The exercise.</param>
    /// <param name="rhythmOf">The rhythm of a meter.</param>
    /// <param name="play">How the tones are played.</param>
    /// <param name="voicingsOf">The voicings that a chord can have.</param>
    /// <param name="oneRegion">Whether the hand is to stay in one region of the neck.</param>
    public static Line? Write(ExerciseContext context, Func<Meter, RhythmPattern> rhythmOf, VoicingPlay play, Func<HarmonyStep, IEnumerable<Voicing>> voicingsOf, bool oneRegion = true)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, rhythmOf);
        var steps = track.Sounding.Where(s => !slots[s.Index].IsEmpty).ToList();
        var choices = steps.ConvertAll(s => voicingsOf(s).ToImmutableArray());
        if (choices.Exists(c => c.IsEmpty)) return null;
        var writer = new LineWriter();
        var chosen = VoicingPath.Best(choices, oneRegion);
        for (var i = 0; i < steps.Count; i++)
        {
            var step = steps[i];
            var own = slots[step.Index];
            if (play == VoicingPlay.Together) WriteTogether(writer, step.IsFinal ? Resting.Shorten(own, step.End, 0) : own, chosen[i]);
            else WriteBroken(writer, step.IsFinal ? Resting.Shorten(own, step.End) : own, chosen[i], step.IsFinal ? RestingTone(step, chosen[i]) : null, play == VoicingPlay.Ringing);
        }
        return writer.Finish(context.Progression.Length);
    }

    private static void WriteTogether(LineWriter writer, ImmutableArray<Slot> slots, Voicing voicing)
    {
        foreach (var slot in slots) writer.Add(slot, voicing.Tones, default, voicing.Places, voicing.Fingers);
    }

    // The last chord comes to rest on its root; on its bass where a short neck leaves the root out.
    private static int RestingTone(HarmonyStep step, Voicing voicing)
    {
        var names = voicing.Tones.Select(t => t.Pitch.Name.PitchClass).ToList();
        return Math.Max(0, names.IndexOf(step.Chord.Root.PitchClass) is >= 0 and var root ? root : names.IndexOf(step.Chord.Lowest.PitchClass));
    }

    private static void WriteBroken(LineWriter writer, ImmutableArray<Slot> slots, Voicing voicing, int? rest, bool ringing)
    {
        // Up through the tones and back, the lowest and highest once each.
        var order = Enumerable.Range(0, voicing.Tones.Length).Concat(Enumerable.Range(1, Math.Max(0, voicing.Tones.Length - 2)).Reverse()).ToArray();
        for (var k = 0; k < slots.Length; k++)
        {
            var at = k == slots.Length - 1 && rest is { } last ? last : order[k % order.Length];
            ImmutableArray<FretPosition> place = voicing.Places.IsEmpty ? [] : [voicing.Places[at]];
            ImmutableArray<int> finger = voicing.Fingers.IsEmpty ? [] : [voicing.Fingers[at]];
            writer.Add(slots[k], [voicing.Tones[at]], ringing ? new StrokeMarks(Articulations.LetRing) : default, place, finger);
        }
    }
}

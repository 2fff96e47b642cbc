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
/// Chords held by the hand, each voicing led to the next by small steps: the cheapest path through all voicings that each chord
/// can have. The last chord is struck once and held.
/// </summary>
internal static class VoicingLine
{
    private const double MoveWeight = 0.25;

    /// <summary>Writes the line; null when some chord has no voicing that can be held.</summary>
    public static Line? Write(ExerciseContext context, Func<Meter, RhythmPattern> rhythmOf, VoicingPlay play, Func<HarmonyStep, IEnumerable<Voicing>> voicingsOf)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, rhythmOf);
        var steps = track.Sounding.Where(s => !slots[s.Index].IsEmpty).ToList();
        var choices = steps.ConvertAll(s => voicingsOf(s).ToImmutableArray());
        if (choices.Exists(c => c.IsEmpty)) return null;
        var writer = new LineWriter();
        var chosen = Lead(choices);
        for (var i = 0; i < steps.Count; i++)
        {
            var step = steps[i];
            var own = slots[step.Index];
            if (play == VoicingPlay.Together) WriteTogether(writer, step.IsFinal ? Resting.Shorten(own, step.End, 0) : own, chosen[i]);
            else WriteBroken(writer, step.IsFinal ? Resting.Shorten(own, step.End) : own, chosen[i], step.IsFinal, play == VoicingPlay.Ringing);
        }
        return writer.Finish(context.Progression.Length);
    }

    private static void WriteTogether(LineWriter writer, ImmutableArray<Slot> slots, Voicing voicing)
    {
        foreach (var slot in slots) writer.Add(slot, voicing.Tones, places: voicing.Places);
    }

    private static void WriteBroken(LineWriter writer, ImmutableArray<Slot> slots, Voicing voicing, bool rests, bool ringing)
    {
        // Up through the tones and back, the lowest and highest once each.
        var order = Enumerable.Range(0, voicing.Tones.Length).Concat(Enumerable.Range(1, Math.Max(0, voicing.Tones.Length - 2)).Reverse()).ToArray();
        var root = Enumerable.Range(0, voicing.Tones.Length).FirstOrDefault(i => voicing.Tones[i].Degree is { } d && d.Simple == Degree.Root);
        for (var k = 0; k < slots.Length; k++)
        {
            var at = rests && k == slots.Length - 1 ? root : order[k % order.Length];
            ImmutableArray<FretPosition> place = voicing.Places.IsEmpty ? [] : [voicing.Places[at]];
            writer.Add(slots[k], [voicing.Tones[at]], ringing ? new StrokeMarks(Articulations.LetRing) : default, place);
        }
    }

    private static Voicing[] Lead(List<ImmutableArray<Voicing>> choices)
    {
        if (choices.Count == 0) return [];
        var costs = new double[choices.Count][];
        var from = new int[choices.Count][];
        for (var i = 0; i < choices.Count; i++)
        {
            costs[i] = [.. choices[i].Select(v => v.Cost)];
            from[i] = new int[choices[i].Length];
            if (i == 0) continue;
            for (var k = 0; k < choices[i].Length; k++)
            {
                var best = double.MaxValue;
                for (var j = 0; j < choices[i - 1].Length; j++)
                {
                    var sum = costs[i - 1][j] + Move(choices[i - 1][j], choices[i][k]);
                    if (sum >= best) continue;
                    best = sum;
                    from[i][k] = j;
                }
                costs[i][k] += best;
            }
        }
        var chosen = new Voicing[choices.Count];
        var at = Array.IndexOf(costs[^1], costs[^1].Min());
        for (var i = choices.Count - 1; i >= 0; i--)
        {
            chosen[i] = choices[i][at];
            at = from[i][at];
        }
        return chosen;
    }

    private static double Move(Voicing a, Voicing b)
    {
        var tones = Math.Min(a.Tones.Length, b.Tones.Length);
        var sum = 0;
        for (var i = 1; i <= tones; i++) sum += Math.Abs(a.Tones[^i].Pitch.MidiNumber - b.Tones[^i].Pitch.MidiNumber);
        return MoveWeight * (sum + Math.Abs(a.Top - b.Top));
    }
}

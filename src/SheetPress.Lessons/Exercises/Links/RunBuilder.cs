using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Builds the notes between the root of one chord and the root of the next.</summary>
/// <param name="range">What can be played.</param>
/// <param name="overshoot">Whether the run passes its target by a step and comes back.</param>
internal sealed class RunBuilder(NeckRange range, bool overshoot)
{
    private const int ShortestRun = 3;
    private const double CutShort = 2;
    private const double NoOctave = 2;

    /// <summary>What a run from one root to another costs: nothing when it starts an octave away and fills the chord exactly.</summary>
    public double Cost(RunStep step, Pitch root, Pitch target) => BestStart(step, root, target).Cost;

    /// <summary>The notes after the root and before the target.</summary>
    public ImmutableArray<NamedPitch> Build(RunStep step, Pitch root, Pitch target)
    {
        var room = step.Room - 1;
        if (room <= 0) return [];
        var run = Run(step, root, target);
        // Where nothing lies before the target on this side, it is met from the other.
        if (run.Count == 0) run = Run(step with { Upward = !step.Upward }, root, target);
        IEnumerable<NamedPitch> notes = run.Count >= room ? run[^room..] : [.. Lead(step.Harmony, root, run.Count > 0 ? run[0].Pitch : target, room - run.Count), .. run];
        return [.. notes.Select(n => n.Degree == Degree.Root && n.Pitch.StaffStep - root.StaffStep == 7 ? n with { Degree = new Degree(8) } : n)];
    }

    private List<NamedPitch> Run(RunStep step, Pitch root, Pitch target)
    {
        var start = BestStart(step, root, target).Start;
        var run = Between(step, start, target);
        if (start == root && run.Count > 0) run.RemoveAt(0);
        return run;
    }

    private (Pitch Start, double Cost) BestStart(RunStep step, Pitch root, Pitch target)
    {
        var octave = step.Upward ? root - Interval.Octave : root + Interval.Octave;
        var fromRoot = RunCost(step, Between(step, root, target).Count - 1) + NoOctave;
        if (!range.CanPlay(octave.MidiNumber)) return (root, fromRoot);
        var fromOctave = RunCost(step, Between(step, octave, target).Count) + (range.Strain(octave.MidiNumber) * 0.5);
        return fromOctave <= fromRoot ? (octave, fromOctave) : (root, fromRoot);
    }

    private static double RunCost(RunStep step, int wanted)
    {
        var room = step.Room - 1;
        var shortest = Math.Min(ShortestRun, room);
        return (wanted > room ? CutShort * (wanted - room) : room - wanted) + (wanted < shortest ? 8 * (shortest - wanted) : 0);
    }

    // Scale tones from the start on, up to the last before the target, with the step too far where it is wanted; empty on the wrong side of it.
    private List<NamedPitch> Between(RunStep step, Pitch start, Pitch target)
    {
        var ladder = ScaleLadder.Of(step.Harmony, step.Harmony.Scale, range, range.Lowest, range.Highest);
        var run = new List<NamedPitch>();
        var sign = step.Upward ? 1 : -1;
        for (var i = 0; i < ladder.Length; i++)
        {
            var tone = step.Upward ? ladder[i] : ladder[^(i + 1)];
            var ahead = sign * (target.MidiNumber - tone.Pitch.MidiNumber);
            if (ahead > 0 && sign * (tone.Pitch.MidiNumber - start.MidiNumber) >= 0) run.Add(tone);
            if (ahead >= 0 || !overshoot || run.Count == 0) continue;
            if (ahead < -3) break;
            run.Add(new NamedPitch(target, step.Harmony.NameOf(target.Name)));
            run.Add(tone);
            break;
        }
        return run;
    }

    // Chord tones from the root to the start of the run, in even strides.
    private NamedPitch[] Lead(HarmonyStep step, Pitch root, Pitch to, int count)
    {
        var low = Math.Min(root.MidiNumber, to.MidiNumber) - 1;
        var high = Math.Max(Math.Max(root.MidiNumber, to.MidiNumber) + 1, low + 14);
        var tones = ScaleLadder.Of(step, step.BasicTones, range, low, high);
        var first = new NamedPitch(root, step.BassDegree);
        if (tones.IsEmpty) tones = [first];
        ImmutableArray<Candidate> candidates = [.. tones.Select(t => new Candidate(t, range.Strain(t.Pitch.MidiNumber) * 0.3))];
        var slots = new List<ImmutableArray<Candidate>>(count + 2) { ImmutableArray.Create(new Candidate(first, 0)) };
        // A run that starts from the root itself has its octave here.
        var octave = root + Interval.Octave;
        var leaps = count >= 2 && Math.Abs(to.MidiNumber - root.MidiNumber) < 12 && range.CanPlay(octave.MidiNumber);
        for (var i = 0; i < count; i++) slots.Add(i == 0 && leaps ? [new Candidate(new NamedPitch(octave, step.BassDegree.Number == 1 ? new Degree(8) : step.BassDegree), 0)] : candidates);
        slots.Add([new Candidate(new NamedPitch(to, null), 0)]);
        return LineSearch.Best(slots, LeadCost)[1..^1];
    }

    private static double LeadCost(int beforeLast, in Candidate last, in Candidate next, int slot)
    {
        var move = Math.Abs(next.Midi - last.Midi);
        var turns = beforeLast >= 0 && (last.Midi - beforeLast) * (next.Midi - last.Midi) < 0;
        return (move == 0 ? 30 : move * 0.15) + (beforeLast == next.Midi ? 2 : 0) + (move > 7 ? 1 : 0) + (move > 12 ? 10 : 0) + (turns ? 0.6 : 0);
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Builds the notes between the root of one chord and the root of the next.</summary>
/// <param name="range">What can be played.</param>
/// <param name="overshoot">Whether the run passes its target by a step and comes back.</param>
internal sealed class RunBuilder(NeckRange range, bool overshoot)
{
    private const int ShortestRun = 3;

    /// <summary>A finished run: the notes after the root, and the pitch on which the next chord starts.</summary>
    public readonly record struct Run(ImmutableArray<NamedPitch> Notes, Pitch Target);

    /// <summary>Builds a run.</summary>
    /// <param name="step">The chord it runs over.</param>
    /// <param name="root">The pitch the chord starts on.</param>
    /// <param name="goal">The next root, in the octave where it would lie best.</param>
    /// <param name="room">Notes of the chord, its root included.</param>
    /// <param name="upward">Whether the run goes up into its target.</param>
    public Run Build(HarmonyStep step, Pitch root, Pitch goal, int room, bool upward)
    {
        var ladder = ScaleLadder.Of(step, step.Scale, range, range.Lowest, range.Highest);
        var best = default(Run);
        var lowest = double.MaxValue;
        for (var octave = -2; octave <= 2; octave++)
        {
            var target = goal + (Interval.Octave * octave);
            if (!range.CanPlay(target.MidiNumber) && !(octave == 0 && lowest == double.MaxValue)) continue;
            foreach (var start in Starts(root, upward))
            {
                var run = Between(ladder, start, target, upward);
                var wanted = run.Count - (start == root ? 1 : 0);
                var cost = Cost(wanted, room - 1, target, goal) + (start == root ? 5 : 0);
                if (cost >= lowest) continue;
                lowest = cost;
                best = new Run(Fill(step, root, start, run, room - 1, target), target);
            }
        }
        return best;
    }

    private IEnumerable<Pitch> Starts(Pitch root, bool upward)
    {
        var octave = upward ? root - Interval.Octave : root + Interval.Octave;
        if (range.CanPlay(octave.MidiNumber)) yield return octave;
        yield return root;
        // A low root has no octave below it: an upward run then starts over from the root itself, a downward one from above.
    }

    private double Cost(int wanted, int room, Pitch target, Pitch goal)
    {
        var shortest = Math.Min(ShortestRun, room);
        return (wanted > room ? 2 * (wanted - room) : room - wanted)
            + (wanted < shortest ? 10 * (shortest - wanted) : 0)
            + (Math.Abs(target.MidiNumber - goal.MidiNumber) * 0.25)
            + (range.Strain(target.MidiNumber) * 0.8);
    }

    // Scale tones from the start on, up to the last before the target, with the step too far where it is wanted.
    private List<NamedPitch> Between(ImmutableArray<NamedPitch> ladder, Pitch start, Pitch target, bool upward)
    {
        var run = new List<NamedPitch>();
        for (var i = 0; i < ladder.Length; i++)
        {
            var tone = upward ? ladder[i] : ladder[^(i + 1)];
            var (from, at, to) = upward ? (start, tone.Pitch, target) : (target, tone.Pitch, start);
            var within = upward ? at.MidiNumber >= from.MidiNumber && at.MidiNumber < to.MidiNumber : at.MidiNumber > from.MidiNumber && at.MidiNumber <= to.MidiNumber;
            if (within) { run.Add(tone); continue; }
            var past = upward ? at.MidiNumber > target.MidiNumber : at.MidiNumber < target.MidiNumber;
            if (!past || !overshoot || run.Count == 0 || Math.Abs(at.MidiNumber - target.MidiNumber) > 3) continue;
            run.Add(new NamedPitch(target, null));
            run.Add(tone);
            break;
        }
        return run;
    }

    private ImmutableArray<NamedPitch> Fill(HarmonyStep step, Pitch root, Pitch start, List<NamedPitch> run, int room, Pitch target)
    {
        var notes = new List<NamedPitch>(room);
        if (start == root && run.Count > 0) run.RemoveAt(0);
        for (var i = 0; i < run.Count; i++) if (run[i].Degree is null) run[i] = run[i] with { Degree = step.NameOf(run[i].Pitch.Name) };
        if (run.Count > room) notes.AddRange(run[^room..]);
        else
        {
            var lead = room - run.Count;
            if (lead > 0) notes.AddRange(Lead(step, root, run.Count > 0 ? run[0].Pitch : target, lead));
            notes.AddRange(run);
        }
        return [.. notes];
    }

    // Chord tones from the root to the start of the run, in even strides.
    private NamedPitch[] Lead(HarmonyStep step, Pitch root, Pitch to, int count)
    {
        var low = Math.Min(root.MidiNumber, to.MidiNumber) - 1;
        var high = Math.Max(root.MidiNumber, to.MidiNumber) + 1;
        while (high - low < 14) high++;
        var tones = ScaleLadder.Of(step, step.BasicTones, range, low, high);
        if (tones.IsEmpty) tones = [new NamedPitch(root, Degree.Root)];
        var slots = new List<ImmutableArray<Candidate>>(count + 2) { ImmutableArray.Create(new Candidate(new NamedPitch(root, Degree.Root), 0)) };
        ImmutableArray<Candidate> candidates = [.. tones.Select(t => new Candidate(t, range.Strain(t.Pitch.MidiNumber) * 0.3))];
        for (var i = 0; i < count; i++) slots.Add(candidates);
        slots.Add([new Candidate(new NamedPitch(to, null), 0)]);
        var line = LineSearch.Best(slots, static (int beforeLast, in Candidate last, in Candidate next, int _) =>
        {
            var move = Math.Abs(next.Midi - last.Midi);
            var turn = beforeLast >= 0 && (last.Midi - beforeLast) * (next.Midi - last.Midi) < 0 ? 0.6 : 0;
            return (move == 0 ? 30 : 0) + (beforeLast == next.Midi ? 2 : 0) + (move * 0.15) + (move > 7 ? 1 : 0) + (move > 12 ? 10 : 0) + turn;
        });
        return line[1..^1];
    }
}

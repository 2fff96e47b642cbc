using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A chord to run over: its harmony, how many notes it has room for, and which way it runs.</summary>
internal readonly record struct RunStep(HarmonyStep Harmony, int Room, bool Upward);

/// <summary>Chooses the octave of every root of a line of runs: the cheapest path through the octaves of all chords.</summary>
internal static class RunPlanner
{
    private const double StrainWeight = 2;
    private const double FromHomeWeight = 0.35;

    public static ImmutableArray<Pitch> Plan(ImmutableArray<RunStep> steps, RunBuilder builder, NeckRange range)
    {
        if (steps.IsEmpty) return [];
        var layers = steps.Select(s => Octaves(s.Harmony.Chord.Lowest, range)).ToArray();
        var costs = new double[steps.Length][];
        var from = new int[steps.Length][];
        for (var i = 0; i < steps.Length; i++)
        {
            costs[i] = [.. layers[i].Select(p => (range.Strain(p.MidiNumber) * StrainWeight) + (Math.Abs(p.MidiNumber - range.Home - 6) * FromHomeWeight))];
            from[i] = new int[layers[i].Length];
            if (i == 0) continue;
            for (var k = 0; k < layers[i].Length; k++)
            {
                var best = double.MaxValue;
                for (var j = 0; j < layers[i - 1].Length; j++)
                {
                    var sum = costs[i - 1][j] + builder.Cost(steps[i - 1], layers[i - 1][j], layers[i][k]);
                    if (sum >= best) continue;
                    best = sum;
                    from[i][k] = j;
                }
                costs[i][k] += best;
            }
        }
        var at = Array.IndexOf(costs[^1], costs[^1].Min());
        var roots = new Pitch[steps.Length];
        for (var i = steps.Length - 1; i >= 0; i--)
        {
            roots[i] = layers[i][at];
            at = from[i][at];
        }
        return [.. roots];
    }

    private static ImmutableArray<Pitch> Octaves(NoteName name, NeckRange range)
    {
        var octaves = ImmutableArray.CreateBuilder<Pitch>();
        var lowest = Pitch.AtOrAbove(name, Math.Min(range.Lowest, range.Highest));
        for (var pitch = lowest; pitch.MidiNumber <= range.Highest; pitch += Interval.Octave) if (range.CanPlay(pitch.MidiNumber)) octaves.Add(pitch);
        if (octaves.Count == 0) octaves.Add(lowest);
        return octaves.DrainToImmutable();
    }
}

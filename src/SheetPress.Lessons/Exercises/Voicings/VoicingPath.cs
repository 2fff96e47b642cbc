using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>
/// Chooses one voicing for each chord: the cheapest path through all that each chord can have (dynamic programming), within the
/// region of the neck that makes the whole cheapest. The octaves of all chords are chosen together, since the smallest steps from
/// chord to chord alone lead a line further and further up or down the neck.
/// </summary>
internal static class VoicingPath
{
    private const double MoveWeight = 0.25;
    private const double HandWeight = 0.2;
    // What each fret costs by which the region is wider, for every chord.
    private const double WidthWeight = 0.3;
    private static readonly int[] Allowances = [0, 2, 4, int.MaxValue];

    /// <summary>The chosen voicings.</summary>
    /// <param name="choices">The voicings of each chord; none of them empty.</param>
    /// <param name="oneRegion">Whether the hand is to stay in one region of the neck; else only the voices are led.</param>
    public static Voicing[] Best(IReadOnlyList<ImmutableArray<Voicing>> choices, bool oneRegion)
    {
        if (choices.Count == 0) return [];
        var moves = Moves(choices, oneRegion ? HandWeight : 0);
        if (!oneRegion) return Cheapest(choices, moves, (0, int.MaxValue)).Path;
        Voicing[]? best = null;
        var lowest = double.MaxValue;
        foreach (var region in Regions(choices))
        {
            var (path, cost) = Cheapest(choices, moves, region);
            var (from, to) = Ends(path);
            cost += WidthWeight * choices.Count * (to - from);
            if (cost >= lowest) continue;
            (best, lowest) = (path, cost);
        }
        return best!;
    }

    // From every place of the hand as far up as needed for all chords, and a little further; the whole neck too.
    private static HashSet<(int From, int To)> Regions(IReadOnlyList<ImmutableArray<Voicing>> choices)
    {
        var regions = new HashSet<(int, int)> { (0, int.MaxValue) };
        foreach (var from in choices.SelectMany(c => c.Select(v => v.Hand)).Distinct())
        {
            var to = 0;
            foreach (var chord in choices)
            {
                var nearest = int.MaxValue;
                foreach (var voicing in chord) if (voicing.Hand == 0 || voicing.Hand >= from) nearest = Math.Min(nearest, voicing.Hand);
                to = Math.Max(to, nearest);
            }
            if (to < int.MaxValue) foreach (var more in Allowances) regions.Add((from, more == int.MaxValue ? more : to + more));
        }
        return regions;
    }

    private static (int From, int To) Ends(Voicing[] path)
    {
        var (from, to) = (int.MaxValue, 0);
        foreach (var voicing in path)
        {
            if (voicing.Hand == 0) continue;
            from = Math.Min(from, voicing.Hand);
            to = Math.Max(to, voicing.Hand);
        }
        return to == 0 ? (0, 0) : (from, to);
    }

    private static double[][] Moves(IReadOnlyList<ImmutableArray<Voicing>> choices, double handWeight)
    {
        var moves = new double[choices.Count][];
        for (var i = 1; i < choices.Count; i++)
        {
            var (before, now) = (choices[i - 1], choices[i]);
            moves[i] = new double[before.Length * now.Length];
            for (var j = 0; j < before.Length; j++) for (var k = 0; k < now.Length; k++) moves[i][(j * now.Length) + k] = Move(before[j], now[k], handWeight);
        }
        return moves;
    }

    private static (Voicing[] Path, double Cost) Cheapest(IReadOnlyList<ImmutableArray<Voicing>> choices, double[][] moves, (int From, int To) region)
    {
        var costs = new double[choices.Count][];
        var from = new int[choices.Count][];
        for (var i = 0; i < choices.Count; i++)
        {
            costs[i] = [.. choices[i].Select(v => v.Hand == 0 || (v.Hand >= region.From && v.Hand <= region.To) ? v.Cost : double.PositiveInfinity)];
            from[i] = new int[choices[i].Length];
            if (i == 0) continue;
            for (var k = 0; k < choices[i].Length; k++)
            {
                if (double.IsPositiveInfinity(costs[i][k])) continue;
                var best = double.PositiveInfinity;
                for (var j = 0; j < choices[i - 1].Length; j++)
                {
                    if (costs[i - 1][j] >= best) continue;
                    var sum = costs[i - 1][j] + moves[i][(j * choices[i].Length) + k];
                    if (sum >= best) continue;
                    best = sum;
                    from[i][k] = j;
                }
                costs[i][k] += best;
            }
        }
        var at = Array.IndexOf(costs[^1], costs[^1].Min());
        var cost = costs[^1][at];
        var chosen = new Voicing[choices.Count];
        for (var i = choices.Count - 1; i >= 0; i--)
        {
            chosen[i] = choices[i][at];
            at = from[i][at];
        }
        return (chosen, cost);
    }

    private static double Move(Voicing a, Voicing b, double handWeight)
    {
        var tones = Math.Min(a.Tones.Length, b.Tones.Length);
        var sum = 0;
        for (var i = 1; i <= tones; i++) sum += Math.Abs(a.Tones[^i].Pitch.MidiNumber - b.Tones[^i].Pitch.MidiNumber);
        var hand = a.Hand > 0 && b.Hand > 0 ? Math.Abs(a.Hand - b.Hand) : 0;
        return (MoveWeight * (sum + Math.Abs(a.Top - b.Top))) + (handWeight * hand);
    }
}

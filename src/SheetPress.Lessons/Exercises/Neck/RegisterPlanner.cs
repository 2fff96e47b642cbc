using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>What a chord's figure needs of the neck.</summary>
/// <param name="Root">The note the figure is counted from.</param>
/// <param name="Offsets">Half steps of its notes above that root, in playing order; at least one.</param>
internal readonly record struct RegisterNeed(NoteName Root, ImmutableArray<int> Offsets);

/// <summary>
/// Chooses the octave of each chord's root so that the figures lie on the neck, near home, and close to each other:
/// the cheapest path through the possible octaves of all chords (dynamic programming).
/// </summary>
internal static class RegisterPlanner
{
    private const double OffNeck = 1000;
    private const double StrainWeight = 1.2;
    private const double BelowHomeWeight = 1.5;
    private const double AboveHomeWeight = 0.25;
    // A small leap into the next figure is no reason to play it an octave up.
    private const double AboveHomeWeightOfJoined = 0.5;
    // Figures that stand for themselves keep the register: one chord has one place wherever it comes back.
    private const double LeapWeight = 0.12;

    /// <summary>The root pitch of each figure. A figure that fits nowhere gets the octave in which most of it does.</summary>
    /// <param name="needs">What each chord needs, in order.</param>
    /// <param name="range">What can be played.</param>
    /// <param name="joinCost">
    /// What it costs to go from the figure of an index on one root to the next figure on another, for figures that lead into each other;
    /// null to weigh the leap between them lightly.
    /// </param>
    public static ImmutableArray<Pitch> Plan(IReadOnlyList<RegisterNeed> needs, NeckRange range, Func<int, Pitch, Pitch, double>? joinCost = null)
    {
        if (needs.Count == 0) return [];
        var layers = new List<(int Root, double Cost, int From)>[needs.Count];
        for (var i = 0; i < needs.Count; i++)
        {
            layers[i] = [];
            var need = needs[i];
            for (var root = Lowest(need, range); root <= range.Highest + 12; root += 12)
            {
                var cost = PlaceCost(need, root, range, joinCost is null ? AboveHomeWeight : AboveHomeWeightOfJoined);
                var from = -1;
                if (i > 0)
                {
                    var best = double.MaxValue;
                    for (var k = 0; k < layers[i - 1].Count; k++)
                    {
                        var previous = layers[i - 1][k];
                        var join = joinCost is null
                            ? LeapWeight * Math.Abs(root + need.Offsets[0] - (previous.Root + needs[i - 1].Offsets[^1]))
                            : joinCost(i - 1, Pitch.AtOrAbove(needs[i - 1].Root, previous.Root), Pitch.AtOrAbove(need.Root, root));
                        var sum = previous.Cost + join;
                        if (sum >= best) continue;
                        best = sum;
                        from = k;
                    }
                    cost += best;
                }
                layers[i].Add((root, cost, from));
            }
        }
        return Trace(needs, layers);
    }

    private static ImmutableArray<Pitch> Trace(IReadOnlyList<RegisterNeed> needs, List<(int Root, double Cost, int From)>[] layers)
    {
        var at = 0;
        for (var k = 1; k < layers[^1].Count; k++) if (layers[^1][k].Cost < layers[^1][at].Cost) at = k;
        var roots = new Pitch[needs.Count];
        for (var i = needs.Count - 1; i >= 0; i--)
        {
            roots[i] = Pitch.AtOrAbove(needs[i].Root, layers[i][at].Root);
            at = layers[i][at].From;
        }
        return [.. roots];
    }

    // The lowest octave worth trying: an octave under the range, for figures that reach upward into it.
    private static int Lowest(RegisterNeed need, NeckRange range)
    {
        var start = Math.Max(0, Math.Min(range.Lowest, range.Highest)) - 24;
        return start + NoteMath.Modulo(need.Root.PitchClass - start, 12);
    }

    private static double PlaceCost(RegisterNeed need, int root, NeckRange range, double aboveHomeWeight)
    {
        var cost = 0.0;
        var lowest = int.MaxValue;
        foreach (var offset in need.Offsets)
        {
            var midi = root + offset;
            lowest = Math.Min(lowest, midi);
            cost += range.CanPlay(midi) ? StrainWeight * range.Strain(midi) / need.Offsets.Length : OffNeck;
        }
        return cost + (lowest < range.Home ? (range.Home - lowest) * BelowHomeWeight : Math.Max(0, lowest - range.Home - 4) * aboveHomeWeight);
    }
}

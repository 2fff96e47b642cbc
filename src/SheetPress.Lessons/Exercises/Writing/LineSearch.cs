using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>A note that could stand in a slot, and what it costs there.</summary>
internal readonly record struct Candidate(NamedPitch Pitch, double Cost)
{
    public int Midi => Pitch.Pitch.MidiNumber;
}

/// <summary>
/// Finds the best line through the candidates of each slot. The cost of a note may depend on the two notes before it, so that
/// repeats, returns and turns can be weighed: a shortest path over pairs of neighbours (dynamic programming, exact).
/// </summary>
internal static class LineSearch
{
    /// <summary>The cost of a move between neighbouring slots.</summary>
    /// <param name="beforeLast">MIDI number of the note two back; -1 when there is none.</param>
    /// <param name="last">The note before, as its candidate.</param>
    /// <param name="next">The note moved to.</param>
    /// <param name="slot">Index of the slot moved to.</param>
    public delegate double MoveCost(int beforeLast, in Candidate last, in Candidate next, int slot);

    /// <summary>The cheapest line; every slot needs at least one candidate.</summary>
    public static NamedPitch[] Best(IReadOnlyList<ImmutableArray<Candidate>> slots, MoveCost cost)
    {
        if (slots.Count == 0) return [];
        if (slots.Count == 1) return [Cheapest(slots[0]).Pitch];
        // best[i, j]: the cheapest line that ends with candidate i of the slot before and candidate j of this one.
        var (a, b) = (slots[0], slots[1]);
        var best = new double[a.Length * b.Length];
        for (var i = 0; i < a.Length; i++)
        {
            for (var j = 0; j < b.Length; j++) best[(i * b.Length) + j] = a[i].Cost + b[j].Cost + cost(-1, a[i], b[j], 1);
        }
        var back = new byte[slots.Count][];
        for (var s = 2; s < slots.Count; s++)
        {
            var c = slots[s];
            var next = new double[b.Length * c.Length];
            back[s] = new byte[next.Length];
            for (var j = 0; j < b.Length; j++)
            {
                for (var k = 0; k < c.Length; k++)
                {
                    var lowest = double.MaxValue;
                    for (var i = 0; i < a.Length; i++)
                    {
                        var sum = best[(i * b.Length) + j] + cost(a[i].Midi, b[j], c[k], s);
                        if (sum >= lowest) continue;
                        lowest = sum;
                        back[s][(j * c.Length) + k] = (byte)i;
                    }
                    next[(j * c.Length) + k] = lowest + c[k].Cost;
                }
            }
            (a, b, best) = (b, c, next);
        }
        return Trace(slots, best, back);
    }

    private static NamedPitch[] Trace(IReadOnlyList<ImmutableArray<Candidate>> slots, double[] best, byte[][] back)
    {
        var at = 0;
        for (var i = 1; i < best.Length; i++) if (best[i] < best[at]) at = i;
        var width = slots[^1].Length;
        var (last, current) = (at / width, at % width);
        var line = new NamedPitch[slots.Count];
        for (var s = slots.Count - 1; s >= 0; s--)
        {
            line[s] = slots[s][current].Pitch;
            if (s == 0) break;
            var before = s >= 2 ? back[s][(last * slots[s].Length) + current] : 0;
            (last, current) = (before, last);
        }
        return line;
    }

    private static Candidate Cheapest(ImmutableArray<Candidate> candidates)
    {
        var best = candidates[0];
        foreach (var candidate in candidates) if (candidate.Cost < best.Cost) best = candidate;
        return best;
    }
}

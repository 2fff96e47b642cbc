using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The least-cost way through the grips of a line (a shortest path, solved forward note by note).</summary>
internal static class FingeringPath
{
    /// <summary>One grip for each note, or the index of the first note that cannot be reached.</summary>
    public static (Grip[] Path, int FailedNote) Find(ImmutableArray<LineNote> notes, ImmutableArray<Grip>[] grips, FingeringCosts costs, ImmutableArray<Fraction> chordStarts, ImmutableArray<ToneLink>[]? links = null)
    {
        var best = new double[notes.Length][];
        var before = new int[notes.Length][];
        for (var n = 0; n < notes.Length; n++)
        {
            var here = grips[n];
            best[n] = new double[here.Length];
            before[n] = new int[here.Length];
            if (n == 0)
            {
                for (var i = 0; i < here.Length; i++) best[0][i] = here[i].Cost;
                continue;
            }
            var step = FingeringStep.Between(notes[n - 1], notes[n], chordStarts);
            var previous = grips[n - 1];
            var previousBest = best[n - 1];
            var linked = links?[n] ?? [];
            if (linked.Any(l => l.Bond == ToneBond.Slide)) step = step with { IsSlide = true };
            var reached = false;
            for (var i = 0; i < here.Length; i++)
            {
                var (least, from) = (double.PositiveInfinity, -1);
                var to = here[i];
                for (var j = 0; j < previous.Length; j++)
                {
                    if (previousBest[j] >= least || (step.SameString && !Joins(previous[j], to, step.IsSlide)) || !Keeps(previous[j], to, linked)) continue;
                    var cost = previousBest[j] + costs.Between(previous[j], to, step) + FingeringCosts.Bonds(previous[j], to, linked);
                    if (cost < least) (least, from) = (cost, j);
                }
                best[n][i] = least + to.Cost;
                before[n][i] = from;
                reached |= from >= 0;
            }
            if (!reached) return ([], n);
        }

        var path = new Grip[notes.Length];
        var at = 0;
        for (var i = 1; i < best[^1].Length; i++) if (best[^1][i] < best[^1][at]) at = i;
        for (var n = notes.Length - 1; n >= 0; n--)
        {
            path[n] = grips[n][at];
            at = before[n][at];
        }
        return (path, -1);
    }

    /// <summary>Whole cost of a path, as <see cref="Find"/> minimises it; infinite when a join needs one string and has two.</summary>
    public static double Cost(ImmutableArray<LineNote> notes, IReadOnlyList<Grip> path, FingeringCosts costs, ImmutableArray<Fraction> chordStarts)
    {
        var sum = path[0].Cost;
        for (var n = 1; n < path.Count; n++)
        {
            var step = FingeringStep.Between(notes[n - 1], notes[n], chordStarts);
            if (step.SameString && !Joins(path[n - 1], path[n], step.IsSlide)) return double.PositiveInfinity;
            sum += costs.Between(path[n - 1], path[n], step) + path[n].Cost;
        }
        return sum;
    }

    private static bool Keeps(Grip from, Grip to, ImmutableArray<ToneLink> links)
    {
        foreach (var link in links) if (!link.Allows(from.Positions[link.Before], to.Positions[link.Now])) return false;
        return true;
    }

    // A hammer-on, pull-off or slide stays on its string, and a slide ends on a fret; in chords every tone of the smaller one has a partner on its string.
    private static bool Joins(Grip from, Grip to, bool slides)
    {
        if (slides && to.IsOpen) return false;
        if (from.Positions.Length == 1 && to.Positions.Length == 1) return from.String == to.String;
        var (few, many) = from.Positions.Length <= to.Positions.Length ? (from, to) : (to, from);
        foreach (var place in few.Positions)
        {
            if (!many.Positions.Any(p => p.String == place.String)) return false;
        }
        return true;
    }
}

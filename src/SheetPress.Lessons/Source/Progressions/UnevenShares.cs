using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Shares beats out among chords that do not go into them evenly. Common practice: whole beats, the earlier chords the longer ones.</summary>
internal static class UnevenShares
{
    /// <summary>
    /// Shares of a whole bar in beat units: whole felt groups when there are fewer chords than groups, else the chords go into the groups,
    /// more of them into the larger and later ones. Null when a chord would get less than half a unit.
    /// </summary>
    /// <param name="chords">Number of chords, not as many as there are groups.</param>
    /// <param name="groups">Sizes of the felt groups in beat units.</param>
    public static ImmutableArray<Fraction>? OverGroups(int chords, ImmutableArray<int> groups)
    {
        var shares = ImmutableArray.CreateBuilder<Fraction>(chords);
        if (chords < groups.Length)
        {
            var group = 0;
            for (var i = 0; i < chords; i++)
            {
                var taken = (groups.Length / chords) + (i < groups.Length % chords ? 1 : 0);
                var sum = 0;
                for (var end = group + taken; group < end; group++) sum += groups[group];
                shares.Add(new Fraction(sum));
            }
            return shares.MoveToImmutable();
        }
        var counts = new int[groups.Length];
        Array.Fill(counts, 1);
        for (var left = chords - groups.Length; left > 0; left--)
        {
            var roomiest = 0;
            for (var g = 1; g < groups.Length; g++) if (groups[g] * counts[roomiest] >= groups[roomiest] * counts[g]) roomiest = g;
            counts[roomiest]++;
        }
        for (var g = 0; g < groups.Length; g++)
        {
            if (OverBeats(counts[g], new Fraction(groups[g])) is not { } inner) return null;
            shares.AddRange(inner);
        }
        return shares.ToImmutable();
    }

    /// <summary>Shares of some beats: whole ones, or halves where there are too few; null when even these are too few.</summary>
    public static ImmutableArray<Fraction>? OverBeats(int chords, Fraction beats)
    {
        foreach (var parts in (int[])[1, 2])
        {
            var pieces = beats * parts;
            if (pieces.Denominator != 1 || pieces.Numerator < chords) continue;
            var (each, longer) = (pieces.Numerator / chords, pieces.Numerator % chords);
            return [.. Enumerable.Range(0, chords).Select(i => new Fraction(each + (i < longer ? 1 : 0), parts))];
        }
        return null;
    }
}

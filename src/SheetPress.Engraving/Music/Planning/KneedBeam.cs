using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>
/// Beams that lie between their notes: where notes under one beam are more than two octaves apart and fall into a high and a low
/// part, the high ones turn their stems down and the low ones up to a level beam in the gap, instead of stems that are longer than
/// the staves are apart (handbook practice, from memory).
/// </summary>
internal static class KneedBeam
{
    /// <summary>Up to two octaves, in steps, the stems of the far notes are let grow.</summary>
    public const int WidestPlainGroup = 14;

    // The gap that stems on both sides and the accidentals of the low notes need, besides the beams.
    private const double LeastGap = 4.5;

    // Beams are placed on quarters of a space; one in the middle of a space would leave two thin wedges of white.
    private const double Grid = 0.25;

    /// <summary>The lowest step of the high part, or null for a group with stems on one side.</summary>
    /// <param name="steps">Steps of each event, low to high; empty for a rest.</param>
    /// <param name="group">The group.</param>
    /// <param name="beams">The greatest number of beams in it.</param>
    public static int? Split(IReadOnlyList<ImmutableArray<int>> steps, BeamGroup group, int beams)
    {
        var events = new List<ImmutableArray<int>>();
        for (var i = group.First; i <= group.Last; i++) if (!steps[i].IsEmpty) events.Add(steps[i]);
        if (events.Count < 2 || events.Max(e => e[^1]) - events.Min(e => e[0]) <= WidestPlainGroup) return null;
        events.Sort((a, b) => a[0].CompareTo(b[0]));
        var (split, widest) = (0, 0);
        var highest = events[0][^1];
        foreach (var e in events.Skip(1))
        {
            if (e[0] - highest > widest) (split, widest) = (e[0], e[0] - highest);
            highest = Math.Max(highest, e[^1]);
        }
        return widest / 2.0 >= LeastGap + Depth(beams) ? split : null;
    }

    /// <summary>The middle line of the topmost beam.</summary>
    /// <param name="highest">y of the lowest head of the high part.</param>
    /// <param name="lowest">y of the highest head of the low part.</param>
    /// <param name="beams">The greatest number of beams.</param>
    public static double Place(double highest, double lowest, int beams)
    {
        var y = Math.Round((((highest + lowest) / 2) - (Depth(beams) / 2)) / Grid) * Grid;
        return y > 0 && y < StaffSteps.BottomLine && y - Math.Floor(y) == 0.5 ? y - Grid : y;
    }

    /// <summary>From the middle line of the first beam to that of the last.</summary>
    private static double Depth(int beams) => (beams - 1) * (Ink.Defaults.BeamThickness + Ink.Defaults.BeamSpacing);
}

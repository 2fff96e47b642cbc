using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>
/// Beams that lie between their notes: where notes under one beam are more than two octaves apart and fall into a high and a low
/// part, the high ones turn their stems down and the low ones up to a level beam in the gap, instead of stems that are longer than
/// the staves are apart (handbook practice, from memory).
/// </summary>
internal static class KneedBeam
{
    // Stems are let grow to two octaves and an octave more.
    private const double LongestStem = 10.6;

    // White between the beams and the middle of the nearest heads: room for an accidental of the low notes, and stems, which end
    // inside the beam, that are no shorter than others.
    private const double HeadRoom = 2.06;

    // Nor do the beams come near ledger lines, the first of which lie a space above and below the staff.
    private const double LedgerRoom = 0.7;

    // Beams are placed on quarters of a space; one in the middle of a space would leave two thin wedges of white.
    private const double Grid = 0.25;

    /// <summary>Whether a stem under an ordinary beam would reach further beyond its own heads than is good.</summary>
    /// <param name="events">Steps of each event that sounds, low to high; at least one.</param>
    /// <param name="beams">The greatest number of beams among them.</param>
    public static bool IsTooWide(IReadOnlyCollection<ImmutableArray<int>> events, int beams)
    {
        // What a chord spans itself its stem has to pass with a flag as well.
        var above = events.Max(e => e[^1]) - events.Min(e => e[^1]);
        var below = events.Max(e => e[0]) - events.Min(e => e[0]);
        return (Math.Max(above, below) / 2.0) + StemRules.Length(beams) > LongestStem;
    }

    /// <summary>The lowest step of the high part, or null for a group with stems on one side.</summary>
    /// <param name="steps">Steps of each event, low to high; empty for a rest.</param>
    /// <param name="group">The group.</param>
    /// <param name="beams">The greatest number of beams in it.</param>
    public static int? Split(IReadOnlyList<ImmutableArray<int>> steps, BeamGroup group, int beams)
    {
        var events = new List<ImmutableArray<int>>();
        for (var i = group.First; i <= group.Last; i++) if (!steps[i].IsEmpty) events.Add(steps[i]);
        if (events.Count < 2 || !IsTooWide(events, beams)) return null;
        events.Sort((a, b) => a[0].CompareTo(b[0]));
        var (low, high) = (0, 0);
        var highest = events[0][^1];
        foreach (var e in events.Skip(1))
        {
            if (e[0] - highest > high - low) (low, high) = (highest, e[0]);
            highest = Math.Max(highest, e[^1]);
        }
        return high > low && Place(StaffSteps.Y(high), StaffSteps.Y(low), beams) is not null ? high : null;
    }

    /// <summary>The middle line of the topmost beam, or null when there is no room for the beams.</summary>
    /// <param name="high">y of the lowest head of the high part.</param>
    /// <param name="low">y of the highest head of the low part.</param>
    /// <param name="beams">The greatest number of beams.</param>
    public static double? Place(double high, double low, int beams)
    {
        var half = Ink.Defaults.BeamThickness / 2;
        var depth = (beams - 1) * (Ink.Defaults.BeamThickness + Ink.Defaults.BeamSpacing);
        var top = high + HeadRoom + half;
        var bottom = low - HeadRoom - half - depth;
        if (high < 0) top = Math.Max(top, half - LedgerRoom);
        if (low > StaffSteps.BottomLine) bottom = Math.Min(bottom, StaffSteps.BottomLine + LedgerRoom - half - depth);
        var middle = (high + low - depth) / 2;
        double? best = null;
        for (var y = Math.Ceiling(top / Grid) * Grid; y <= bottom; y += Grid)
        {
            if (y > 0 && y < StaffSteps.BottomLine && y - Math.Floor(y) == 0.5) continue;
            if (best is null || Math.Abs(y - middle) < Math.Abs(best.Value - middle)) best = y;
        }
        return best;
    }
}

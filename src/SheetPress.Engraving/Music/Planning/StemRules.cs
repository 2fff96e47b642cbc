using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Direction and length of stems, after the standard engraving handbooks (from memory).</summary>
internal static class StemRules
{
    /// <summary>Length of a usual stem: an octave.</summary>
    public const double Usual = 3.5;

    /// <summary>No stem is shorter.</summary>
    public const double Shortest = 2.5;

    // Each flag or beam beyond the second needs this much more stem: a beam and the white beside it.
    private const double PerExtraFlag = 0.75;

    // Outside the staff and pointing away from it a stem loses this much a step, down to the shortest.
    private const double OutwardShortening = 0.25;

    // White between a flag and the ledger lines of its note: the stem grows for it.
    private const double LedgerGap = 0.2;

    /// <summary>
    /// Directions of a single voice: by the note furthest from the middle line, down when in doubt; a note on the middle line
    /// goes with its neighbours when both point up, and where it is repeated with the one before. Tied over a barline it points down
    /// on both sides.
    /// </summary>
    /// <param name="steps">Steps of each event, low to high; empty for a rest.</param>
    /// <param name="groups">Beamed groups, which share a direction unless their beam lies between the notes.</param>
    /// <param name="beams">Number of beams of each event.</param>
    /// <param name="tiedFrom">Whether the first event is tied to a note of the measure before.</param>
    /// <param name="tiedOn">Whether the last event is tied to a note of the measure after.</param>
    public static StemDirection[] Decide(IReadOnlyList<ImmutableArray<int>> steps, IReadOnlyList<BeamGroup> groups, IReadOnlyList<int> beams, bool tiedFrom, bool tiedOn)
    {
        var result = new StemDirection?[steps.Count];
        foreach (var group in groups)
        {
            var (lowest, highest) = (int.MaxValue, int.MinValue);
            var sum = 0;
            for (var i = group.First; i <= group.Last; i++)
            {
                if (steps[i].IsEmpty) continue;
                lowest = Math.Min(lowest, steps[i][0]);
                highest = Math.Max(highest, steps[i][^1]);
                sum += steps[i].Sum();
            }
            // Equally far above and below: the way most of the notes want.
            var direction = highest == -lowest ? sum < 0 ? StemDirection.Up : StemDirection.Down : highest > -lowest ? StemDirection.Down : StemDirection.Up;
            var split = KneedBeam.Split(steps, group, Enumerable.Range(group.First, group.Last - group.First + 1).Max(i => beams[i]));
            for (var i = group.First; i <= group.Last; i++)
            {
                result[i] = split is { } high && !steps[i].IsEmpty ? steps[i][0] >= high ? StemDirection.Down : StemDirection.Up : direction;
            }
        }
        for (var i = 0; i < steps.Count; i++)
        {
            if (result[i] is null && !steps[i].IsEmpty && steps[i][^1] != -steps[i][0]) result[i] = steps[i][^1] > -steps[i][0] ? StemDirection.Down : StemDirection.Up;
        }
        for (var i = 0; i < steps.Count; i++)
        {
            if (result[i] is not null || steps[i].IsEmpty) continue;
            var (before, after) = (i > 0 ? result[i - 1] : null, i + 1 < steps.Count ? result[i + 1] : null);
            var isRepeated = i > 0 && steps[i].SequenceEqual(steps[i - 1]);
            var isTiedOver = (i == 0 && tiedFrom) || (i == steps.Count - 1 && tiedOn);
            var up = !isTiedOver && ((isRepeated && before == StemDirection.Up) || ((before ?? after) == StemDirection.Up && (after ?? before) == StemDirection.Up));
            result[i] = up ? StemDirection.Up : StemDirection.Down;
        }
        return [.. result.Select(d => d ?? StemDirection.Down)];
    }

    /// <summary>Length of a stem with flags or beams.</summary>
    /// <param name="flags">Their number.</param>
    public static double Length(int flags) => Usual + (PerExtraFlag * Math.Max(0, flags - 2));

    /// <summary>y of the free end of an unbeamed stem.</summary>
    /// <param name="direction">Direction.</param>
    /// <param name="low">Step of the lowest head.</param>
    /// <param name="high">Step of the highest head.</param>
    /// <param name="flags">Number of flags.</param>
    public static double Tip(StemDirection direction, int low, int high, int flags)
    {
        var length = Length(flags);
        if (direction == StemDirection.Up)
        {
            if (flags == 0 && high > 0) length = Math.Max(Shortest, length - (OutwardShortening * high));
            var up = Math.Min(StaffSteps.Y(high) - length, StaffSteps.Middle + BeyondTip(direction, flags));
            return flags > 0 && high <= -StaffSteps.FirstLedger ? Math.Min(up, StaffSteps.Y(-StaffSteps.FirstLedger) - FlagRoom(direction, flags)) : up;
        }
        if (flags == 0 && low < 0) length = Math.Max(Shortest, length + (OutwardShortening * low));
        var down = Math.Max(StaffSteps.Y(low) + length, StaffSteps.Middle - BeyondTip(direction, flags));
        return flags > 0 && low >= StaffSteps.FirstLedger ? Math.Max(down, StaffSteps.Y(StaffSteps.FirstLedger) + FlagRoom(direction, flags)) : down;
    }

    // What a flag takes from the tip of its stem to a ledger line that it ends beside.
    private static double FlagRoom(StemDirection direction, int flags)
    {
        var flag = Ink.Glyph(FlagGlyphs.Name(flags, direction)).Bounds;
        return (direction == StemDirection.Up ? flag.Bottom : -flag.Top) + (Ink.Defaults.LegerLineThickness / 2) + LedgerGap;
    }

    // Three and more flags stack up beyond the tip, and the stem goes on to the outermost: that end reaches the middle line.
    private static double BeyondTip(StemDirection direction, int flags)
    {
        if (flags < 3) return 0;
        var anchors = Ink.Glyph(FlagGlyphs.Name(flags, direction)).Anchors;
        return anchors.TryGetValue(direction == StemDirection.Up ? "stemUpNW" : "stemDownSW", out var anchor) ? Math.Abs(anchor.Y) : 0;
    }

    /// <summary>Whether a value carries a stem.</summary>
    public static bool HasStem(NoteValue value) => value.Base != NoteBase.Whole;
}

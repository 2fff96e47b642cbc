namespace SheetPress.Engraving;

/// <summary>
/// Where a beam lies. Its ends sit on, straddle or hang from staff lines (handbook practice, from memory), its stems are near their
/// usual length and never too short, and it rises as its notes ask.
/// </summary>
internal static class BeamPlacement
{
    // Positions are tried on this grid: with beams half a space thick the quarters are sit, straddle and hang.
    private const double Grid = 0.25;
    private const double Range = 1.5;

    // From here on outside the staff a beam is clear of the outer line: half a space of white parts them.
    private const double Clear = 0.7;

    // Wanted length of the shortest stem of a slanted and of a level beam: stems of a slanted beam may be a little shorter.
    private const double SlantedStem = 3.25;
    private const double LevelStem = 3.5;

    // Each beam beyond the first adds to the least stem, beyond the second to the wanted one.
    private const double LeastPerBeam = 0.5;

    // White between a beam and an accidental under it.
    private const double InkGap = 0.2;

    // Weight of a wrong rise against a wrong stem length.
    private const double RiseWeight = 2.5;
    private const double ShortWeight = 2;

    // Weight of each beam of the stack that comes from outside down to the outer line, which leaves a wedge of white closing to nothing.
    private const double WedgeWeight = 1.5;

    // Where notes of a group are two octaves apart the beam is set level rather than stretching a stem beyond this.
    private const double LongestStem = 10.75;
    private const double LongWeight = 20;

    /// <summary>Places a beam.</summary>
    /// <param name="notes">Its notes from left to right.</param>
    /// <param name="up">Whether the stems point up.</param>
    public static BeamLine Place(IReadOnlyList<BeamNote> notes, bool up)
    {
        // Downward stems are the mirror image about the middle line.
        var view = up ? notes : [.. notes.Select(Mirror)];
        var line = PlaceAbove(view);
        return up ? line : line with { LeftY = (2 * StaffSteps.Middle) - line.LeftY, RightY = (2 * StaffSteps.Middle) - line.RightY };
    }

    private static BeamNote Mirror(BeamNote note) => note with
    {
        HeadY = (2 * StaffSteps.Middle) - note.HeadY,
        Ink = [.. note.Ink.Select(b => b with { Top = (2 * StaffSteps.Middle) - b.Bottom, Bottom = (2 * StaffSteps.Middle) - b.Top })],
    };

    private static BeamLine PlaceAbove(IReadOnlyList<BeamNote> notes)
    {
        var wanted = BeamSlope.Wanted(notes);
        var beams = notes.Max(n => n.Beams);
        var thickness = Ink.Defaults.BeamThickness;
        var pitch = thickness + Ink.Defaults.BeamSpacing;
        var stem = (wanted == 0 ? LevelStem : SlantedStem) + (pitch * Math.Max(0, beams - 2));
        var least = StemRules.Shortest + (LeastPerBeam * (beams - 1));
        var flat = new BeamLine(notes[0].StemX, 0, notes[^1].StemX, wanted);
        // The line through the wanted slope on which the shortest stem has the wanted length.
        var ideal = notes.Min(n => n.HeadY - flat.At(n.StemX)) - stem + (thickness / 2);
        // Stems of ledger-line notes reach the middle line.
        ideal = Math.Min(ideal, StaffSteps.Middle - Math.Max(0, wanted));
        var (best, bestCost) = (flat with { LeftY = ideal, RightY = ideal + wanted }, double.PositiveInfinity);
        var start = Math.Round((ideal - Range) / Grid) * Grid;
        for (var left = start; left <= ideal + Range; left += Grid)
        {
            for (var rise = -BeamSlope.Most; rise <= BeamSlope.Most; rise += Grid)
            {
                if (rise * wanted < 0 || Math.Abs(rise) > Math.Abs(wanted) + Grid || (wanted == 0 && rise != 0)) continue;
                if (Math.Abs(rise) > BeamSlope.Steepest * (flat.RightX - flat.LeftX) + 0.01) continue;
                var line = flat with { LeftY = left, RightY = left + rise };
                if (!IsClean(left, beams, pitch) || !IsClean(left + rise, beams, pitch)) continue;
                if (Cost(line, notes, stem, least, rise - wanted, thickness) is var cost && cost < bestCost) (best, bestCost) = (line, cost);
            }
        }
        return best;
    }

    private static double Cost(BeamLine line, IReadOnlyList<BeamNote> notes, double stem, double least, double wrongRise, double thickness)
    {
        var shortest = notes.Min(n => n.HeadY - line.At(n.StemX)) + (thickness / 2);
        if (shortest < least || Math.Max(line.LeftY, line.RightY) > StaffSteps.Middle + Grid) return double.PositiveInfinity;
        var depth = ((notes.Max(n => n.Beams) - 1) * (thickness + Ink.Defaults.BeamSpacing)) + (thickness / 2);
        foreach (var note in notes)
        {
            foreach (var box in note.Ink)
            {
                if (box.Right < line.LeftX || box.Left > line.RightX) continue;
                if (Math.Max(line.At(box.Left), line.At(box.Right)) + depth > box.Top - InkGap) return double.PositiveInfinity;
            }
        }
        var wrongLength = shortest < stem ? (stem - shortest) * ShortWeight : shortest - stem;
        var tooLong = Math.Max(0, notes.Max(n => n.HeadY - line.At(n.StemX)) + (thickness / 2) - LongestStem);
        return (RiseWeight * Math.Abs(wrongRise)) + wrongLength + (LongWeight * tooLong) + (WedgeWeight * Wedges(line, notes.Max(n => n.Beams)));
    }

    /// <summary>
    /// Whether no beam of the stack leaves a thin wedge of white beside a staff line at one end: none floats in the middle of a space,
    /// nor that near to an outer line.
    /// </summary>
    private static bool IsClean(double y, int beams, double pitch)
    {
        for (var level = 0; level < Math.Min(beams, 3); level++)
        {
            var at = y + (level * pitch);
            if (at < -Clear || at > StaffSteps.BottomLine + Clear) continue;
            var part = at - Math.Floor(at);
            if (Math.Abs(part - 0.5) < Grid / 2) return false;
        }
        return true;
    }

    // Beams of the stack with one end on the outer line and the other clear of it.
    private static int Wedges(BeamLine line, int beams)
    {
        var pitch = Ink.Defaults.BeamThickness + Ink.Defaults.BeamSpacing;
        var (outer, inner) = (Math.Min(line.LeftY, line.RightY), Math.Max(line.LeftY, line.RightY));
        return Enumerable.Range(0, beams).Count(level => outer + (level * pitch) < -Grid && inner + (level * pitch) >= -Grid);
    }
}

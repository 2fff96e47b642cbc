namespace SheetPress.Engraving;

/// <summary>How near two columns may come.</summary>
internal static class InkDistance
{
    // White between ink of neighbouring columns. Fret numbers need more, or 1 and 2 read as 12: enough that a dash of their line is seen between them, not a dot.
    private const double StaffGap = 0.3;
    private const double TabGap = 0.65;
    private const double RowGap = 0.5;
    private const double ChordGap = 1.5;
    // A sign stands near the figure after it: with no more white before it, it would be read with the figure before.
    private const double DegreeGap = 0.7;
    // Accents of a run keep one height, and tenutos do not grow together to a line.
    private const double ArticulationGap = 0.3;

    // Ink that passes over or under other ink with less white than this counts as level with it.
    private const double VerticalGap = 0.2;

    /// <summary>Lanes that are rows of text.</summary>
    public static ReadOnlySpan<Lane> Rows => [Lane.Chord, Lane.Degree, Lane.Count, Lane.Roman, Lane.Stroke, Lane.Dynamic, Lane.DynamicAbove, Lane.Articulation, Lane.StringNumber];

    /// <summary>Lanes whose texts and hairpins stand for several notes and may be longer than them.</summary>
    public static ReadOnlySpan<Lane> LongTexts => [Lane.Chord, Lane.Roman, Lane.Dynamic, Lane.DynamicAbove];

    /// <summary>Least distance of two columns for ink in staff and tab; negative infinity when none faces the other.</summary>
    public static double Between(Column left, Column right)
    {
        var distance = double.NegativeInfinity;
        foreach (var a in left.Boxes)
        {
            if (a.Lane is not (Lane.Staff or Lane.Tab)) continue;
            var gap = a.Lane == Lane.Staff ? StaffGap : TabGap;
            foreach (var b in right.Boxes)
            {
                if (b.Lane != a.Lane || a.Box.Top >= b.Box.Bottom + VerticalGap || b.Box.Top >= a.Box.Bottom + VerticalGap) continue;
                distance = Math.Max(distance, a.Box.Right - b.Box.Left + gap);
            }
        }
        return distance;
    }

    /// <summary>Whether a column has ink in a lane.</summary>
    public static bool Has(Column column, Lane lane)
    {
        foreach (var box in column.Boxes) if (box.Lane == lane) return true;
        return false;
    }

    /// <summary>Least distance of two columns for the texts of a row.</summary>
    public static double InRow(Column left, Column right, Lane lane)
    {
        var (reachRight, reachLeft) = (double.NegativeInfinity, double.PositiveInfinity);
        foreach (var box in left.Boxes) if (box.Lane == lane) reachRight = Math.Max(reachRight, box.Box.Right);
        foreach (var box in right.Boxes) if (box.Lane == lane) reachLeft = Math.Min(reachLeft, box.Box.Left);
        return reachRight - reachLeft + lane switch
        {
            Lane.Chord or Lane.Roman => ChordGap,
            Lane.Degree => DegreeGap,
            Lane.Articulation or Lane.StringNumber => ArticulationGap,
            _ => RowGap,
        };
    }

    /// <summary>How far the texts of a row reach right of the column.</summary>
    public static double ReachRight(Column column, Lane lane)
    {
        var reach = 0.0;
        foreach (var box in column.Boxes) if (box.Lane == lane) reach = Math.Max(reach, box.Box.Right);
        return reach;
    }

    // Barlines run on between staff and tab, where the rows under the staff stand; dynamics there are moved aside when they are drawn.
    private static bool StopsAtBarline(Lane lane) => lane is not (Lane.Chord or Lane.Roman or Lane.Dynamic or Lane.DynamicAbove);

    /// <summary>How far ink reaches left of the column that has to keep clear of barlines.</summary>
    public static double StaffReachLeft(Column column)
    {
        var reach = 0.0;
        foreach (var box in column.Boxes) if (StopsAtBarline(box.Lane)) reach = Math.Max(reach, -box.Box.Left);
        return reach;
    }

    /// <summary>How far ink reaches right of the column that has to keep clear of barlines.</summary>
    public static double StaffReachRight(Column column)
    {
        var reach = 0.0;
        foreach (var box in column.Boxes) if (StopsAtBarline(box.Lane)) reach = Math.Max(reach, box.Box.Right);
        return reach;
    }
}

namespace SheetPress.Engraving;

/// <summary>
/// One system in staff spaces: x = 0 at its left end (the systemic barline; the bracket hangs out to the left), y = 0 at the top
/// line of its first staff, y downward.
/// </summary>
public sealed record EngravedSystem
{
    // Ink of neighbouring systems that is this near sideways counts as one above the other.
    private const double SidePadding = 0.5;
    private const double Tolerance = 1e-6;

    /// <summary>The marks.</summary>
    public required Drawing Drawing { get; init; }

    /// <summary>Top of all ink; negative when anything stands above the first staff.</summary>
    public required double Top { get; init; }

    /// <summary>Bottom of all ink.</summary>
    public required double Bottom { get; init; }

    /// <summary>Top line of the first staff: 0.</summary>
    public required double StaffTop { get; init; }

    /// <summary>Bottom line of the last staff.</summary>
    public required double StaffBottom { get; init; }

    /// <summary>Width with every spring at its natural length.</summary>
    public required double NaturalWidth { get; init; }

    /// <summary>Least width in which nothing comes too near.</summary>
    public required double LeastWidth { get; init; }

    /// <summary>Whether the system is wider than its line: something comes too near.</summary>
    public bool IsOverfull => LeastWidth > Width + Tolerance;

    /// <summary>Width of the system as set.</summary>
    public required double Width { get; init; }

    /// <summary>Width as set over natural width, clef and key signature left out of both.</summary>
    public required double StretchRatio { get; init; }

    /// <summary>Index in the score of the first measure.</summary>
    public required int FirstMeasure { get; init; }

    /// <summary>Index in the score of the last measure.</summary>
    public required int LastMeasure { get; init; }

    /// <summary>The upper outline of all ink.</summary>
    public required Skyline Upper { get; init; }

    /// <summary>The lower outline of all ink.</summary>
    public required Skyline Lower { get; init; }

    /// <summary>
    /// Distance from the top of this system's y axis to that of the next one, so that their ink comes no nearer than a gap: the
    /// lower outline of this system against the upper outline of the next.
    /// </summary>
    /// <param name="next">The system below.</param>
    /// <param name="gap">Smallest white between the outlines, in staff spaces.</param>
    public double DistanceTo(EngravedSystem next, double gap) => Lower.DistanceTo(next.Upper, gap, SidePadding);
}

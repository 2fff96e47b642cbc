using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A line of a barline.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Width">Thickness.</param>
internal readonly record struct BarStroke(double Left, double Width);

/// <summary>A clef, key or meter sign at a boundary.</summary>
/// <param name="Staff">0 the staff, 1 the tab.</param>
/// <param name="Mark">The sign, with y from the top line of its staff.</param>
internal readonly record struct BoundarySign(int Staff, Mark Mark);

/// <summary>
/// What stands between two measures, or at the start or end of a system: barline, repeat dots, clef, key and meter. x = 0 is the
/// left edge of the barline (at the start of a system: the left end of the staff).
/// </summary>
internal sealed record Boundary
{
    /// <summary>Lines of the barline.</summary>
    public ImmutableArray<BarStroke> Strokes { get; init; } = [];

    /// <summary>Left edges of pairs of repeat dots.</summary>
    public ImmutableArray<double> Dots { get; init; } = [];

    /// <summary>Signs.</summary>
    public ImmutableArray<BoundarySign> Signs { get; init; } = [];

    /// <summary>Left edge of all ink, 0 or negative.</summary>
    public double Left { get; init; }

    /// <summary>Right edge of all ink.</summary>
    public double Right { get; init; }

    /// <summary>Right edge of the barline, before any signs that follow it.</summary>
    public double BarRight { get; init; }

    /// <summary>Whether it is the start of a system.</summary>
    public bool IsStart { get; init; }

    /// <summary>Whether a line or sign stands between the last ink here and the first note: then the note may come nearer than after a clef.</summary>
    public bool EndsWithBarline { get; init; }
}

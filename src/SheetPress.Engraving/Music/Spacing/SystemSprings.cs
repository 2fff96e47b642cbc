using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A run of measures set as one system: its boundaries and columns in a row with the springs between them.</summary>
internal sealed class SystemSprings
{
    // From a barline (or from clef, key and meter) to the first note: mostly fixed.
    private const double AfterBarline = 1.3;
    private const double AfterSigns = 1.7;
    private const double FixedShare = 0.7;

    // Ink keeps this much white from a barline on either side.
    private const double BarlineGap = 0.7;

    // And this much from clef, key and meter: an accidental nearer than that would be read with the key signature.
    private const double SignsGap = 1.1;

    // Ink on both sides of where a measure may be divided keeps this much.
    private const double OpenGap = 0.3;

    /// <summary>Assembles measures.</summary>
    /// <param name="measures">All measures of the score.</param>
    /// <param name="boundaries">Lays out the boundaries.</param>
    /// <param name="first">First measure of the system.</param>
    /// <param name="end">The measure after its last.</param>
    /// <param name="density">Factor of all elastic space. Below 1 measures are not kept even under their texts: there is no room to be even.</param>
    public SystemSprings(ImmutableArray<MeasureSprings> measures, BoundaryCache boundaries, int first, int end, double density)
    {
        (First, End) = (first, end);
        var springs = ImmutableArray.CreateBuilder<Spring>();
        var rods = new List<Rod>();
        var starts = ImmutableArray.CreateBuilder<int>(end - first);
        var bounds = ImmutableArray.CreateBuilder<Boundary>(end - first + 1);
        var rows = new RowRods();
        bounds.Add(boundaries.Start(first));
        for (var m = first; m < end; m++)
        {
            var measure = measures[m];
            var left = bounds[^1];
            var right = m + 1 < end ? boundaries.Between(m) : boundaries.End(m);
            var boundaryNode = springs.Count;
            springs.Add(m > first && IsOpen(left, measure) ? new Spring(0, 0, measure.ReachLeft) : Opening(left, measure, density));
            var firstNode = springs.Count;
            starts.Add(firstNode);
            var (wanted, held) = density < 1 ? (0, 0) : (measure.Wanted, measure.Held);
            Spring ForTexts(Spring spring) => spring with { Elastic = spring.Elastic * density, Least = Math.Max(spring.Least, spring.Elastic * held), Wanted = spring.Elastic * wanted };
            foreach (var spring in measure.Inner) springs.Add(ForTexts(spring));
            foreach (var rod in measure.Rods) rods.Add(new Rod(rod.From + firstNode, rod.To + firstNode, rod.Distance));
            rows.Add(measure.Measure.Columns, firstNode, rods);
            var white = m + 1 < end && IsOpen(right, measures[m + 1]) ? OpenGap : BarlineGap;
            springs.Add(ForTexts(new Spring(0, measure.Tail, measure.ReachRight + white - right.Left)));
            foreach (var (column, reach) in measure.EndReaches) rods.Add(new Rod(firstNode + column, springs.Count, reach + white - right.Left));
            if (measure.Measure.LeastWidth > 0) rods.Add(new Rod(boundaryNode, springs.Count, left.Right + measure.Measure.LeastWidth - right.Left));
            bounds.Add(right);
        }
        rows.End(springs.Count, bounds[^1].Right, rods);
        Boundaries = bounds.MoveToImmutable();
        ColumnNodes = starts.MoveToImmutable();
        Chain = new SpringChain(springs.ToImmutable(), rods);
    }

    /// <summary>First measure.</summary>
    public int First { get; }

    /// <summary>The measure after the last.</summary>
    public int End { get; }

    /// <summary>Boundaries: the start, one after each measure.</summary>
    public ImmutableArray<Boundary> Boundaries { get; }

    /// <summary>For each measure the node of its first column; the boundary before it is the node before.</summary>
    public ImmutableArray<int> ColumnNodes { get; }

    /// <summary>The springs: node 0 is the start of the system.</summary>
    public SpringChain Chain { get; }

    /// <summary>Width that does not stretch: what stands before the first note and after the last barline.</summary>
    public double FixedWidth => Boundaries[0].Right + Boundaries[^1].Right;

    /// <summary>Width with every spring at its natural length.</summary>
    public double NaturalWidth => Chain.NaturalLength + Boundaries[^1].Right;

    /// <summary>Least width without collisions.</summary>
    public double LeastWidth => Chain.LeastLength + Boundaries[^1].Right;

    /// <summary>How much the music is stretched (above 1) or squeezed at a width.</summary>
    public double Ratio(double width) => (width - FixedWidth) / (NaturalWidth - FixedWidth);

    /// <summary>How much of the free space is left at a width that is not below the least: 1 at natural width, 0 when everything is as near as it may be.</summary>
    public double Tension(double width) => Chain.TensionFor(width - Boundaries[^1].Right);

    /// <summary>Places of all nodes at a width.</summary>
    public double[] Positions(double width)
    {
        var lengths = Chain.Solve(width - Boundaries[^1].Right);
        var positions = new double[lengths.Length + 1];
        for (var i = 0; i < lengths.Length; i++) positions[i + 1] = positions[i] + lengths[i];
        return positions;
    }

    // Nothing stands where a measure is divided within a system.
    private static bool IsOpen(Boundary boundary, MeasureSprings next) => boundary.Strokes.IsEmpty && next.Measure.Plan.Context.IsContinued;

    private static Spring Opening(Boundary boundary, MeasureSprings measure, double density)
    {
        var gap = boundary.EndsWithBarline ? AfterBarline : AfterSigns;
        return new Spring(boundary.Right + (gap * FixedShare), gap * (1 - FixedShare) * density, boundary.Right + (boundary.EndsWithBarline ? BarlineGap : SignsGap) + measure.ReachLeft);
    }
}

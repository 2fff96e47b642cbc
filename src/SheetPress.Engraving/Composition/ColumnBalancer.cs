using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Sets a flow in one box, as one column or as two of equal height.</summary>
internal static class ColumnBalancer
{
    // Costs closer than this are the same: then the left column is the longer one, as readers expect.
    private const double Tolerance = 1e-9;

    // How many millimetres a column may grow to be spared a penalty of one.
    private const double PenaltyHeight = 0.06;

    /// <summary>Makes one box of a column, its white at natural height.</summary>
    internal static FlowBox Stack(ImmutableArray<FlowBox> flow)
    {
        var drawings = ImmutableArray.CreateBuilder<PlacedDrawing>();
        Place(drawings, flow.AsSpan(), 0, 0);
        return new FlowBox(Height(flow, 0, flow.Length), drawings.DrainToImmutable());
    }

    /// <summary>Makes one box of two columns as level as the allowed breaks let them be.</summary>
    /// <param name="flow">The flow, set to the width of a column.</param>
    /// <param name="offset">Distance of the left edges of the columns.</param>
    internal static FlowBox Balance(ImmutableArray<FlowBox> flow, double offset)
    {
        var (best, bestHeight, bestCost) = (flow.Length, Height(flow, 0, flow.Length), double.PositiveInfinity);
        for (var cut = 1; cut < flow.Length; cut++)
        {
            if (flow[cut - 1].BreakPenalty == FlowBox.Never) continue;
            var height = Math.Max(Height(flow, 0, cut), Height(flow, cut, flow.Length) + (flow[cut - 1].Repeated?.Height ?? 0));
            var cost = height + (PenaltyHeight * flow[cut - 1].BreakPenalty);
            if (cost > bestCost + Tolerance) continue;
            (best, bestHeight, bestCost) = (cut, height, cost);
        }
        var drawings = ImmutableArray.CreateBuilder<PlacedDrawing>();
        Place(drawings, flow.AsSpan()[..best], 0, 0);
        if (best < flow.Length)
        {
            var y = 0.0;
            if (flow[best - 1].Repeated is { } header)
            {
                Place(drawings, [header], offset, 0);
                y = header.Height;
            }
            Place(drawings, flow.AsSpan()[best..], offset, y);
        }
        return new FlowBox(bestHeight, drawings.DrainToImmutable());
    }

    private static double Height(ImmutableArray<FlowBox> flow, int start, int end)
    {
        var height = 0.0;
        for (var i = start; i < end; i++) height += flow[i].Height + (i + 1 < end ? flow[i].After.Natural : 0);
        return height;
    }

    private static void Place(ImmutableArray<PlacedDrawing>.Builder drawings, ReadOnlySpan<FlowBox> flow, double x, double y)
    {
        foreach (var box in flow)
        {
            foreach (var drawing in box.Drawings) drawings.Add(drawing.Offset(x, y));
            y += box.Height + box.After.Natural;
        }
    }
}

namespace SheetPress.Engraving;

/// <summary>An event at its x in a system.</summary>
/// <param name="plan">The event as planned.</param>
/// <param name="measure">Its measure.</param>
/// <param name="x">x of its column.</param>
internal sealed class PlacedEvent(EventPlan plan, PlacedMeasure measure, double x)
{
    private double _articulationTop = double.PositiveInfinity;
    private double _articulationBottom = double.NegativeInfinity;

    /// <summary>The event as planned.</summary>
    public EventPlan Plan { get; } = plan;

    /// <summary>Its measure.</summary>
    public PlacedMeasure Measure { get; } = measure;

    /// <summary>x of its column.</summary>
    public double X { get; } = x;

    /// <summary>Free end of the stem; beams set it.</summary>
    public double StemTip { get; set; } = plan.StemTip;

    /// <summary>How far a rest under a beam is moved down to clear it.</summary>
    public double RestDrop { get; set; }

    /// <summary>Middle of its heads (of the rest).</summary>
    public double Centre => X + Plan.Centre;

    /// <summary>Middle of the stem.</summary>
    public double StemX => X + Plan.StemX;

    /// <summary>Left edge of its heads.</summary>
    public double Left => X + Plan.Left;

    /// <summary>Right edge of its heads.</summary>
    public double Right => X + Plan.Right;

    /// <summary>Whether the stem points up.</summary>
    public bool IsUp => Plan.Stem == StemDirection.Up;

    /// <summary>
    /// y of the end of the event on a side: the stem tip where the stem points there, else the outer edge of the heads, or of the
    /// articulations beside them.
    /// </summary>
    public double Edge(bool above)
    {
        var edge = Plan.Edge(above, StemTip);
        return above ? Math.Min(edge, _articulationTop) : Math.Max(edge, _articulationBottom);
    }

    /// <summary>Takes note of an articulation that belongs to the event.</summary>
    public void AddArticulation(bool above, Box ink)
    {
        if (above) _articulationTop = Math.Min(_articulationTop, ink.Top);
        else _articulationBottom = Math.Max(_articulationBottom, ink.Bottom);
    }
}

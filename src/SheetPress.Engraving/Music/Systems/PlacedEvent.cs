namespace SheetPress.Engraving;

/// <summary>An event at its x in a system.</summary>
/// <param name="plan">The event as planned.</param>
/// <param name="measure">Its measure.</param>
/// <param name="x">x of its column.</param>
internal sealed class PlacedEvent(EventPlan plan, PlacedMeasure measure, double x)
{
    /// <summary>The event as planned.</summary>
    public EventPlan Plan { get; } = plan;

    /// <summary>Its measure.</summary>
    public PlacedMeasure Measure { get; } = measure;

    /// <summary>x of its column.</summary>
    public double X { get; } = x;

    /// <summary>Free end of the stem; beams set it.</summary>
    public double StemTip { get; set; } = plan.StemTip;

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

    /// <summary>y of the end of the event on a side: the stem tip where the stem points there, else the outer edge of the heads.</summary>
    public double Edge(bool above)
    {
        var heads = above ? Plan.TopHead - 0.5 : Plan.BottomHead + 0.5;
        if (!Plan.HasStem || IsUp != above) return heads;
        return above ? Math.Min(heads, StemTip) : Math.Max(heads, StemTip);
    }
}

namespace SheetPress.Engraving;

/// <summary>Shapes of ties and slurs.</summary>
internal static class Arc
{
    // The control points lie this share of the length from the ends, but never further than a few spaces: long arcs are flat in the middle.
    private const double Shoulder = 0.28;
    private const double LongestShoulder = 5;

    // The belly of a steep slur leans over by as much as keeps the curve even, in shares of its shoulder no more than this.
    private const double MostLean = 0.6;

    /// <summary>A cubic curve reaches this share of the way to its control points.</summary>
    public const double Reach = 0.75;

    /// <summary>An arc between two points.</summary>
    /// <param name="start">Left end.</param>
    /// <param name="end">Right end.</param>
    /// <param name="height">How far its middle stands off the straight line between the ends.</param>
    /// <param name="above">Whether it bulges upward.</param>
    /// <param name="role">Tie or slur.</param>
    /// <param name="origin">Origin.</param>
    public static CurveMark Of(Point start, Point end, double height, bool above, MarkRole role, MarkOrigin origin)
    {
        var shoulder = Math.Min(Shoulder * (end.X - start.X), LongestShoulder);
        var slope = end.X > start.X ? (end.Y - start.Y) / (end.X - start.X) : 0;
        var lift = (above ? -height : height) / Reach;
        var defaults = Ink.Defaults;
        var (ends, middle) = role == MarkRole.Tie
            ? (defaults.TieEndpointThickness, defaults.TieMidpointThickness)
            : (defaults.SlurEndpointThickness, defaults.SlurMidpointThickness);
        var lean = Math.Clamp(-lift * slope / Math.Sqrt(1 + (slope * slope)), -MostLean * shoulder, MostLean * shoulder);
        return new CurveMark(
            start,
            new Point(start.X + shoulder + lean, start.Y + (slope * shoulder) + lift),
            new Point(end.X - shoulder + lean, end.Y - (slope * shoulder) + lift),
            end,
            ends,
            middle)
        { Role = role, Origin = origin };
    }
}

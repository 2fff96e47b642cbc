namespace SheetPress.Engraving;

/// <summary>Where a tie lies: away from the stem, its ends clear of staff lines, never flat.</summary>
internal static class TieShape
{
    // Height by length, within bounds: a short tie is still an arc, a long one does not tower.
    private const double BaseHeight = 0.3;
    private const double HeightPerSpace = 0.1;
    private const double LeastHeight = 0.45;
    private const double MostHeight = 1.1;

    // The end of an outer tie from the middle of the head: in the middle of the space beside it.
    private const double FromLine = 0.62;
    private const double FromSpace = 0.78;

    // Ink of an end or of the top of the arc keeps this far from the middle of a staff line.
    private const double LineGap = 0.2;

    /// <summary>A tie outside the heads: of a single note, or of the outer note of a chord.</summary>
    /// <param name="startX">Left end.</param>
    /// <param name="endX">Right end.</param>
    /// <param name="step">Step of the heads.</param>
    /// <param name="above">Whether it lies above them.</param>
    /// <param name="origin">Origin.</param>
    public static CurveMark Outer(double startX, double endX, int step, bool above, MarkOrigin origin)
    {
        var away = above ? -1 : 1;
        var y = StaffSteps.Y(step) + (away * (StaffSteps.IsLine(step) ? FromLine : FromSpace));
        return Shape(startX, endX, y, above, origin);
    }

    /// <summary>A tie between the heads of a chord.</summary>
    public static CurveMark Inner(double startX, double endX, int step, bool above, MarkOrigin origin)
    {
        var away = above ? -1 : 1;
        return Shape(startX, endX, StaffSteps.Y(step) + (away * (StaffSteps.IsLine(step) ? LineGap + 0.05 : 0)), above, origin);
    }

    private static CurveMark Shape(double startX, double endX, double y, bool above, MarkOrigin origin)
    {
        var height = Math.Clamp(BaseHeight + (HeightPerSpace * (endX - startX)), LeastHeight, MostHeight);
        var top = y + (above ? -height : height);
        if (top is > -LineGap and < StaffSteps.BottomLine + LineGap)
        {
            // The top of the arc does not lie along a staff line.
            var off = top - Math.Round(top);
            var wanted = Math.Max(Math.Abs(off), LineGap) * (off < 0 || (off == 0 && above) ? -1 : 1);
            height = Math.Max(LeastHeight - LineGap, Math.Abs(Math.Round(top) + wanted - y));
        }
        return Arc.Of(new Point(startX, y), new Point(endX, y), height, above, MarkRole.Tie, origin);
    }
}

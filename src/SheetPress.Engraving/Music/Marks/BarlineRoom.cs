namespace SheetPress.Engraving;

/// <summary>Keeps words between staff and tab off the barlines that run through there.</summary>
internal static class BarlineRoom
{
    private const double Gap = 0.3;

    /// <summary>The smallest sideways move that takes a box off every barline of the system.</summary>
    public static double Move(SystemFrame frame, Box ink)
    {
        foreach (var (x, boundary) in frame.Boundaries)
        {
            if (boundary.Strokes.IsEmpty) continue;
            var left = x + boundary.Strokes[0].Left - Gap;
            var right = x + boundary.Strokes[^1].Left + boundary.Strokes[^1].Width + Gap;
            if (boundary.Dots.Length > 0) (left, right) = (Math.Min(left, x + boundary.Dots.Min() - Gap), Math.Max(right, x + boundary.Dots.Max() + Ink.Glyph("repeatDot").Bounds.Right + Gap));
            if (ink.Right <= left || ink.Left >= right) continue;
            var (before, after) = (left - ink.Right, right - ink.Left);
            return -before <= after || ink.Right + after > frame.Width ? before : after;
        }
        return 0;
    }
}

namespace SheetPress.Engraving;

/// <summary>The line under a stretch of text on a baseline of 0.</summary>
internal static class Underline
{
    // In em, below the baseline.
    private const double Drop = 0.14;
    private const double Thickness = 0.04;

    /// <summary>The line.</summary>
    /// <param name="left">Where the text begins.</param>
    /// <param name="right">Where it ends.</param>
    /// <param name="size">Length of the em in millimetres.</param>
    internal static LineMark Of(double left, double right, double size) =>
        new(new Point(left, Drop * size), new Point(right, Drop * size), Thickness * size) { Role = MarkRole.BodyText };
}

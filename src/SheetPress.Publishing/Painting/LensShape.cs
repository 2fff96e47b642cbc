using SheetPress.Engraving;

namespace SheetPress.Publishing;

/// <summary>
/// The outline of a tie or slur: two cubic curves around its centre line. The edges run beside the line at half its
/// thickness, across the chord from end to end. A cubic with its ends moved by e and its control points by c moves by
/// (e + 3c) / 4 in the middle, so c = (4m - e) / 3 gives the thickness m there.
/// </summary>
/// <param name="Upper">Start, two control points and end of one edge.</param>
/// <param name="Lower">The other edge, from end to start.</param>
internal readonly record struct LensShape((Point A, Point B, Point C, Point D) Upper, (Point A, Point B, Point C, Point D) Lower)
{
    internal static LensShape Of(CurveMark curve)
    {
        var (dx, dy) = (curve.End.X - curve.Start.X, curve.End.Y - curve.Start.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        var (acrossX, acrossY) = length == 0 ? (0.0, 1.0) : (-dy / length, dx / length);
        var end = curve.EndThickness / 2;
        var control = ((4 * (curve.MiddleThickness / 2)) - end) / 3;
        Point Beside(Point p, double distance) => p.Offset(acrossX * distance, acrossY * distance);
        return new LensShape(
            (Beside(curve.Start, -end), Beside(curve.Control1, -control), Beside(curve.Control2, -control), Beside(curve.End, -end)),
            (Beside(curve.End, end), Beside(curve.Control2, control), Beside(curve.Control1, control), Beside(curve.Start, end)));
    }
}

using CsCheck;
using SheetPress.Engraving;

namespace SheetPress.Publishing.Tests.Painting;

public class LensShapeTests
{
    private static Point At((Point A, Point B, Point C, Point D) edge, double t) => new CurveMark(edge.A, edge.B, edge.C, edge.D, 0, 0).At(t);

    private static double Distance(Point a, Point b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    [Fact]
    public void It_is_as_thick_as_asked_for_at_the_ends_and_in_the_middle() =>
        Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[0, 0.5], Gen.Double[0.5, 2]).Sample((x, y, ends, middle) =>
        {
            var curve = new CurveMark(new Point(0, 0), new Point(3, -4), new Point(x - 3, y - 4), new Point(x, y), ends, middle);
            var (upper, lower) = LensShape.Of(curve);
            Distance(upper.A, lower.D).ShouldBe(ends, 1e-9);
            Distance(upper.D, lower.A).ShouldBe(ends, 1e-9);
            Distance(At(upper, 0.5), At(lower, 0.5)).ShouldBe(middle, 1e-9);
            var between = At(upper, 0.5);
            Distance(new Point((between.X + At(lower, 0.5).X) / 2, (between.Y + At(lower, 0.5).Y) / 2), curve.At(0.5)).ShouldBe(0, 1e-9);
        });
}

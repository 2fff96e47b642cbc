namespace SheetPress.Engraving;

/// <summary>
/// Boxes that together cover the ink of a mark closely: one for upright things, slices for slanted and curved ones and for glyphs
/// with empty corners.
/// </summary>
internal static class InkCover
{
    /// <summary>Slices of slanted and curved ink are this wide (sp) where room is sought: a steep beam is covered to a tenth of a space.</summary>
    public const double Coarse = 0.4;

    /// <summary>Slices (sp) where distances are judged: a steep beam is covered to a fortieth of a space.</summary>
    public const double Fine = 0.1;

    private const int MostSlices = 400;

    /// <summary>The boxes of a mark.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="unit">Length of one staff space in the unit of the drawing; slices follow it.</param>
    /// <param name="slice">Greatest width of a slice in staff spaces.</param>
    public static IEnumerable<Box> Of(Mark mark, double unit = 1, double slice = Coarse) => mark switch
    {
        GlyphMark glyph => OfGlyph(glyph),
        LineMark line when IsSlanted(line) => OfLine(line, unit * slice),
        PolygonMark polygon => OfPolygon(polygon, unit * slice),
        CurveMark curve => OfCurve(curve, unit * slice),
        _ => mark.Bounds.IsEmpty ? [] : [mark.Bounds],
    };

    private static bool IsSlanted(LineMark line) => line.From.X != line.To.X && line.From.Y != line.To.Y;

    private static int Slices(double width, double slice) => Math.Clamp((int)Math.Ceiling(width / slice), 1, MostSlices);

    private static IEnumerable<Box> OfGlyph(GlyphMark mark)
    {
        var profile = GlyphProfiles.Of(mark.Glyph);
        if (profile.Count == 0) return [mark.Bounds];
        return profile.Select(b => b.Transform(mark.StaffSpace, mark.Position.X, mark.Position.Y));
    }

    private static IEnumerable<Box> OfLine(LineMark line, double slice)
    {
        var bounds = line.Bounds;
        var count = Slices(bounds.Width, slice);
        var (a, b) = line.From.X <= line.To.X ? (line.From, line.To) : (line.To, line.From);
        var slope = (b.Y - a.Y) / (b.X - a.X);
        var half = line.Thickness / 2 * Math.Sqrt(1 + (slope * slope));
        for (var i = 0; i < count; i++)
        {
            var left = bounds.Left + (bounds.Width * i / count);
            var right = bounds.Left + (bounds.Width * (i + 1) / count);
            var y0 = a.Y + (slope * (left - a.X));
            var y1 = a.Y + (slope * (right - a.X));
            yield return new Box(left, Math.Max(bounds.Top, Math.Min(y0, y1) - half), right, Math.Min(bounds.Bottom, Math.Max(y0, y1) + half));
        }
    }

    private static IEnumerable<Box> OfPolygon(PolygonMark polygon, double slice)
    {
        var bounds = polygon.Bounds;
        if (bounds.IsEmpty) yield break;
        var count = Slices(bounds.Width, slice);
        var grow = polygon.OutlineThickness / 2;
        for (var i = 0; i < count; i++)
        {
            var left = bounds.Left + (bounds.Width * i / count);
            var right = bounds.Left + (bounds.Width * (i + 1) / count);
            var part = SliceOf(polygon, left - grow, right + grow);
            if (!part.IsEmpty) yield return new Box(left, part.Top - grow, right, part.Bottom + grow);
        }
    }

    // The vertical range of a polygon between two places: of its edges clipped to that range.
    private static Box SliceOf(PolygonMark polygon, double left, double right)
    {
        var box = Box.Empty;
        for (var i = 0; i < polygon.Corners.Length; i++)
        {
            var a = polygon.Corners[i];
            var b = polygon.Corners[(i + 1) % polygon.Corners.Length];
            if (a.X > b.X) (a, b) = (b, a);
            if (b.X < left || a.X > right) continue;
            var (x0, x1) = (Math.Max(a.X, left), Math.Min(b.X, right));
            var (y0, y1) = b.X == a.X ? (a.Y, b.Y) : (YAt(a, b, x0), YAt(a, b, x1));
            box = box.Union(new Box(x0, Math.Min(y0, y1), x1, Math.Max(y0, y1)));
        }
        return box;
    }

    private static double YAt(Point a, Point b, double x) => a.Y + ((b.Y - a.Y) * (x - a.X) / (b.X - a.X));

    private static IEnumerable<Box> OfCurve(CurveMark curve, double slice)
    {
        var count = Math.Max(8, Slices(Math.Abs(curve.End.X - curve.Start.X), slice));
        var from = curve.Start;
        for (var i = 1; i <= count; i++)
        {
            var t = (double)i / count;
            var to = curve.At(t);
            // The stroke swells from its ends to its middle; the wider end of the slice counts.
            var middle = 1 - Math.Abs((2 * (t - (0.5 / count))) - 1);
            var half = (curve.EndThickness + ((curve.MiddleThickness - curve.EndThickness) * middle)) / 2;
            yield return new Box(Math.Min(from.X, to.X), Math.Min(from.Y, to.Y) - half, Math.Max(from.X, to.X), Math.Max(from.Y, to.Y) + half);
            from = to;
        }
    }
}

using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>The sign for swung pairs: a beamed pair equals a long and a short note under a triplet bracket.</summary>
internal static class SwingSign
{
    // All in em of the text beside it: notes at this staff space, their stems, and the distances between them.
    private const double Note = 0.33;
    private const double Stem = 2.6;
    private const double PairDistance = 2.4;
    private const double SwungDistance = 3.0;
    private const double BracketRise = 1.05;
    private const double NumberGap = 0.35;
    private const double TripletScale = 0.75;
    private const double Equal = 0.3;

    /// <summary>Adds the sign in brackets.</summary>
    public static void Append(SymbolBuilder builder, Feel feel, double size)
    {
        var sp = Note * size;
        var beams = feel == Feel.SwingSixteenths ? 2 : 1;
        builder.Text("(", TextFont.Serif, size);
        builder.X += 0.1 * size;
        var start = builder.X;
        Pair(builder, sp, PairDistance, beams, beams);
        builder.X = start + ((PairDistance + 1.3) * sp) + (Equal * size);
        builder.Text("=", TextFont.SerifSemiBold, size);
        builder.X += Equal * size;
        start = builder.X;
        Swung(builder, sp, beams);
        builder.X = start + ((SwungDistance + 1.3) * sp) + (feel == Feel.SwingEighths ? 0.9 * sp : 0) + (0.1 * size);
        builder.Text(")", TextFont.Serif, size);
    }

    private static void Pair(SymbolBuilder builder, double sp, double distance, int beams, int secondBeams)
    {
        Head(builder, 0, sp);
        Head(builder, distance * sp, sp);
        var (left, right) = (StemX(0, sp), StemX(distance * sp, sp));
        for (var level = 0; level < Math.Max(beams, secondBeams); level++)
        {
            // A second beam that only the short note carries is a stub.
            var from = level < beams ? left : (left + right) / 2;
            var top = (-Stem + (level * 0.75)) * sp;
            builder.Mark(Beam(from, right, top, 0.5 * sp), 0);
        }
    }

    private static void Swung(SymbolBuilder builder, double sp, int beams)
    {
        var second = SwungDistance * sp;
        if (beams == 1)
        {
            Head(builder, 0, sp);
            Head(builder, second, sp);
            var flag = new GlyphMark(Ink.Glyph("flag8thUp"), new Point(StemX(second, sp) - (Ink.Defaults.StemThickness / 2 * sp), (-Stem - 0.5) * sp), 0.85 * sp);
            builder.Mark(flag, 0);
        }
        else
        {
            Pair(builder, sp, SwungDistance, 1, 2);
        }
        // The beam shows what belongs together, as a bracket would.
        Triplet(builder, sp, withBracket: beams == 1);
    }

    private static void Triplet(SymbolBuilder builder, double sp, bool withBracket)
    {
        var (left, right) = (0.0, (SwungDistance + 1.18) * sp);
        var y = (-Stem - BracketRise - 0.5) * sp;
        var middle = (left + right) / 2;
        var digit = Ink.Glyph("tuplet" + 3.ToString(CultureInfo.InvariantCulture));
        var scale = TripletScale * sp;
        var x = middle - ((digit.Bounds.Left + digit.Bounds.Right) / 2 * scale);
        builder.Mark(new GlyphMark(digit, new Point(x, y - ((digit.Bounds.Top + digit.Bounds.Bottom) / 2 * scale)), scale), 0);
        if (!withBracket) return;
        var half = (digit.Bounds.Width / 2 * scale) + (NumberGap * sp);
        var thickness = Ink.Defaults.TupletBracketThickness * sp;
        LineMark Line(double x1, double y1, double x2, double y2) => new(new Point(x1, y1), new Point(x2, y2), thickness);
        builder.Mark(Line(left, y, middle - half, y), 0).Mark(Line(middle + half, y, right, y), 0);
        builder.Mark(Line(left, y - (thickness / 2), left, y + (0.6 * sp)), 0).Mark(Line(right, y - (thickness / 2), right, y + (0.6 * sp)), 0);
    }

    private static void Head(SymbolBuilder builder, double x, double sp)
    {
        var thickness = Ink.Defaults.StemThickness * sp;
        var stem = StemX(x, sp);
        builder.Mark(new GlyphMark(Ink.Glyph("noteheadBlack"), new Point(x, -0.5 * sp), sp), 0);
        builder.Mark(new LineMark(new Point(stem, -0.5 * sp), new Point(stem, (-Stem - 0.5) * sp), thickness), 0);
    }

    private static double StemX(double x, double sp) => x + ((Ink.Glyph("noteheadBlack").Anchors["stemUpSE"].X - (Ink.Defaults.StemThickness / 2)) * sp);

    private static PolygonMark Beam(double left, double right, double top, double thickness)
    {
        top -= thickness;
        ImmutableArray<Point> corners = [new(left, top), new(right, top), new(right, top + thickness), new(left, top + thickness)];
        return new PolygonMark(corners);
    }
}

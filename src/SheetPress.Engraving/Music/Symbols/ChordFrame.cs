using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>The small chord diagram over a chord symbol: upright, lowest string left, dots on frets, o and x over the nut.</summary>
internal static class ChordFrame
{
    private const double StringDistance = 1.0;
    private const double FretDistance = 1.2;
    private const int FewestFrets = 4;
    private const double LineThickness = 0.1;
    private const double NutThickness = 0.4;
    private const double DotRadius = 0.36;
    private const double RootSide = 0.33;
    private const double BarreThickness = 0.36;
    private const double OpenRadius = 0.3;
    private const double CrossSize = 0.27;

    // White between the nut, or the top fret line, and open or muted signs over it.
    private const double SignGap = 0.22;

    // White between the number of a fret and what stands beside it, the grid or a dot on the outer string.
    private const double NumberGap = 0.55;

    /// <summary>Lays out a diagram; x = 0 at the left string and y = 0 at the bottom of the grid.</summary>
    /// <param name="mark">The chord with its diagram.</param>
    /// <param name="instrument">The instrument.</param>
    /// <param name="sizes">Sizes of text.</param>
    public static SymbolLayout Layout(HarmonyMark mark, Instrument instrument, TextSizes sizes)
    {
        var tones = mark.Frame;
        var strings = instrument.StringCount;
        var stopped = tones.Where(t => t.Fret > 0).Select(t => t.Fret).ToList();
        var highest = stopped.Count == 0 ? 0 : stopped.Max();
        var first = highest <= FewestFrets || stopped.Count == 0 ? 1 : stopped.Min();
        var frets = Math.Max(FewestFrets, highest - first + 1);
        var (width, height) = ((strings - 1) * StringDistance, frets * FretDistance);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        for (var s = 0; s < strings; s++) marks.Add(Line(X(s + 1), -height, X(s + 1), 0));
        for (var f = 0; f <= frets; f++)
        {
            var nut = f == 0 && first == 1;
            var y = -height + (f * FretDistance) - (nut ? NutThickness / 2 : 0);
            marks.Add(Line(-LineThickness / 2, y, width + (LineThickness / 2), y, nut ? NutThickness : LineThickness));
        }
        foreach (var barre in mark.FrameBarres)
        {
            marks.Add(new LineMark(new Point(X(barre.FirstString), Y(barre.Fret)), new Point(X(barre.LastString), Y(barre.Fret)), BarreThickness, RoundEnds: true) { Role = MarkRole.Diagram });
        }
        foreach (var tone in tones.Where(t => t.Fret > 0))
        {
            var at = new Point(X(tone.String), Y(tone.Fret));
            // In a map of tones the root is a square, as in the large diagrams.
            marks.Add(mark.FrameIsMap && IsRoot(mark, instrument, tone)
                ? new RectangleMark(new Box(at.X - RootSide, at.Y - RootSide, at.X + RootSide, at.Y + RootSide)) { Role = MarkRole.Diagram }
                : new EllipseMark(at, DotRadius, DotRadius) { Role = MarkRole.Diagram });
        }
        // Over the room for the nut, whether it is there or not, so that the signs of neighbouring diagrams are level.
        var signs = -height - NutThickness - SignGap - (LineThickness / 2) - OpenRadius;
        for (var s = 1; s <= strings; s++)
        {
            var open = tones.Any(t => t.String == s && t.Fret == 0);
            if (open && mark.FrameIsMap && IsRoot(mark, instrument, new FretPosition(s, 0)))
                marks.Add(new RectangleMark(new Box(X(s) - OpenRadius, signs - OpenRadius, X(s) + OpenRadius, signs + OpenRadius), LineThickness) { Role = MarkRole.Diagram });
            else if (open || (!mark.FrameIsMap && !tones.Any(t => t.String == s))) AddSign(marks, X(s), signs, open);
        }
        if (first > 1)
        {
            var run = TextShaper.Run(first.ToString(CultureInfo.InvariantCulture), TextFont.Sans);
            var y = -height + (FretDistance / 2) - ((run.Bounds.Top + run.Bounds.Bottom) / 2 * sizes.Small);
            var edge = marks.Where(m => m.Bounds.Bottom > -height && m.Bounds.Top < -height + FretDistance).Max(m => m.Bounds.Right);
            marks.Add(new TextMark(run, new Point(edge + NumberGap, y), sizes.Small) { Role = MarkRole.Diagram });
        }
        return new SymbolLayout(new Drawing(marks.ToImmutable()), width);

        double Y(int fret) => -height + ((fret - first + 0.5) * FretDistance);
        double X(int stringNumber) => instrument.LeftHanded ? (stringNumber - 1) * StringDistance : (strings - stringNumber) * StringDistance;
    }

    private static bool IsRoot(HarmonyMark mark, Instrument instrument, FretPosition place) =>
        mark.Chord is { } chord && instrument.MidiNumberAt(place.String, place.Fret) % 12 == chord.Root.PitchClass;

    private static LineMark Line(double x1, double y1, double x2, double y2, double thickness = LineThickness) =>
        new(new Point(x1, y1), new Point(x2, y2), thickness) { Role = MarkRole.Diagram };

    private static void AddSign(ImmutableArray<Mark>.Builder marks, double x, double y, bool open)
    {
        if (open)
        {
            marks.Add(new EllipseMark(new Point(x, y), OpenRadius, OpenRadius, LineThickness) { Role = MarkRole.Diagram });
            return;
        }
        marks.Add(Line(x - CrossSize, y - CrossSize, x + CrossSize, y + CrossSize));
        marks.Add(Line(x - CrossSize, y + CrossSize, x + CrossSize, y - CrossSize));
    }
}

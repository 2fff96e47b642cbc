using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws the neck of a diagram with all that stands on it; symbol and caption are the affair of <see cref="DiagramFigure"/>.</summary>
public static class NeckDrawer
{
    internal const double ContinuationLength = 2.5;
    private const double UnderNeck = 2.2;
    private const double SignClearance = 0.6;

    /// <summary>Draws a diagram.</summary>
    /// <param name="diagram">What it shows.</param>
    /// <param name="style">Its measures.</param>
    /// <param name="available">Width it may take, in millimetres.</param>
    public static DiagramLayout Draw(NeckDiagram diagram, DiagramStyle style, double available)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var frame = diagram.Upright ? NeckFrame.Upright(diagram, style) : NeckFrame.Lying(diagram, style, available);
        var painter = new DotPainter(marks, style);
        DrawInlays(painter, diagram, frame);
        DrawNeck(painter, diagram, style, frame);
        DrawBarres(painter, diagram, style, frame);
        DrawPath(painter, diagram, frame);
        for (var i = 0; i < diagram.Dots.Length; i++)
        {
            var (dot, start) = (diagram.Dots[i], marks.Count);
            // An open string without a name is the usual o.
            if (dot.Position.Fret == 0 && dot.Label.Length == 0) painter.Ring(frame.At(dot.Position));
            else painter.Dot(dot, frame.At(dot.Position), halo: !diagram.Barres.Any(b => LiesOn(b, dot.Position)));
            // The marks of a dot carry its number, so that two that run into each other can be told from one.
            for (var mark = start; mark < marks.Count; mark++) marks[mark] = marks[mark] with { Origin = MarkOrigin.None with { Staff = i } };
        }
        DrawSigns(painter, diagram, style, frame);
        DrawNumbers(painter, diagram, style, frame);
        var box = Bounds(marks);
        var drawing = new Drawing(marks.DrainToImmutable()).Transform(1, -box.Left, -box.Top);
        return new DiagramLayout(drawing, box.Width, box.Height, frame.Corner.Y - box.Top, frame.Corner.X - box.Left, frame.Extent.Right - box.Left)
        {
            NeckBottom = frame.Bottom - box.Top,
        };
    }

    /// <summary>The box of what is seen: white rims that part things are not ink.</summary>
    internal static Box Bounds(IEnumerable<Mark> marks)
    {
        var box = Box.Empty;
        foreach (var mark in marks) if (mark.Ink > 0) box = box.Union(mark.Bounds);
        return box;
    }

    private static bool LiesOn(Barre barre, FretPosition place) => barre.Fret == place.Fret && place.String >= barre.FirstString && place.String <= barre.LastString;

    private static void DrawInlays(DotPainter painter, NeckDiagram diagram, NeckFrame frame)
    {
        var strings = diagram.Instrument.StringCount;
        var middle = (strings + 1) / 2.0;
        // Between strings where there is an even number of them; a pair lies between strings as well.
        var apart = strings % 2 == 0 ? 1 : 1.5;
        for (var fret = diagram.FirstFret; fret <= diagram.LastFret; fret++)
        {
            var count = Inlays.Count(diagram.Instrument.Family, fret + diagram.Instrument.Capo);
            // One that a dot would half cover is left out, and of a pair both: the number of the fret marks the place as well.
            double[] at = count == 1 ? [middle] : count == 2 ? [middle - apart, middle + apart] : [];
            if (!at.Any(s => IsCovered(diagram, s, fret))) foreach (var s in at) DrawInlay(painter, frame, s, fret);
        }
    }

    private static bool IsCovered(NeckDiagram diagram, double stringNumber, int fret) => diagram.Dots.Any(d => d.Position.Fret == fret && Math.Abs(d.Position.String - stringNumber) < 1);

    private static void DrawInlay(DotPainter painter, NeckFrame frame, double stringNumber, int fret)
    {
        const double Radius = 0.95;
        const double Grey = 0.3;
        painter.Spot(frame.At(stringNumber, fret), Radius, Grey);
    }

    private static void DrawNeck(DotPainter painter, NeckDiagram diagram, DiagramStyle style, NeckFrame frame)
    {
        var instrument = diagram.Instrument;
        var atNut = diagram.FirstFret == 1;
        for (var fret = diagram.FirstFret - (atNut ? 0 : 1); fret <= diagram.LastFret; fret++)
        {
            painter.Line(frame.Wire(1, fret), frame.Wire(instrument.StringCount, fret), style.FretThickness);
        }
        var atEnd = diagram.LastFret >= instrument.PlayableFrets;
        for (var s = 1; s <= instrument.StringCount; s++)
        {
            painter.Line(
                frame.Beyond(s, diagram.FirstFret - 1, atNut ? 0 : -ContinuationLength),
                frame.Beyond(s, diagram.LastFret, atEnd ? 0 : ContinuationLength),
                StringGauge.Thickness(instrument, s));
        }
        if (!atNut) return;
        // The nut lies before the first fret and reaches over the outer strings.
        var (from, to) = (frame.Beyond(1, 0, -style.NutThickness / 2), frame.Beyond(instrument.StringCount, 0, -style.NutThickness / 2));
        var reach = StringGauge.Thickness(instrument, instrument.StringCount) / 2;
        painter.Line(frame.Across(from, to, reach), frame.Across(to, from, reach), style.NutThickness);
    }

    private static void DrawBarres(DotPainter painter, NeckDiagram diagram, DiagramStyle style, NeckFrame frame)
    {
        foreach (var barre in diagram.Barres)
        {
            painter.Bar(frame.At(new FretPosition(barre.FirstString, barre.Fret)), frame.At(new FretPosition(barre.LastString, barre.Fret)), style.BarreThickness);
        }
    }

    private static void DrawPath(DotPainter painter, NeckDiagram diagram, NeckFrame frame)
    {
        for (var i = 1; i < diagram.Path.Length; i++)
        {
            if (diagram.Path[i] != diagram.Path[i - 1] && IsShown(diagram, diagram.Path[i]) && IsShown(diagram, diagram.Path[i - 1])) painter.Line(frame.At(diagram.Path[i - 1]), frame.At(diagram.Path[i]), 0.35, 0.55, round: true);
        }
    }

    private static bool IsShown(NeckDiagram diagram, FretPosition place) => place.Fret <= diagram.LastFret && (place.Fret >= diagram.FirstFret || (place.Fret == 0 && diagram.FirstFret == 1));

    // Muted and open strings before the nut; fingers at the far end of the strings.
    private static void DrawSigns(DotPainter painter, NeckDiagram diagram, DiagramStyle style, NeckFrame frame)
    {
        // Clear of strings that go on beyond the first fret shown.
        var before = -(style.DotRadius + NeckFrame.OpenGap) - (diagram.FirstFret > 1 ? SignClearance : 0);
        foreach (var s in diagram.MutedStrings) painter.Cross(frame.Beyond(s, diagram.FirstFret - 1, before));
        foreach (var dot in diagram.Dots)
        {
            if (dot.Finger is { } finger && diagram.Upright)
            {
                painter.Label(finger.ToString(System.Globalization.CultureInfo.InvariantCulture), TextFont.Sans, frame.Beyond(dot.Position.String, diagram.LastFret, ContinuationLength + 2));
            }
        }
    }

    private static void DrawNumbers(DotPainter painter, NeckDiagram diagram, DiagramStyle style, NeckFrame frame)
    {
        for (var fret = diagram.FirstFret; fret <= diagram.LastFret; fret++)
        {
            var first = fret == diagram.FirstFret && fret > 1;
            if (!first && (diagram.Upright || Inlays.Count(diagram.Instrument.Family, fret + diagram.Instrument.Capo) == 0)) continue;
            var text = fret.ToString(System.Globalization.CultureInfo.InvariantCulture);
            painter.Label(text, TextFont.Sans, frame.Number(fret, style.DotRadius + UnderNeck));
        }
    }
}

using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>
/// Where strings and frets lie on paper. Along is the way of the strings, across the way of the frets; a lying neck has along to
/// the right and string 1 at the top, an upright one along downward and string 1 on the right; left-handed pictures are mirrored.
/// </summary>
internal sealed class NeckFrame
{
    // White between the nut and a dot before it.
    internal const double OpenGap = 1.6;

    // White that dots of neighbouring frets keep between them.
    private const double DotClearance = 0.5;

    private readonly NeckDiagram _diagram;
    private readonly FretScale _scale;
    private readonly double _stringGap;
    private readonly double _length;
    private readonly double _openAt;

    private NeckFrame(NeckDiagram diagram, FretScale scale, double length, double stringGap, double openAt)
    {
        _diagram = diagram;
        _scale = scale;
        _length = length;
        _stringGap = stringGap;
        _openAt = openAt;
    }

    private bool Mirrored => _diagram.Instrument.LeftHanded;

    private int Strings => _diagram.Instrument.StringCount;

    internal static NeckFrame Lying(NeckDiagram diagram, DiagramStyle style, double available)
    {
        var frets = diagram.LastFret - diagram.FirstFret + 1;
        var length = Math.Min(frets * style.FretGap, available - Sides(diagram, style));
        return Make(diagram, style, length, style.StringGap);
    }

    /// <summary>Room beside a lying neck: before the nut for what stands on open strings, at the ends for strings that go on.</summary>
    internal static double Sides(NeckDiagram diagram, DiagramStyle style) =>
        NeckDrawer.ContinuationLength + (diagram.FirstFret > 1 || !HasOpen(diagram) ? NeckDrawer.ContinuationLength : 0) + (HasOpen(diagram) ? (2 * OpenHalfWidth(diagram, style)) + OpenGap : 0);

    // Half the width of the widest thing before the nut.
    private static double OpenHalfWidth(NeckDiagram diagram, DiagramStyle style)
    {
        var widest = style.DotRadius;
        if (!diagram.Upright) foreach (var dot in diagram.Dots) if (dot.Position.Fret == 0) widest = Math.Max(widest, DotPainter.HalfWidth(dot, style));
        return widest;
    }

    private static bool HasOpen(NeckDiagram diagram) => !diagram.MutedStrings.IsEmpty || diagram.Dots.Any(d => d.Position.Fret == 0);

    /// <summary>An upright diagram; strings part further where wide labels ask for it.</summary>
    internal static NeckFrame Upright(NeckDiagram diagram, DiagramStyle style)
    {
        var gap = style.UprightStringGap;
        foreach (var dot in diagram.Dots) gap = Math.Max(gap, (2 * DotPainter.HalfWidth(dot, style)) + DotClearance);
        return Make(diagram, style, (diagram.LastFret - diagram.FirstFret + 1) * style.UprightFretGap, gap);
    }

    /// <summary>Frets in true proportion, unless the dots on the narrowest would touch.</summary>
    private static NeckFrame Make(NeckDiagram diagram, DiagramStyle style, double length, double stringGap)
    {
        var (first, last) = (diagram.FirstFret + diagram.Instrument.Capo, diagram.LastFret + diagram.Instrument.Capo);
        var scale = FretScale.True(first, last, length);
        var widest = style.DotRadius;
        if (!diagram.Upright) foreach (var dot in diagram.Dots) widest = Math.Max(widest, DotPainter.HalfWidth(dot, style));
        if (diagram.EvenFrets || scale.Narrowest < (2 * widest) + DotClearance) scale = FretScale.Even(first, last, length);
        return new NeckFrame(diagram, scale, length, stringGap, -(OpenHalfWidth(diagram, style) + OpenGap));
    }

    /// <summary>The top left corner of the neck.</summary>
    internal Point Corner
    {
        get
        {
            var (a, b) = (Wire(1, _diagram.FirstFret - 1), Wire(Strings, _diagram.LastFret));
            return new Point(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y));
        }
    }

    /// <summary>The lower end of the neck.</summary>
    internal double Bottom => Math.Max(Wire(1, _diagram.FirstFret - 1).Y, Wire(Strings, _diagram.LastFret).Y);

    /// <summary>Left and right end of the neck.</summary>
    internal (double Left, double Right) Extent
    {
        get
        {
            var (a, b) = (Wire(1, _diagram.FirstFret - 1), Wire(Strings, _diagram.LastFret));
            return (Math.Min(a.X, b.X), Math.Max(a.X, b.X));
        }
    }

    /// <summary>Where a finger goes; fret 0 is beside the nut.</summary>
    internal Point At(FretPosition position) => At(position.String, position.Fret);

    /// <summary>The middle of a fret's space at a string, which may be between two.</summary>
    internal Point At(double stringNumber, int fret) => Place(fret == 0 ? _openAt : _scale.Middle(fret + _diagram.Instrument.Capo), stringNumber);

    /// <summary>Where a string crosses a fret wire.</summary>
    internal Point Wire(int stringNumber, int fret) => Place(_scale.Wire(fret + _diagram.Instrument.Capo), stringNumber);

    /// <summary>A point on a string at a distance beyond a wire; negative is toward the nut.</summary>
    internal Point Beyond(int stringNumber, int fret, double distance) => Place(_scale.Wire(fret + _diagram.Instrument.Capo) + distance, stringNumber);

    /// <summary>A point moved away from another across the neck.</summary>
    internal Point Across(Point point, Point awayFrom, double distance) => _diagram.Upright
        ? point.Offset(point.X < awayFrom.X ? -distance : distance, 0)
        : point.Offset(0, point.Y < awayFrom.Y ? -distance : distance);

    /// <summary>Where the number of a fret stands: under a lying neck, left of an upright one (right when it is mirrored).</summary>
    internal Point Number(int fret, double distance) => _diagram.Upright
        ? new Point(Mirrored ? Extent.Right + distance : Extent.Left - distance, At(1, fret).Y)
        : new Point(At(1, fret).X, ((Strings - 1) * _stringGap) + distance);

    private Point Place(double along, double stringNumber)
    {
        var across = (stringNumber - 1) * _stringGap;
        if (!_diagram.Upright) return new Point(Mirrored ? _length - along : along, across);
        return new Point(Mirrored ? across : ((Strings - 1) * _stringGap) - across, along);
    }
}

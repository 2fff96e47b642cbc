using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>What a mark is, for checks and tests; it does not change how the mark is drawn.</summary>
public enum MarkRole
{
    /// <summary>Anything without a role of its own.</summary>
    Other,
    /// <summary>Line of a staff.</summary>
    StaffLine,
    /// <summary>Line of a tab.</summary>
    TabLine,
    /// <summary>Ledger line.</summary>
    LedgerLine,
    /// <summary>Barline, repeat dots included.</summary>
    Barline,
    /// <summary>Brace or bracket at the left of a system.</summary>
    Bracket,
    /// <summary>Clef.</summary>
    Clef,
    /// <summary>Accidental of a key signature.</summary>
    KeySignature,
    /// <summary>Figure of a meter.</summary>
    Meter,
    /// <summary>Notehead.</summary>
    Notehead,
    /// <summary>Stem.</summary>
    Stem,
    /// <summary>Flag.</summary>
    Flag,
    /// <summary>Beam.</summary>
    Beam,
    /// <summary>Accidental before a note.</summary>
    Accidental,
    /// <summary>Augmentation dot.</summary>
    Dot,
    /// <summary>Rest.</summary>
    Rest,
    /// <summary>Tie.</summary>
    Tie,
    /// <summary>Slur, hammer-on or pull-off arc.</summary>
    Slur,
    /// <summary>Slide line.</summary>
    Slide,
    /// <summary>Tuplet number or bracket.</summary>
    Tuplet,
    /// <summary>Articulation sign.</summary>
    Articulation,
    /// <summary>Technique letter or sign.</summary>
    Technique,
    /// <summary>Finger numeral.</summary>
    Finger,
    /// <summary>Fret number in the tab.</summary>
    FretNumber,
    /// <summary>Chord symbol.</summary>
    ChordSymbol,
    /// <summary>Roman numeral.</summary>
    Roman,
    /// <summary>Degree name.</summary>
    DegreeName,
    /// <summary>Counting syllable.</summary>
    Count,
    /// <summary>Measure number.</summary>
    MeasureNumber,
    /// <summary>Ending bracket and its number.</summary>
    Ending,
    /// <summary>Tempo mark.</summary>
    Tempo,
    /// <summary>Dynamic or hairpin.</summary>
    Dynamic,
    /// <summary>Words, rehearsal marks, signs of navigation.</summary>
    Direction,
    /// <summary>Part of a neck or chord diagram.</summary>
    Diagram,
    /// <summary>Title of an exercise.</summary>
    Title,
    /// <summary>Running text of the page.</summary>
    BodyText,
    /// <summary>Rule or frame of a table.</summary>
    TableRule,
}

/// <summary>Where a mark comes from in the music; -1 where it does not apply.</summary>
/// <param name="System">Index of the system within its exercise.</param>
/// <param name="Measure">Index of the measure within the score.</param>
/// <param name="Staff">0 the notation staff, 1 the tab.</param>
/// <param name="Event">Index of the event in its voice; of a neck diagram among its figures.</param>
public readonly record struct MarkOrigin(int System, int Measure, int Staff, int Event)
{
    /// <summary>Voice of the event: 0 the upper, 1 the lower.</summary>
    public int Voice { get; init; }

    /// <summary>No origin in the music.</summary>
    public static MarkOrigin None => new(-1, -1, -1, -1);
}

/// <summary>One thing to draw. Coordinates are in the unit of the drawing (staff spaces for music, millimetres on a page), y downward.</summary>
public abstract record Mark
{
    /// <summary>What it is.</summary>
    public MarkRole Role { get; init; }

    /// <summary>Where it comes from.</summary>
    public MarkOrigin Origin { get; init; } = MarkOrigin.None;

    /// <summary>Darkness of the ink: 1 black, 0 white.</summary>
    public double Ink { get; init; } = 1;

    /// <summary>The box of its ink.</summary>
    public abstract Box Bounds { get; }

    /// <summary>The mark scaled about the origin, then moved.</summary>
    public abstract Mark Transform(double scale, double dx, double dy);

    private protected static Point Move(Point p, double scale, double dx, double dy) => new((p.X * scale) + dx, (p.Y * scale) + dy);
}

/// <summary>A glyph of the music font.</summary>
/// <param name="Glyph">The glyph.</param>
/// <param name="Position">Its origin on the baseline.</param>
/// <param name="StaffSpace">Length of one staff space of the glyph in the unit of the drawing (1 in music at full size).</param>
public sealed record GlyphMark(MusicGlyph Glyph, Point Position, double StaffSpace = 1) : Mark
{
    /// <inheritdoc />
    public override Box Bounds => Glyph.Bounds.Transform(StaffSpace, Position.X, Position.Y);
    /// <inheritdoc />
    public override Mark Transform(double scale, double dx, double dy) => this with { Position = Move(Position, scale, dx, dy), StaffSpace = StaffSpace * scale };
}

/// <summary>A straight line with butt or round ends.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Thickness">Thickness across the line.</param>
/// <param name="RoundEnds">Whether the ends are rounded.</param>
public sealed record LineMark(Point From, Point To, double Thickness, bool RoundEnds = false) : Mark
{
    /// <summary>Lengths of dashes and gaps, in turn; empty for a solid line.</summary>
    public ImmutableArray<double> Dashes { get; init; } = [];

    /// <inheritdoc />
    public override Box Bounds
    {
        get
        {
            var half = Thickness / 2;
            var (dx, dy) = (To.X - From.X, To.Y - From.Y);
            var length = Math.Sqrt((dx * dx) + (dy * dy));
            var (acrossX, acrossY) = RoundEnds || length == 0 ? (half, half) : (Math.Abs(dy) / length * half, Math.Abs(dx) / length * half);
            return new Box(Math.Min(From.X, To.X) - acrossX, Math.Min(From.Y, To.Y) - acrossY, Math.Max(From.X, To.X) + acrossX, Math.Max(From.Y, To.Y) + acrossY);
        }
    }
    /// <inheritdoc />
    public override Mark Transform(double scale, double dx, double dy) => this with
    {
        From = Move(From, scale, dx, dy),
        To = Move(To, scale, dx, dy),
        Thickness = Thickness * scale,
        Dashes = [.. Dashes.Select(d => d * scale)],
    };
}

/// <summary>A polygon, filled (beams, arrow heads) or outlined when <see cref="OutlineThickness"/> is above zero.</summary>
/// <param name="Corners">Corners in order.</param>
/// <param name="OutlineThickness">0 to fill.</param>
public sealed record PolygonMark(ImmutableArray<Point> Corners, double OutlineThickness = 0) : Mark
{
    /// <inheritdoc />
    public override Box Bounds => Corners.Aggregate(Box.Empty, (box, p) => box.Union(new Box(p.X, p.Y, p.X, p.Y))).Inflate(OutlineThickness / 2);
    /// <inheritdoc />
    public override Mark Transform(double scale, double dx, double dy) => this with
    {
        Corners = [.. Corners.Select(p => Move(p, scale, dx, dy))],
        OutlineThickness = OutlineThickness * scale,
    };
}

/// <summary>A tie or slur: a curve that is thin at the ends and thick in the middle.</summary>
/// <param name="Start">Start.</param>
/// <param name="Control1">First control point of the cubic curve through the middle of the stroke.</param>
/// <param name="Control2">Second control point.</param>
/// <param name="End">End.</param>
/// <param name="EndThickness">Thickness at the ends.</param>
/// <param name="MiddleThickness">Thickness in the middle.</param>
public sealed record CurveMark(Point Start, Point Control1, Point Control2, Point End, double EndThickness, double MiddleThickness) : Mark
{
    /// <summary>A point of the centre line at t in 0..1.</summary>
    public Point At(double t)
    {
        var u = 1 - t;
        double Mix(double a, double b, double c, double d) => (u * u * u * a) + (3 * u * u * t * b) + (3 * u * t * t * c) + (t * t * t * d);
        return new Point(Mix(Start.X, Control1.X, Control2.X, End.X), Mix(Start.Y, Control1.Y, Control2.Y, End.Y));
    }

    /// <summary>The stretch of the curve between two places, each 0 to 1 (de Casteljau's construction), in the thickness of the middle.</summary>
    public CurveMark Part(double from, double to)
    {
        Point Blossom(double a, double b, double c)
        {
            static Point Between(Point p, Point q, double t) => new(p.X + ((q.X - p.X) * t), p.Y + ((q.Y - p.Y) * t));
            var (p, q, r) = (Between(Start, Control1, a), Between(Control1, Control2, a), Between(Control2, End, a));
            return Between(Between(p, q, b), Between(q, r, b), c);
        }
        return this with { Start = At(from), Control1 = Blossom(from, from, to), Control2 = Blossom(from, to, to), End = At(to), EndThickness = MiddleThickness };
    }
    /// <inheritdoc />
    public override Box Bounds
    {
        get
        {
            var box = Box.Empty;
            for (var i = 0; i <= 16; i++)
            {
                var p = At(i / 16.0);
                box = box.Union(new Box(p.X, p.Y, p.X, p.Y));
            }
            return box.Inflate(MiddleThickness / 2);
        }
    }
    /// <inheritdoc />
    public override Mark Transform(double scale, double dx, double dy) => this with
    {
        Start = Move(Start, scale, dx, dy),
        Control1 = Move(Control1, scale, dx, dy),
        Control2 = Move(Control2, scale, dx, dy),
        End = Move(End, scale, dx, dy),
        EndThickness = EndThickness * scale,
        MiddleThickness = MiddleThickness * scale,
    };
}

/// <summary>An upright ellipse or circle.</summary>
/// <param name="Centre">Centre.</param>
/// <param name="RadiusX">Half the width.</param>
/// <param name="RadiusY">Half the height.</param>
/// <param name="OutlineThickness">0 to fill.</param>
public sealed record EllipseMark(Point Centre, double RadiusX, double RadiusY, double OutlineThickness = 0) : Mark
{
    /// <inheritdoc />
    public override Box Bounds => new Box(Centre.X - RadiusX, Centre.Y - RadiusY, Centre.X + RadiusX, Centre.Y + RadiusY).Inflate(OutlineThickness / 2);
    /// <inheritdoc />
    public override Mark Transform(double scale, double dx, double dy) => this with
    {
        Centre = Move(Centre, scale, dx, dy),
        RadiusX = RadiusX * scale,
        RadiusY = RadiusY * scale,
        OutlineThickness = OutlineThickness * scale,
    };
}

/// <summary>An upright rectangle, with rounded corners if wanted.</summary>
/// <param name="Area">The rectangle.</param>
/// <param name="OutlineThickness">0 to fill.</param>
/// <param name="CornerRadius">Radius of the corners.</param>
public sealed record RectangleMark(Box Area, double OutlineThickness = 0, double CornerRadius = 0) : Mark
{
    /// <inheritdoc />
    public override Box Bounds => Area.Inflate(OutlineThickness / 2);
    /// <inheritdoc />
    public override Mark Transform(double scale, double dx, double dy) => this with
    {
        Area = Area.Transform(scale, dx, dy),
        OutlineThickness = OutlineThickness * scale,
        CornerRadius = CornerRadius * scale,
    };
}

/// <summary>A run of text in one font, shaped already.</summary>
/// <param name="Run">The shaped text.</param>
/// <param name="Position">Left end of the baseline.</param>
/// <param name="Size">Size of the em square in the unit of the drawing.</param>
public sealed record TextMark(TextRun Run, Point Position, double Size) : Mark
{
    /// <summary>Target of a link, or null.</summary>
    public string? Link { get; init; }
    /// <inheritdoc />
    public override Box Bounds => Run.Bounds.Transform(Size, Position.X, Position.Y);
    /// <inheritdoc />
    public override Mark Transform(double scale, double dx, double dy) => this with { Position = Move(Position, scale, dx, dy), Size = Size * scale };
}

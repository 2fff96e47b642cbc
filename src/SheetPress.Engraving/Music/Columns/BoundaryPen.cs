using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Writes the signs of a boundary from left to right.</summary>
internal sealed class BoundaryPen
{
    private readonly ImmutableArray<BarStroke>.Builder _strokes = ImmutableArray.CreateBuilder<BarStroke>();
    private readonly ImmutableArray<double>.Builder _dots = ImmutableArray.CreateBuilder<double>();
    private readonly ImmutableArray<BoundarySign>.Builder _signs = ImmutableArray.CreateBuilder<BoundarySign>();
    private double _left;
    private double _barRight;
    private double _reserve;
    private bool _endsWithBarline;

    /// <summary>Where the next sign goes.</summary>
    public double X { get; set; }

    /// <summary>A line of the barline.</summary>
    public void Stroke(double width)
    {
        _strokes.Add(new BarStroke(X, width));
        X += width;
        _endsWithBarline = true;
    }

    /// <summary>The end of a repeated section, and when asked the start of the next one with it.</summary>
    public void RepeatEnd(bool startsToo)
    {
        var defaults = Ink.Defaults;
        DotPair();
        X += defaults.RepeatBarlineDotSeparation;
        Stroke(defaults.ThinBarlineThickness);
        X += defaults.BarlineSeparation;
        Stroke(defaults.ThickBarlineThickness);
        if (!startsToo) return;
        X += defaults.BarlineSeparation;
        Stroke(defaults.ThinBarlineThickness);
        X += defaults.RepeatBarlineDotSeparation;
        DotPair();
    }

    /// <summary>The start of a repeated section.</summary>
    public void RepeatStart()
    {
        var defaults = Ink.Defaults;
        Stroke(defaults.ThickBarlineThickness);
        X += defaults.BarlineSeparation;
        Stroke(defaults.ThinBarlineThickness);
        X += defaults.RepeatBarlineDotSeparation;
        DotPair();
    }

    /// <summary>Says that the barline is complete.</summary>
    public void BarlineDone() => _barRight = X;

    /// <summary>Signs given from x = 0.</summary>
    public void Sign(int staff, List<Mark> marks)
    {
        var left = marks.Min(m => m.Bounds.Left);
        foreach (var mark in marks) _signs.Add(new BoundarySign(staff, mark.Transform(1, X - left, 0)));
        X += marks.Max(m => m.Bounds.Right) - left;
        _endsWithBarline = false;
    }

    /// <summary>A sign that starts at a given x beside what is there already, in another staff.</summary>
    public void SignAtSameX(int staff, Mark mark, double x)
    {
        _signs.Add(new BoundarySign(staff, mark.Transform(1, x - mark.Bounds.Left, 0)));
        X = Math.Max(X, x + mark.Bounds.Width);
    }

    /// <summary>A sign left of the barline.</summary>
    public void SignBefore(int staff, Mark mark, double gap)
    {
        var moved = mark.Transform(1, -gap - mark.Bounds.Right, 0);
        _signs.Add(new BoundarySign(staff, moved));
        _left = Math.Min(_left, moved.Bounds.Left);
    }

    /// <summary>Keeps white after the last sign.</summary>
    public void Reserve(double white) => _reserve = white;

    /// <summary>The boundary.</summary>
    public Boundary Build(bool isStart) => new()
    {
        Strokes = _strokes.ToImmutable(),
        Dots = _dots.ToImmutable(),
        Signs = _signs.ToImmutable(),
        Left = _left,
        Right = X + _reserve,
        BarRight = isStart ? X : _barRight,
        IsStart = isStart,
        EndsWithBarline = _endsWithBarline,
    };

    private void DotPair()
    {
        _dots.Add(X);
        X += Ink.Glyph("repeatDot").Bounds.Width;
        _endsWithBarline = true;
    }
}

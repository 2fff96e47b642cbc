namespace SheetPress.Engraving;

/// <summary>A point; x grows to the right and y downward, in the unit of the drawing that holds it.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Downward.</param>
public readonly record struct Point(double X, double Y)
{
    /// <summary>The point moved.</summary>
    public Point Offset(double dx, double dy) => new(X + dx, Y + dy);
}

/// <summary>An upright box; y grows downward, so <see cref="Top"/> is the smaller y.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Top">Upper edge.</param>
/// <param name="Right">Right edge.</param>
/// <param name="Bottom">Lower edge.</param>
public readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Width.</summary>
    public double Width => Right - Left;
    /// <summary>Height.</summary>
    public double Height => Bottom - Top;
    /// <summary>A box with no inside, the neutral element of <see cref="Union"/>.</summary>
    public static Box Empty => new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);
    /// <summary>Whether it holds nothing.</summary>
    public bool IsEmpty => Right < Left || Bottom < Top;
    /// <summary>The smallest box around both.</summary>
    public Box Union(Box other) => new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));
    /// <summary>The smallest box around all of some boxes; empty for none.</summary>
    public static Box Around(IEnumerable<Box> boxes) => boxes.Aggregate(Empty, (all, box) => all.Union(box));
    /// <summary>The box grown by a distance on every side.</summary>
    public Box Inflate(double by) => new(Left - by, Top - by, Right + by, Bottom + by);
    /// <summary>Whether the insides overlap.</summary>
    public bool Overlaps(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
    /// <summary>The box scaled about the origin and moved.</summary>
    public Box Transform(double scale, double dx, double dy) => new((Left * scale) + dx, (Top * scale) + dy, (Right * scale) + dx, (Bottom * scale) + dy);
}

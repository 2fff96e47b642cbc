namespace SheetPress.Engraving;

/// <summary>The distance between two neighbouring columns: a fixed part, a part that grows with the tension, and a least length.</summary>
/// <param name="Fixed">Part that does not stretch.</param>
/// <param name="Elastic">Length of the elastic part at tension 1.</param>
/// <param name="Least">The length never falls below this.</param>
/// <param name="Wanted">Length that it has at tension 1 at least, and below that in proportion; what is wanted is not stretched further. For springs without a fixed part.</param>
internal readonly record struct Spring(double Fixed, double Elastic, double Least, double Wanted = 0)
{
    /// <summary>Length at a tension; 1 is natural.</summary>
    public double At(double tension) => Math.Max(Math.Max(Least, Fixed + (Elastic * tension)), Wanted * Math.Min(tension, 1));

    /// <summary>The same below tension 1, without a wanted length.</summary>
    public Spring Tight => Wanted > Elastic ? this with { Elastic = Wanted, Wanted = 0 } : this;

    /// <summary>The same from tension 1 upward, without a wanted length.</summary>
    public Spring Loose => this with { Least = Math.Max(Least, Wanted), Wanted = 0 };
}

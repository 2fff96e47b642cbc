namespace SheetPress.Engraving;

/// <summary>The distance between two neighbouring columns: a fixed part, a part that grows with the tension, and a least length.</summary>
/// <param name="Fixed">Part that does not stretch.</param>
/// <param name="Elastic">Length of the elastic part at tension 1.</param>
/// <param name="Least">The length never falls below this.</param>
internal readonly record struct Spring(double Fixed, double Elastic, double Least)
{
    /// <summary>Length at a tension; 1 is natural.</summary>
    public double At(double tension) => Math.Max(Least, Fixed + (Elastic * tension));
}

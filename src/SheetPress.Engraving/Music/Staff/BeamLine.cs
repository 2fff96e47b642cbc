using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A note under a beam.</summary>
/// <param name="StemX">Middle of its stem.</param>
/// <param name="HeadY">y of the head nearest the beam.</param>
/// <param name="Beams">Number of beams it carries.</param>
internal readonly record struct BeamNote(double StemX, double HeadY, int Beams)
{
    /// <summary>Accidentals and dots that lie under the beam.</summary>
    public ImmutableArray<Box> Ink { get; init; } = [];
}

/// <summary>The middle line of the outermost beam of a group.</summary>
/// <param name="LeftX">x of the first stem.</param>
/// <param name="LeftY">y there.</param>
/// <param name="RightX">x of the last stem.</param>
/// <param name="RightY">y there.</param>
internal readonly record struct BeamLine(double LeftX, double LeftY, double RightX, double RightY)
{
    /// <summary>y at a place.</summary>
    public double At(double x) => RightX == LeftX ? LeftY : LeftY + ((RightY - LeftY) * (x - LeftX) / (RightX - LeftX));
}

using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>A notehead in its place.</summary>
/// <param name="Tone">The tone it shows.</param>
/// <param name="Step">Step on the staff.</param>
/// <param name="X">Left edge from the x of the column.</param>
/// <param name="Glyph">The glyph.</param>
internal readonly record struct HeadPlan(Tone Tone, int Step, double X, MusicGlyph Glyph)
{
    /// <summary>y of the head.</summary>
    public double Y => StaffSteps.Y(Step);

    /// <summary>Left edge.</summary>
    public double Left => X + Glyph.Bounds.Left;

    /// <summary>Right edge.</summary>
    public double Right => X + Glyph.Bounds.Right;

    /// <summary>Middle.</summary>
    public double Centre => (Left + Right) / 2;
}

using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Shapes of dots. Meaning is carried by shape, never by colour alone.</summary>
public enum DotShape
{
    /// <summary>A filled square: the root.</summary>
    Root,
    /// <summary>A filled circle: a tone of the chord.</summary>
    Tone,
    /// <summary>An open circle: any other note.</summary>
    Other,
}

/// <summary>One dot on a neck.</summary>
/// <param name="Position">String and fret.</param>
/// <param name="Shape">Its shape.</param>
/// <param name="Label">A degree, note name, finger or number inside it, with ♭ and ♯ as they are printed; may be empty.</param>
public sealed record NeckDot(FretPosition Position, DotShape Shape, string Label = "")
{
    /// <summary>Fretting finger printed at the end of the string of an upright diagram, 1 to 4; null for none.</summary>
    public int? Finger { get; init; }
}

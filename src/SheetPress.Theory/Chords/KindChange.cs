namespace SheetPress.Theory;

/// <summary>How a quality departs from its kind in one degree.</summary>
public enum KindChangeType
{
    /// <summary>The degree comes on top of the kind.</summary>
    Add,
    /// <summary>A degree of the kind is raised or lowered.</summary>
    Alter,
    /// <summary>A degree of the kind is left out.</summary>
    Subtract,
}

/// <summary>One departure of a quality from its kind, in the sense of the MusicXML 4.0 element degree.</summary>
/// <param name="Number">The number of the degree: 5, 9, 11.</param>
/// <param name="Alteration">
/// Half steps: for <see cref="KindChangeType.Add"/> against a dominant chord (major and perfect sizes, but a minor seventh), for the others
/// against the degree that the kind has.
/// </param>
/// <param name="Type">Added, altered or left out.</param>
public readonly record struct KindChange(int Number, int Alteration, KindChangeType Type);

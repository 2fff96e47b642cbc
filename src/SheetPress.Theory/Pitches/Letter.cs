namespace SheetPress.Theory;

/// <summary>The seven letters of staff notation, counted upward from C as octave numbers do.</summary>
public enum Letter
{
    /// <summary>C, the first letter of each octave.</summary>
    C,
    /// <summary>D.</summary>
    D,
    /// <summary>E.</summary>
    E,
    /// <summary>F.</summary>
    F,
    /// <summary>G.</summary>
    G,
    /// <summary>A.</summary>
    A,
    /// <summary>B, the last letter of each octave.</summary>
    B,
}

/// <summary>Facts about letters.</summary>
public static class Letters
{
    private static ReadOnlySpan<byte> HalfStepTable => [0, 2, 4, 5, 7, 9, 11];

    /// <summary>Half steps from C up to the natural note of the letter: C 0, D 2, E 4, F 5, G 7, A 9, B 11.</summary>
    public static int HalfSteps(this Letter letter) => HalfStepTable[(int)letter];
}

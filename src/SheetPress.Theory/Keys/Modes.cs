namespace SheetPress.Theory;

/// <summary>Facts about modes.</summary>
public static class Modes
{
    /// <summary>The scale whose notes the signature of the mode gives.</summary>
    public static ScaleType Scale(this Mode mode) => ScaleTypes.Get(mode switch
    {
        Mode.Major or Mode.Ionian => "major",
        Mode.Minor or Mode.Aeolian => "natural minor",
        Mode.Dorian => "dorian",
        Mode.Phrygian => "phrygian",
        Mode.Lydian => "lydian",
        Mode.Mixolydian => "mixolydian",
        _ => "locrian",
    });

    /// <summary>The scale degree of a number from 1 to 7: 6 is "b6" in minor, "6" in dorian.</summary>
    public static Degree DegreeOf(this Mode mode, int number) => mode.Scale().Degrees[number - 1];
}

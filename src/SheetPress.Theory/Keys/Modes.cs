namespace SheetPress.Theory;

/// <summary>Facts about modes.</summary>
public static class Modes
{
    /// <summary>The name in lower case as it follows a tonic: "minor".</summary>
    public static string Name(this Mode mode) => mode switch
    {
        Mode.Major => "major",
        Mode.Minor => "minor",
        Mode.Ionian => "ionian",
        Mode.Dorian => "dorian",
        Mode.Phrygian => "phrygian",
        Mode.Lydian => "lydian",
        Mode.Mixolydian => "mixolydian",
        Mode.Aeolian => "aeolian",
        _ => "locrian",
    };

    /// <summary>The name as it is printed behind a tonic: "minor", "Dorian".</summary>
    public static string ToDisplayString(this Mode mode) => ProperNames.Capitalise(mode.Name());

    /// <summary>Reads a name of a mode in either case.</summary>
    public static bool TryParse(string text, out Mode mode)
    {
        for (mode = Mode.Major; mode <= Mode.Locrian; mode++) if (mode.Name().Equals(text, StringComparison.OrdinalIgnoreCase)) return true;
        return false;
    }

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

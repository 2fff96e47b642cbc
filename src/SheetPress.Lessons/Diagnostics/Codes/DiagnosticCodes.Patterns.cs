namespace SheetPress.Lessons;

// Codes about pattern files and their use.
public static partial class DiagnosticCodes
{
    /// <summary>A pattern without notes.</summary>
    public const string PatternOfNothing = "pattern-of-nothing";

    /// <summary>A pattern with tones and lines.</summary>
    public const string TonesAndLines = "tones-and-lines";

    /// <summary>A pattern named like another style.</summary>
    public const string StyleNameTaken = "style-name-taken";

    /// <summary>A rhythm for a pattern that has one.</summary>
    public const string PatternHasRhythm = "pattern-has-rhythm";

    /// <summary>A pattern in a meter it is not written for.</summary>
    public const string OtherMeter = "other-meter";
}

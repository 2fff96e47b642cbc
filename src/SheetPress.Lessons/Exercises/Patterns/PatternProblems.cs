namespace SheetPress.Lessons;

/// <summary>The messages about pattern files and their use.</summary>
internal static class PatternProblems
{
    public static Problem Missing(string name, string example) => new(DiagnosticCodes.MissingEntry, Severity.Error, $"The pattern has no {name}.", $"Write for example '{example}'.");

    public static Problem Nothing() => new(DiagnosticCodes.PatternOfNothing, Severity.Error, "The pattern has neither lines nor tones.", "Write for example 'lines: q R 5 8 5' or 'tones: R 5 8 7'.");

    public static Problem TonesAndLines() => new(DiagnosticCodes.TonesAndLines, Severity.Error, "The pattern has both tones and lines.", "Keep the lines if it has a rhythm of its own, the tones if it takes any.");

    public static Problem NameTaken(string name) => new(DiagnosticCodes.StyleNameTaken, Severity.Error, $"There is a style '{name}' already.", "Give the pattern's file another name.");

    public static Problem HasRhythm(string name) => new(
        DiagnosticCodes.PatternHasRhythm, Severity.Error, $"The pattern '{name}' has a rhythm of its own.", "Leave out the rhythm, or take the style tone-cell, which plays degrees in any rhythm.");

    public static Problem OtherMeter(string name, string own, string here) => new(
        DiagnosticCodes.OtherMeter, Severity.Warning, $"The pattern '{name}' is written for {own}; in {here} it is cut to fit.", "Choose a pattern of that meter, or add a line for it to a pattern of your own.");
}

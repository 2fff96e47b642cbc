using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>The machine's eye for a whole sheet: its finished pages, and what only the systems know, how far they were stretched.</summary>
public static class SheetLint
{
    /// <summary>Composes a handout and checks it.</summary>
    /// <param name="content">What stands on it.</param>
    /// <param name="style">How it looks.</param>
    /// <param name="margin">Margin in millimetres that no ink may enter.</param>
    public static ImmutableArray<LintFinding> Check(HandoutContent content, PageStyle style, double margin)
    {
        var findings = PageLint.Check(SheetComposer.Compose(content, style), margin).ToBuilder();
        foreach (var exercise in content.Exercises)
        {
            var systems = ExerciseEngraver.Engrave(exercise.Score, style, new EngravingOptions()).Systems;
            foreach (var finding in systems.SelectMany(SystemLint.Frame)) findings.Add(finding with { Message = $"{exercise.Score.Title}: {finding.Message}" });
        }
        return findings.ToImmutable();
    }
}

using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>Checks that a score is whole: what every writer of it relies on.</summary>
public static class ScoreChecks
{
    /// <summary>Lists everything that is not right, in the order of the score; empty for a sound score.</summary>
    public static ImmutableArray<ScoreFinding> Run(Score score)
    {
        var findings = ImmutableArray.CreateBuilder<ScoreFinding>();
        for (var m = 0; m < score.Measures.Length; m++)
        {
            MeasureChecks.Run(score, m, findings);
            for (var v = 0; v < score.Measures[m].Voices.Length; v++)
            {
                RhythmChecks.Run(score.Measures[m], m, v, findings);
                ToneChecks.Run(score, m, v, findings);
            }
        }
        return findings.ToImmutable();
    }
}

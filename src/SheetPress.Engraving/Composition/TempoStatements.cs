using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>
/// What of tempo and feel stands over each exercise of a sheet: both with the first and where one is another than before, or where the
/// exercise before has left its tempo. Swung sixteenths are stated where there are some: over eighths alone their sign would be taken
/// for that of swung eighths.
/// </summary>
internal static class TempoStatements
{
    private static readonly Fraction Pair = new(1, 2);
    private static readonly Fraction OffPair = new(1, 4);

    /// <summary>The choices for the exercises in order.</summary>
    /// <param name="scores">The exercises.</param>
    /// <param name="straight">The word for no swing.</param>
    internal static ImmutableArray<EngravingOptions> Of(IEnumerable<Score> scores, string straight)
    {
        var all = ImmutableArray.CreateBuilder<EngravingOptions>();
        Score? before = null;
        var stated = Feel.Straight;
        foreach (var score in scores)
        {
            var showSwing = score.Feel != Feel.SwingSixteenths || HasOffSixteenths(score);
            var feel = showSwing || score.Feel == stated ? score.Feel : Feel.Straight;
            all.Add(new EngravingOptions
            {
                ShowTempo = before is null || before.Tempo != score.Tempo || feel != stated || TempoPath.Changes(before),
                ShowSwing = showSwing,
                StraightWord = stated != Feel.Straight && feel == Feel.Straight ? straight : "",
            });
            (before, stated) = (score, feel);
        }
        return all.DrainToImmutable();
    }

    // A note on the second sixteenth of a pair.
    private static bool HasOffSixteenths(Score score)
    {
        for (var i = 0; i < score.Measures.Length; i++)
        {
            var offset = score.OffsetOf(i);
            foreach (var note in score.Measures[i].Voices.SelectMany(v => v.Events)) if (!note.IsRest && (note.Onset + offset).Modulo(Pair) == OffPair) return true;
        }
        return false;
    }
}

using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>
/// Works out the tempos that equations of note values lead to. The tempo before is that of what is played before the measure the first
/// time, as in <see cref="TempoPath"/>.
/// </summary>
internal static class TempoEquations
{
    /// <summary>The score with a tempo at every equation.</summary>
    public static Score Solve(Score score)
    {
        if (!score.Measures.Any(m => m.Directions.Any(d => d.Equation is not null))) return score;
        var measures = score.Measures.ToBuilder();
        var ends = new Tempo?[measures.Count];
        var tempo = score.Tempo;
        foreach (var index in PlaybackOrder.Of(score)) tempo = ends[index] ??= SolveMeasure(index, tempo);
        // Measures that are never played follow the page.
        for (var i = 0; i < ends.Length; i++) ends[i] ??= SolveMeasure(i, i == 0 ? score.Tempo : ends[i - 1]!);
        return score with { Measures = measures.ToImmutable() };

        // Gives the tempo at the end of the measure.
        Tempo SolveMeasure(int index, Tempo before)
        {
            var directions = measures[index].Directions.ToBuilder();
            foreach (var i in Enumerable.Range(0, directions.Count).OrderBy(d => directions[d].Offset).ToArray())
            {
                if (directions[i].Equation is { } equation) directions[i] = directions[i] with { Tempo = equation.From(before) };
                before = directions[i].Tempo ?? before;
            }
            measures[index] = measures[index] with { Directions = directions.ToImmutable() };
            return before;
        }
    }
}

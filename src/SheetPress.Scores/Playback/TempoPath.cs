using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>
/// The tempo in force along the measures of a score. A measure has the tempo with which it was first reached, each time it is played:
/// going back to the start of a repeat goes back to its tempo, and an ending is as fast as what was played before it. Common practice;
/// a tempo mark within the measure then holds from its place on.
/// </summary>
public static class TempoPath
{
    /// <summary>The tempo at the start of each measure in written order, a mark right there included.</summary>
    public static ImmutableArray<Tempo> AtStarts(Score score)
    {
        var starts = new Tempo?[score.Measures.Length];
        var tempo = score.Tempo;
        foreach (var index in PlaybackOrder.Of(score))
        {
            tempo = starts[index] ??= AtStart(score.Measures[index]) ?? tempo;
            tempo = AtEnd(score.Measures[index], tempo);
        }
        // Measures that are never played follow the page.
        for (var i = 0; i < starts.Length; i++) starts[i] ??= AtStart(score.Measures[i]) ?? (i == 0 ? score.Tempo : AtEnd(score.Measures[i - 1], starts[i - 1]!));
        return [.. starts.Select(t => t!)];
    }

    /// <summary>The tempo at the end of a measure.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="atStart">The tempo at its start.</param>
    public static Tempo AtEnd(Measure measure, Tempo atStart)
    {
        var last = atStart;
        var at = Fraction.Zero;
        foreach (var direction in measure.Directions)
        {
            if (direction.Tempo is { } tempo && direction.Offset >= at) (last, at) = (tempo, direction.Offset);
        }
        return last;
    }

    /// <summary>Whether the tempo changes somewhere in a score.</summary>
    public static bool Changes(Score score) => score.Measures.Any(m => m.Directions.Any(d => d.Kind == DirectionKind.Tempo));

    private static Tempo? AtStart(Measure measure)
    {
        Tempo? found = null;
        foreach (var direction in measure.Directions) if (direction.Tempo is { } tempo && direction.Offset == Fraction.Zero) found = tempo;
        return found;
    }
}

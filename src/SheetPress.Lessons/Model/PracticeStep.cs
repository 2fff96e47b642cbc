using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>One row of the practice plan.</summary>
/// <param name="Task">What to do; may be empty when an exercise is named.</param>
/// <param name="Tempos">Tempo steps, in the beats of the lesson's tempo a minute; empty when not said.</param>
/// <param name="Repetitions">Times at each tempo; 0 when not said.</param>
/// <param name="Minutes">Minutes; 0 when not said.</param>
public sealed record PracticeStep(string Task, ImmutableArray<double> Tempos, int Repetitions, double Minutes)
{
    /// <summary>Index of the exercise it is about, from 0; null when it is about none.</summary>
    public int? Exercise { get; init; }
}

using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Makes the rows of the practice plan: the teacher's own, or one for each exercise.</summary>
public static class PracticePlanner
{
    // Common practice: begin well under tempo and arrive in three steps.
    private static readonly double[] Steps = [0.6, 0.8, 1.0];

    /// <summary>The rows for a lesson.</summary>
    public static ImmutableArray<PracticeRow> Plan(BuiltLesson built)
    {
        if (built.Lesson.HasOwnPracticePlan)
        {
            return [.. built.Lesson.PracticePlan.Select(step => new PracticeRow(
                Task(step, built),
                [.. step.Tempos.Select(Number)],
                step.Repetitions > 0 ? Number(step.Repetitions) : "",
                step.Minutes > 0 ? Number(step.Minutes) : ""))];
        }
        return [.. built.Exercises.Select((exercise, index) => new PracticeRow(
            Numbered(index, exercise),
            TempoSteps(exercise.Score.Tempo.BeatsPerMinute),
            "4",
            Number(MinutesFor(exercise))))];
    }

    /// <summary>Sum of the minutes of a plan as printed; empty when fewer than two rows say theirs.</summary>
    public static string Total(ImmutableArray<PracticeRow> plan)
    {
        var minutes = plan.Where(row => row.Minutes.Length > 0).Select(row => double.Parse(row.Minutes, CultureInfo.InvariantCulture)).ToArray();
        return minutes.Length > 1 ? Number(minutes.Sum()) : "";
    }

    /// <summary>Tempo steps up to a tempo, in beats a minute, rounded to even numbers and without repeats.</summary>
    public static ImmutableArray<string> TempoSteps(double tempo) =>
        [.. Steps.Select(s => s == 1 ? tempo : Math.Max(30, 2 * Math.Round(tempo * s / 2))).Where(t => t <= tempo).Distinct().Select(Number)];

    private static string Task(PracticeStep step, BuiltLesson built)
    {
        if (step.Exercise is not { } index || index >= built.Exercises.Length) return step.Task;
        var exercise = Numbered(index, built.Exercises[index]);
        return step.Task.Length > 0 ? $"{exercise}: {step.Task}" : exercise;
    }

    private static string Numbered(int index, BuiltExercise exercise) =>
        string.Create(CultureInfo.InvariantCulture, $"{index + 1}. {exercise.Score.Title}");

    // Twelve passes through the exercise at a middling tempo, in whole minutes.
    private static double MinutesFor(BuiltExercise exercise)
    {
        var tempos = TempoPath.AtStarts(exercise.Score);
        var once = exercise.Score.Measures.Select((m, i) => m.Length.ToDouble() / (tempos[i].QuartersPerMinute * 0.8)).Sum();
        return Math.Clamp(Math.Ceiling(12 * once), 3, 15);
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The rhythm of an exercise: the lesson's own, or the one its style has at the level.</summary>
internal static class LevelRhythm
{
    /// <summary>The lesson's rhythm, or else another with the marks that the lesson gives.</summary>
    public static Func<Meter, RhythmPattern> Or(ExerciseContext context, Func<Meter, RhythmPattern> other)
    {
        if (context.Request.Rhythm is { } asked) return _ => asked;
        var marks = context.Request.Marks;
        return marks.IsEmpty ? other : meter => other(meter).WithMarks(marks);
    }

    /// <summary>The rhythm of arpeggios and scales: beats at first, then eighths, sixteenths for the advanced.</summary>
    public static Func<Meter, RhythmPattern> ForRuns(ExerciseContext context) => Or(context, LevelTable.Of(context.Level).Runs switch
    {
        RunValue.Beats => EvenRhythms.Beats,
        RunValue.Eighths => EvenRhythms.Eighths,
        _ => EvenRhythms.Sixteenths,
    });
}

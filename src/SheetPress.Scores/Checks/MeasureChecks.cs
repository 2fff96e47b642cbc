using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>Checks of a measure's length, marks, repeats and endings.</summary>
internal static class MeasureChecks
{
    public static void Run(Score score, int index, ImmutableArray<ScoreFinding>.Builder findings)
    {
        var measure = score.Measures[index];
        void Add(ScoreRule rule, string message) => findings.Add(new ScoreFinding(rule, index, 0, -1, message));

        if (measure.Length <= Fraction.Zero || measure.Length > measure.Meter.MeasureLength)
        {
            Add(ScoreRule.MeasureAddsUp, $"It lasts {measure.Length} quarter notes; {measure.Meter} holds {measure.Meter.MeasureLength}.");
        }
        if (measure.Voices.Length is < 1 or > 2) Add(ScoreRule.MeasureAddsUp, $"It has {measure.Voices.Length} voices; one or two are possible.");
        CheckMarks(measure, Add);
        if (measure.RepeatEndTimes is 1 or < 0) Add(ScoreRule.RepeatsMakeSense, "A repeat is played at least twice.");
        if (!measure.EndingStart.IsEmpty && !HasRepeatNearby(score, index)) Add(ScoreRule.RepeatsMakeSense, "An ending belongs to a repeat that ends in it or in the ending before.");
        if (measure.EndingStop && !IsInsideEnding(score, index)) Add(ScoreRule.RepeatsMakeSense, "An ending stops here that never started.");
    }

    private static void CheckMarks(Measure measure, Action<ScoreRule, string> add)
    {
        var before = Fraction.Zero;
        foreach (var harmony in measure.Harmonies)
        {
            if (harmony.Offset < before || harmony.Offset >= measure.Length) add(ScoreRule.MarksInMeasure, $"The chord {harmony.Chord?.ToString() ?? "N.C."} at {harmony.Offset} is out of order or outside.");
            before = harmony.Offset;
        }
        foreach (var direction in measure.Directions)
        {
            if (direction.Offset < Fraction.Zero || direction.Offset > measure.Length) add(ScoreRule.MarksInMeasure, $"The mark {direction.Kind} at {direction.Offset} is outside.");
            if (direction.Kind == DirectionKind.Tempo != direction.Tempo is not null) add(ScoreRule.MarksInMeasure, $"The mark {direction.Kind} at {direction.Offset} {(direction.Tempo is null ? "lacks its tempo" : "has a tempo")}.");
            if (direction.Equation is { } equation && direction.Tempo?.Beat != equation.After) add(ScoreRule.MarksInMeasure, $"The mark {direction.Kind} at {direction.Offset} does not count the value that its equation leads to.");
        }
    }

    // A first ending holds a repeat end before the next ending starts; a later one follows an ending.
    private static bool HasRepeatNearby(Score score, int index)
    {
        for (var i = index; i < score.Measures.Length; i++)
        {
            if (i > index && !score.Measures[i].EndingStart.IsEmpty) break;
            if (score.Measures[i].RepeatEndTimes > 0) return true;
            if (score.Measures[i].EndingStop) break;
        }
        for (var i = index - 1; i >= 0; i--) if (score.Measures[i].EndingStop) return true;
        return false;
    }

    private static bool IsInsideEnding(Score score, int index)
    {
        for (var i = index; i >= 0; i--)
        {
            if (!score.Measures[i].EndingStart.IsEmpty) return true;
            if (i < index && score.Measures[i].EndingStop) return false;
        }
        return false;
    }
}

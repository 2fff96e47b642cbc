using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>What an exercise has of its own in place of its lesson's: another meter for the same bars and chords, another instrument.</summary>
internal static class ExerciseFrame
{
    /// <summary>The progression in another meter; null, with the reason reported, where its chords do not go into it.</summary>
    /// <param name="meterText">The meter as written in the exercise.</param>
    /// <param name="meter">The meter.</param>
    /// <param name="read">Reads the lesson's progression in a meter; null when it has none.</param>
    /// <param name="bag">Where problems go.</param>
    public static Progression? InMeter(LocatedText meterText, Meter meter, Func<Meter, DiagnosticBag, Progression?> read, DiagnosticBag bag)
    {
        var problems = new DiagnosticBag(bag.Source);
        var progression = read(meter, problems);
        if (problems.Items.FirstOrDefault(d => d.Severity == Severity.Error) is not { } error) return progression;
        // What is wrong in any meter is reported with the progression itself.
        if (!bag.Items.Any(d => d.Severity == Severity.Error && d.Code == error.Code && d.Span == error.Span)) bag.Add(meterText.Span, ExerciseProblems.MeterDoesNotFit(meterText.Value, error.Message));
        return null;
    }

    /// <summary>The lesson as an exercise sees it: for the exercise's instrument, in its meter, with beats as fast as the lesson's.</summary>
    public static Lesson Of(Lesson lesson, ExerciseRequest request)
    {
        var own = request.Instrument is { } instrument ? lesson with { Instrument = instrument, WrittenFor = instrument } : lesson;
        if (request is not { Meter: { } meter, Progression: { } progression }) return own;
        var countsTheBeat = lesson.Tempo.Beat == TempoReader.BeatOf(lesson.Meter);
        return own with
        {
            Meter = meter,
            Progression = progression,
            Tempo = countsTheBeat ? new Tempo(lesson.Tempo.BeatsPerMinute, TempoReader.BeatOf(meter)) : lesson.Tempo,
        };
    }
}

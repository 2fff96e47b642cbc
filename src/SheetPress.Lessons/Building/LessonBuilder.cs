using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Makes the music of a lesson: each exercise is generated, fingered and written into a score.</summary>
public static class LessonBuilder
{
    /// <summary>Levels up to this one show fretting fingers when the lesson does not say.</summary>
    private const int FingersUpToLevel = 3;

    /// <summary>Levels up to this one show degree names when the lesson does not say.</summary>
    private const int DegreesUpToLevel = 3;

    /// <summary>Longest name made from a title, in characters: file systems take 255 bytes, and a letter can have three.</summary>
    private const int LongestName = 60;

    /// <summary>Builds every exercise of a lesson.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="diagnostics">Gets what is wrong; the exercises concerned are left out.</param>
    public static BuiltLesson Build(Lesson lesson, DiagnosticBag diagnostics)
    {
        var exercises = ImmutableArray.CreateBuilder<BuiltExercise>();
        foreach (var request in lesson.Exercises.SelectMany(r => Ladder.Expand(r, ExerciseFrame.Of(lesson, r))))
        {
            if (BuildExercise(ExerciseFrame.Of(lesson, request), request, exercises.Count + 1, diagnostics) is { } exercise) exercises.Add(exercise);
        }
        return new BuiltLesson(lesson, exercises.ToImmutable());
    }

    private static BuiltExercise? BuildExercise(Lesson lesson, ExerciseRequest request, int number, DiagnosticBag diagnostics)
    {
        var context = new ExerciseContext(lesson, request, diagnostics);
        var errorsBefore = diagnostics.Items.Count(d => d.Severity == Severity.Error);
        var line = request.Style.Generate(context);
        if (diagnostics.Items.Count(d => d.Severity == Severity.Error) > errorsBefore) return null;

        var lower = request.Style.GenerateLower(context);
        if (diagnostics.Items.Count(d => d.Severity == Severity.Error) > errorsBefore) return null;
        (line, lower) = (line.WithoutUnplayedJoins(lesson.Progression.Measures), lower?.WithoutUnplayedJoins(lesson.Progression.Measures));
        if (request.ShowCounts == true) (line, lower) = (line.Counted(lesson.Progression.Measures), lower?.Counted(lesson.Progression.Measures));
        if (Finger(context, line, lower) is not { } fingered) return null;
        var title = request.Title ?? request.Style.TitleIn(lesson.Progression);
        var header = new ScoreHeader
        {
            Id = FileName(number, title),
            Title = title,
            Instruction = request.Instruction ?? request.Style.InstructionIn(lesson.Progression, request),
            Instrument = lesson.Instrument,
            Tempo = request.Tempo ?? lesson.Tempo,
            Feel = (lesson.Meter.IsCompound ? null : request.Style.OwnFeel) ?? lesson.Feel,
            Layout = request.Layout,
            ShowFingers = request.ShowFingers ?? context.Level <= FingersUpToLevel,
            ShowStrings = request.ShowStrings ?? request.Style.IsAboutPlaces,
            ShowDegrees = request.ShowDegrees ?? context.Level <= DegreesUpToLevel,
            ShowCounts = request.ShowCounts ?? line.Notes.Any(n => n.Count is not null),
            ShowRomans = request.ShowRomans ?? false,
            ShowRhythm = request.Rhythm is not null,
            MeasuresPerSystem = request.MeasuresPerSystem,
        };
        var frame = request.ShowShapes == true ? ChordShapes.Over(context, fingered.Line) : lesson.Progression.Measures;
        if (request.Tempo is { } own) frame = InProportion(frame, own.QuartersPerMinute / lesson.Tempo.QuartersPerMinute);
        try
        {
            var score = ScoreBuilder.Build(header, frame, fingered.Line, fingered.Lower);
            if (header.ShowCounts) score = score.WithCountedRests(request.Rhythm);
            if (OutOfRange(request, score) is not { } problem) return new BuiltExercise(request, fingered.Line, fingered.Summary, score);
            diagnostics.Add(request.Span, problem);
            return null;
        }
        catch (UnwritableRhythmException e)
        {
            diagnostics.Add(request.Span, Unwritable(lesson.Progression, request, e));
            return null;
        }
    }

    // An exercise that goes at a tempo of its own keeps the changes of its lesson in proportion.
    private static ImmutableArray<FrameMeasure> InProportion(ImmutableArray<FrameMeasure> frame, double factor) =>
        [.. frame.Select(m => m with { Directions = [.. m.Directions.Select(d => d with { Tempo = d.Tempo?.Times(factor) })] })];

    private static (Line Line, Line? Lower, FingeringSummary? Summary)? Finger(ExerciseContext context, Line line, Line? lower)
    {
        var (lesson, request) = (context.Lesson, context.Request);
        ImmutableArray<Fraction> chordStarts = [.. lesson.Progression.Chords.Where(c => !c.IsHeld).Select(c => c.Start)];
        if (lower is not null)
        {
            var both = TwoVoiceFingering.Apply(line, lower, lesson.Instrument, request.Neck, context.Level, chordStarts);
            if (both.FailedAt is not { } at) return (both.Upper, both.Lower, both.Summary);
            context.Diagnostics.Add(request.Span, Unplayable(lesson, request, at, both.Reason));
            return null;
        }
        var fingered = LineFingering.Apply(line, lesson.Instrument, request.Neck, context.Level, chordStarts);
        if (fingered.FailedNote < 0) return (fingered.Line, null, fingered.Summary);
        context.Diagnostics.Add(request.Span, Unplayable(lesson, request, line.Notes[fingered.FailedNote].Start, fingered.Reason));
        return null;
    }

    private static Problem Unwritable(Progression progression, ExerciseRequest request, UnwritableRhythmException e) => new(
        "not-writable",
        Severity.Error,
        string.Create(CultureInfo.InvariantCulture, $"The rhythm of \"{request.Title ?? request.Style.Title}\" cannot be written in {ProgressionBars.Name(progression, e.MeasureIndex)}: it falls between sixty-fourth notes and is no group of 3, 5, 6 or 7."),
        "Use longer values there, or fewer dots.");

    // What an equation leads to is known with the tempo of the exercise. No written tempo is beyond these quarter notes a minute but one of very short values.
    private static Problem? OutOfRange(ExerciseRequest request, Score score)
    {
        for (var i = 0; i < score.Measures.Length; i++)
        {
            if (score.Measures[i].Directions.FirstOrDefault(d => d.Equation is not null)?.Tempo is not { } tempo || tempo.QuartersPerMinute is >= TempoReader.Slowest / 4.0 and <= TempoReader.Fastest * 4.0) continue;
            return new Problem(
                "equation-out-of-range",
                Severity.Error,
                string.Create(CultureInfo.InvariantCulture, $"The equation of note values in bar {score.Measures[i].Number} of \"{request.Title ?? request.Style.Title}\" leads to {tempo.QuartersPerMinute:0.##} quarter notes a minute."),
                "The left value is that of the bar before, the right one that of the bar it stands over: turn them round, or write the tempo as a number.");
        }
        return null;
    }

    private static Problem Unplayable(Lesson lesson, ExerciseRequest request, Fraction start, string reason)
    {
        var (bar, beat) = BarAndBeat(lesson.Progression, start);
        return new Problem(
            "not-playable",
            Severity.Error,
            string.Create(CultureInfo.InvariantCulture, $"The exercise \"{request.Title ?? request.Style.Title}\" cannot be played: in {bar}, beat {beat}, {reason}."),
            "Give it more room with 'range' or 'strings', choose another position, or change the notes.");
    }

    private static (string Bar, string Beat) BarAndBeat(Progression progression, Fraction start)
    {
        var begin = Fraction.Zero;
        for (var i = 0; i < progression.Measures.Length; i++)
        {
            var measure = progression.Measures[i];
            if (start < begin + measure.Length || i == progression.Measures.Length - 1)
            {
                var beat = ((start - begin) / measure.Meter.UnitLength) + 1;
                return (ProgressionBars.Name(progression, i), beat.ToDouble().ToString("0.##", CultureInfo.InvariantCulture));
            }
            begin += measure.Length;
        }
        return ("bar 1", "1");
    }

    /// <summary>The file name of an exercise: its number in two digits and its title in lower-case words joined with hyphens.</summary>
    internal static string FileName(int number, string title)
    {
        var slug = LessonFiles.Slug(title);
        if (slug.Length > LongestName) slug = slug[..LongestName].TrimEnd('-');
        return string.Create(CultureInfo.InvariantCulture, $"{number:00}-{slug}");
    }
}

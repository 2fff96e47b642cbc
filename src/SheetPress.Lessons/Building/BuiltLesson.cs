using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>A lesson with its music made: what every sheet and file is written from.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Exercises">Its exercises in order.</param>
public sealed record BuiltLesson(Lesson Lesson, ImmutableArray<BuiltExercise> Exercises);

/// <summary>One exercise: the request, the fingered line and the score.</summary>
/// <param name="Request">What the lesson asked for.</param>
/// <param name="Line">The line with string, fret and finger on every tone.</param>
/// <param name="Fingering">What the hand has to do; null when the line has no notes.</param>
/// <param name="Score">The score.</param>
public sealed record BuiltExercise(ExerciseRequest Request, Line Line, FingeringSummary? Fingering, Score Score);

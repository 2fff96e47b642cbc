namespace SheetPress.Lessons;

/// <summary>What can be wrong with exercises, diagrams and the practice plan.</summary>
public static class ExerciseProblems
{
    /// <summary>Exercises that are no list.</summary>
    public static Problem ExercisesNotList() => Error(DiagnosticCodes.ExercisesNotList, "'exercises' takes a list.", "Write each exercise on lines of its own, beginning with '- style: roots'.");

    /// <summary>A single exercise without the dash that makes it one of a list.</summary>
    public static Problem ExerciseWithoutDash(string name) => Error(DiagnosticCodes.ExercisesNotList, "'exercises' takes a list, also for a single exercise.", $"Begin each exercise with a dash and a space, as in '- {name}: ...', and indent its other lines two spaces further than the dash.");

    /// <summary>A list with long dashes, as word processors write them.</summary>
    public static Problem LongDash() => Error(DiagnosticCodes.ExercisesNotList, "A long dash does not make a list.", "Begin each exercise with a plain hyphen and a space: '- style: roots'.");

    /// <summary>An exercise that is no mapping.</summary>
    public static Problem ExerciseNotEntries() => Error(DiagnosticCodes.ExerciseNotEntries, "An exercise needs a style.", "Write for example '- style: arpeggio'.");

    /// <summary>Too many exercises.</summary>
    public static Problem TooManyExercises(int maximum) => Error(DiagnosticCodes.TooManyExercises, $"A lesson has at most {maximum} exercises.", "Split it into several lessons.");

    /// <summary>Chords that do not go into an exercise's own meter.</summary>
    public static Problem MeterDoesNotFit(string meter, string why) => Error(DiagnosticCodes.MeterDoesNotFit, $"The progression does not go into {meter}: {why}", "Take the numbers of beats from its chords, or leave the exercise in the meter of the lesson.");

    /// <summary>No exercises at all.</summary>
    public static Problem NoExercises() => new(DiagnosticCodes.NoExercises, Severity.Warning, "The lesson has no exercises.", "Write 'exercises:' and below it '  - style: roots'; 'styles' lists what there is.");

    /// <summary>No style.</summary>
    public static Problem NoStyle() => Error(DiagnosticCodes.NoStyle, "This exercise has no style.", "Write for example 'style: arpeggio'; 'styles' lists what there is.");

    /// <summary>An unknown style.</summary>
    public static Problem UnknownStyle(string name, string? near, IReadOnlyList<string> known) =>
        new(DiagnosticCodes.UnknownStyle, Severity.Error, $"There is no style '{name}'.", near is null ? $"The command 'styles' lists them: {string.Join(", ", known.Take(8))} and more." : $"Did you mean '{near}'?") { Suggestion = near };

    /// <summary>An option that the style needs.</summary>
    public static Problem MissingOption(string style, string option, string summary) => Error(DiagnosticCodes.MissingOption, $"The style '{style}' needs '{option}'.", $"{option}: {summary}");

    /// <summary>Both ways to give a rhythm.</summary>
    public static Problem RhythmAndCount() => Error(DiagnosticCodes.RhythmAndCount, "The rhythm is given twice, as 'rhythm' and as 'count'.", "Keep one of them.");

    /// <summary>Too many marks.</summary>
    public static Problem TooManyMarks(int maximum) => Error(DiagnosticCodes.TooManyMarks, $"At most {maximum} marks can be given; they start over again.", "Write the marks of one round only.");

    /// <summary>Nothing and something to show.</summary>
    public static Problem NothingAndSomething() => Error(DiagnosticCodes.NothingAndSomething, "'show' says nothing and something.", "Write 'nothing' alone, or leave it away.");

    /// <summary>No range.</summary>
    public static Problem BadRange(string name) => Error(DiagnosticCodes.BadRange, $"'{name}' takes two frets, the lower first.", "Write for example 5-9.");

    /// <summary>A fret beyond the neck.</summary>
    public static Problem FretOffNeck(int fret, int frets) => Error(DiagnosticCodes.FretOffNeck, $"There is no fret {fret} on this neck.", $"Its highest fret is {frets}.");

    /// <summary>A string the instrument does not have.</summary>
    public static Problem NoSuchString(int number, int strings) => Error(DiagnosticCodes.NoSuchString, $"There is no string {number} on this instrument.", $"Strings go from 1 (the one nearest the floor) to {strings}.");

    /// <summary>No strings.</summary>
    public static Problem BadStrings(string text) => Error(DiagnosticCodes.BadStrings, $"'{text}' is no string number.", "Write for example 3 4, or 2-4; string 1 is nearest the floor.");

    /// <summary>No place on the neck.</summary>
    public static Problem BadPlace(string text) => Error(DiagnosticCodes.BadPlace, $"'{text}' is no place on the neck.", "Write string:fret, as in 4:3 for the third fret of string 4.");

    /// <summary>A place twice.</summary>
    public static Problem PlaceTwice(string text) => new(DiagnosticCodes.PlaceTwice, Severity.Warning, $"{text} is given twice.", "Take one of them away.");

    /// <summary>No degree.</summary>
    public static Problem UnknownDegree(string text) => Error(DiagnosticCodes.UnknownDegree, $"'{text}' is no degree.", "Write R for the root, or a number with b or # before it, as in b3, 5, 10, #11.");

    /// <summary>Diagrams that are no list.</summary>
    public static Problem DiagramsNotList() => Error(DiagnosticCodes.DiagramsNotList, "'diagrams' takes a list, or the word none.", "Write each diagram on a line of its own: '- chord: Cm7'.");

    /// <summary>Too many diagrams.</summary>
    public static Problem TooManyDiagrams(int maximum) => Error(DiagnosticCodes.TooManyDiagrams, $"A lesson has at most {maximum} diagrams.", "Split it into several lessons.");

    /// <summary>A diagram of nothing.</summary>
    public static Problem DiagramOfNothing() => Error(DiagnosticCodes.DiagramOfNothing, "This diagram does not say what to show.", "Write 'chord: Cm7', 'grip: Cm7', 'scale: C dorian', 'shape: 4:3 3:5 2:5' or 'exercise: 1'.");

    /// <summary>Two subjects.</summary>
    public static Problem TwoSubjects() => Error(DiagnosticCodes.TwoSubjects, "A diagram shows a scale or something else, not both.", "Write two diagrams.");

    /// <summary>A scale without a root or without a name.</summary>
    public static Problem IncompleteScale(string text) => Error(DiagnosticCodes.IncompleteScale, $"'{text}' is no scale: a scale has a root and a name.", "Write for example C dorian, or 'key' for the scale of the key.");

    /// <summary>An unknown scale.</summary>
    public static Problem UnknownScale(string name, string? near) =>
        new(DiagnosticCodes.UnknownScale, Severity.Error, $"There is no scale '{name}'.", near is null ? "Write for example dorian, natural minor or phrygian dominant." : $"Did you mean '{near}'?") { Suggestion = near };

    /// <summary>A plan that is no list.</summary>
    public static Problem PracticeNotList() => Error(DiagnosticCodes.PracticeNotList, "'practice' takes a list, or the word none.", "Write each step on a line of its own, beginning with '-'.");

    /// <summary>Too many steps.</summary>
    public static Problem TooManySteps(int maximum) => Error(DiagnosticCodes.TooManySteps, $"A practice plan has at most {maximum} steps.", "Keep what fits in one practice.");

    /// <summary>A step of nothing.</summary>
    public static Problem StepOfNothing() => Error(DiagnosticCodes.StepOfNothing, "This step does not say what to do.", "Write '- do: Sing the roots', or '- exercise: 1'.");

    /// <summary>An exercise the lesson does not have.</summary>
    public static Problem NoSuchExercise(int number, int exercises) => Error(DiagnosticCodes.NoSuchExercise, $"There is no exercise {number} in this lesson.", exercises == 0 ? "It has none." : $"They go from 1 to {exercises}.");

    /// <summary>No minutes.</summary>
    public static Problem BadMinutes() => Error(DiagnosticCodes.BadMinutes, "'minutes' takes a number above 0, at most 600.", "");

    private static Problem Error(string code, string message, string advice) => new(code, Severity.Error, message, advice);
}

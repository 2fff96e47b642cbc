namespace SheetPress.Lessons;

// Codes about exercises, diagrams and the practice plan.
public static partial class DiagnosticCodes
{
    /// <summary>Exercises that are no list.</summary>
    public const string ExercisesNotList = "exercises-not-list";

    /// <summary>An exercise that is no mapping.</summary>
    public const string ExerciseNotEntries = "exercise-not-entries";

    /// <summary>A progression that does not go into an exercise's own meter.</summary>
    public const string MeterDoesNotFit = "meter-does-not-fit";

    /// <summary>Too many exercises.</summary>
    public const string TooManyExercises = "too-many-exercises";

    /// <summary>No exercises at all.</summary>
    public const string NoExercises = "no-exercises";

    /// <summary>No style.</summary>
    public const string NoStyle = "no-style";

    /// <summary>An unknown style.</summary>
    public const string UnknownStyle = "unknown-style";

    /// <summary>An option that the style needs.</summary>
    public const string MissingOption = "missing-option";

    /// <summary>Both ways to give a rhythm.</summary>
    public const string RhythmAndCount = "rhythm-and-count";

    /// <summary>Too many marks.</summary>
    public const string TooManyMarks = "too-many-marks";

    /// <summary>Nothing and something to show.</summary>
    public const string NothingAndSomething = "nothing-and-something";

    /// <summary>No range.</summary>
    public const string BadRange = "bad-range";

    /// <summary>A fret beyond the neck.</summary>
    public const string FretOffNeck = "fret-off-neck";

    /// <summary>A string the instrument does not have.</summary>
    public const string NoSuchString = "no-such-string";

    /// <summary>No strings.</summary>
    public const string BadStrings = "bad-strings";

    /// <summary>No place on the neck.</summary>
    public const string BadPlace = "bad-place";

    /// <summary>A place twice.</summary>
    public const string PlaceTwice = "place-twice";

    /// <summary>No degree.</summary>
    public const string UnknownDegree = "unknown-degree";

    /// <summary>Diagrams that are no list.</summary>
    public const string DiagramsNotList = "diagrams-not-list";

    /// <summary>Too many diagrams.</summary>
    public const string TooManyDiagrams = "too-many-diagrams";

    /// <summary>A diagram of nothing.</summary>
    public const string DiagramOfNothing = "diagram-of-nothing";

    /// <summary>Something about a diagram that does not fit what it shows.</summary>
    public const string BadDiagram = "bad-diagram";

    /// <summary>Two subjects.</summary>
    public const string TwoSubjects = "two-subjects";

    /// <summary>A scale without a root or without a name.</summary>
    public const string IncompleteScale = "incomplete-scale";

    /// <summary>An unknown scale.</summary>
    public const string UnknownScale = "unknown-scale";

    /// <summary>A plan that is no list.</summary>
    public const string PracticeNotList = "practice-not-list";

    /// <summary>Too many steps.</summary>
    public const string TooManySteps = "too-many-steps";

    /// <summary>A step of nothing.</summary>
    public const string StepOfNothing = "step-of-nothing";

    /// <summary>An exercise the lesson does not have.</summary>
    public const string NoSuchExercise = "no-such-exercise";

    /// <summary>No minutes.</summary>
    public const string BadMinutes = "bad-minutes";
}

namespace SheetPress.Lessons;

/// <summary>What can be wrong with neck diagrams beyond what <see cref="ExerciseProblems"/> has.</summary>
internal static class DiagramProblems
{
    /// <summary>A chord where the name of an entry should be.</summary>
    public static Problem ChordForEntry(string chord) =>
        new(DiagnosticCodes.UnknownEntry, Severity.Error, $"'{chord}' is no entry of a diagram.", $"Write 'chord: {chord}' for its tones, 'grip: {chord}' for the chord as the hand holds it.") { Suggestion = $"chord: {chord}" };

    /// <summary>A grip for another number of strings.</summary>
    public static Problem WrongStringCount(string text, int given, int strings, string instrument) => Error(
        $"'{text}' is for {given} strings, the {instrument} has {strings}.",
        "Write a fret, 0 or x for every string from the lowest to string 1, as in x32010; with frets above 9 put a blank between them.");

    /// <summary>A part of a grip that is no fret.</summary>
    public static Problem BadGripPart(string text) => Error($"'{text}' is no fret.", "Write frets, 0 for an open string and x for a silent one, as in x32010 or 8 10 10 9 8 8.");

    /// <summary>A grip in which nothing sounds.</summary>
    public static Problem SilentGrip() => Error("In this grip no string sounds.", "Write a fret or 0 for the strings that do.");

    /// <summary>No finger.</summary>
    public static Problem BadFinger(string text) => Error($"'{text}' is no finger.", "Write string:fret:finger with a finger from 1 (index) to 4 (little), as in 4:3:2.");

    /// <summary>Fingers where no hand is shown.</summary>
    public static Problem NoFingers() => Error("A map of tones has no fingers.", "Write degrees, notes or nothing for 'labels', or show a grip: or shape: with fingers.");

    /// <summary>Labels on a path.</summary>
    public static Problem PathLabels() => Error("The dots of a path hold the order of the notes.", "Take 'labels' away.");

    /// <summary>Measures without an exercise.</summary>
    public static Problem MeasuresOfNothing() => Error("'measures' chooses bars of an exercise, and this diagram shows none.", "Write 'exercise: 1' to show the path of an exercise, or take 'measures' away.");

    /// <summary>No range of measures.</summary>
    public static Problem BadMeasures(int measures) => Error("'measures' takes one bar, or two with the lower first.", $"Write for example 1-2; the lesson has {measures} bars.");

    /// <summary>A family of something that is one thing.</summary>
    public static Problem OneOnly(string subject) => Error($"'positions' makes several diagrams of a chord, a scale or a named grip; {subject} is one thing.", "Take 'positions' away.");

    /// <summary>Neither a number nor all.</summary>
    public static Problem BadPositions(string text) => Error($"'positions' does not take '{text}'.", "Write all, or how many diagrams side by side, 2 to 12.");

    /// <summary>A named grip on a bass.</summary>
    public static Problem GripOnBass(string instrument) => Error(
        $"Whole chords growl on a {instrument}, so there are no usual grips.",
        "Write 'chord:' for the tones of the chord, or the frets themselves, as in grip: 8 x 8 8.");

    /// <summary>A grip that needs more hands.</summary>
    public static Problem CannotHold(string text) => new(
        DiagnosticCodes.CannotHold, Severity.Warning, $"One hand cannot hold '{text}': it is shown without fingers.", "Take a tone away, or show the tones with 'shape:' as a map.");

    private static Problem Error(string message, string advice) => new(DiagnosticCodes.BadDiagram, Severity.Error, message, advice);
}

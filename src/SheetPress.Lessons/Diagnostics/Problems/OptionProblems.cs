namespace SheetPress.Lessons;

/// <summary>What can be wrong with options that are each right by themselves.</summary>
internal static class OptionProblems
{
    /// <summary>An order that does not exist among those that start with the root.</summary>
    public static Problem NoSuchOrder(int order, int orders) =>
        Clash($"Only {orders} orders start with the root, and order {order} is asked for.", $"Choose an order from 1 to {orders}, or leave 'first' away.");

    /// <summary>A run too short to go too far and come back.</summary>
    public static Problem TooShortToOvershoot(int notes) =>
        Clash($"A run that goes a step too far and comes back has at least 3 notes, not {notes}.", "Ask for 3 notes or more, or leave 'overshoot' away.");

    /// <summary>A span and a position, which both say how far the line goes.</summary>
    public static Problem SpanInPosition() =>
        Clash("The position says already how far the line can go.", "Keep 'span' or 'position'.");

    /// <summary>A ladder of rhythms for an exercise with a rhythm of its own.</summary>
    public static Problem RhythmInLadder(string ladder) =>
        Clash($"The ladder '{ladder}' has a rhythm for each of its steps, and the exercise has one too.", "Keep the ladder or the rhythm.");

    /// <summary>A rhythm with one note to a chord for a style that leads from chord to chord.</summary>
    public static Problem NoRoom(string style) =>
        new(DiagnosticCodes.NoRoom, Severity.Error, $"The rhythm has one note for each chord, which leaves the style '{style}' no note to lead to the next chord.", "Choose a rhythm with two notes or more to a chord.");

    private static Problem Clash(string message, string advice) => new(DiagnosticCodes.OptionsClash, Severity.Error, message, advice);
}

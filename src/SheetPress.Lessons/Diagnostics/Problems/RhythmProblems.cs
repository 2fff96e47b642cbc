namespace SheetPress.Lessons;

/// <summary>What can be wrong with a written rhythm.</summary>
public static class RhythmProblems
{
    /// <summary>A rhythm with nothing in it.</summary>
    public static Problem EmptyRhythm() => Error(DiagnosticCodes.EmptyRhythm, "The rhythm is empty.", "Write note values such as 'eighths' or 'q e e h', or count: '1 & 2 & 3 4'.");

    /// <summary>A bar of a rhythm with nothing in it.</summary>
    public static Problem EmptyRhythmBar() => Error(DiagnosticCodes.EmptyRhythmBar, "There is nothing between these bar lines of the rhythm.", "Write its notes, or a rest.");

    /// <summary>A rhythm of absurd length.</summary>
    public static Problem RhythmTooLong() => Error(DiagnosticCodes.RhythmTooLong, "The rhythm is too long.", "A rhythm repeats: write at most 64 bars and 512 notes.");

    /// <summary>No note value.</summary>
    public static Problem UnknownRhythmWord(string word, string? near) =>
        new(DiagnosticCodes.UnknownRhythmWord, Severity.Error, $"'{word}' is no note value.", near is null ? "Write whole, half, quarter, eighth, sixteenth, or the letters w h q e s t; a point dots a letter, r in front makes a rest." : $"Did you mean '{near}'?") { Suggestion = near };

    /// <summary>No counting syllable.</summary>
    public static Problem UnknownSyllable(string word, string? near) =>
        new(DiagnosticCodes.UnknownSyllable, Severity.Error, $"'{word}' is no counting syllable.", near is null ? "Count with numbers and & e a (1 e & a), trip let for triplets, la li in 6/8." : $"Did you mean '{near}'?") { Suggestion = near };

    /// <summary>A silence that does not say where.</summary>
    public static Problem SilentCount() => Error(DiagnosticCodes.SilentCount, "A rest in a counted rhythm has to say where it falls.", "Write the silent count in round brackets: 1 (2) 3 4.");

    /// <summary>A number the bar does not have.</summary>
    public static Problem CountTooHigh(string number, string meter, int beats) => Error(DiagnosticCodes.CountTooHigh, $"There is no beat {number} in a bar of {meter}.", $"Count from 1 to {beats}, and start again at 1 for the next bar.");

    /// <summary>A number out of order.</summary>
    public static Problem CountOutOfOrder(string number) => Error(DiagnosticCodes.CountOutOfOrder, $"Beat {number} is over already.", "Count upward; a new bar starts with | or with 1.");

    /// <summary>A syllable behind the end of the bar.</summary>
    public static Problem CountPastBar(string syllable, string meter) => Error(DiagnosticCodes.CountPastBar, $"No '{syllable}' is left in this bar of {meter}.", "Start the next bar with | or with 1.");

    /// <summary>No word for marks.</summary>
    public static Problem UnknownMarkWord(string word, string? near) =>
        new(DiagnosticCodes.UnknownMarkWord, Severity.Error, word.Length == 0 ? "A mark is missing behind the colon." : $"'{word}' is no mark for a note.", near is null ? "Marks are " + string.Join(", ", MarkWords.All.Select(m => m.Word)) + "." : $"Did you mean '{near}'?") { Suggestion = near };

    /// <summary>A plural among other values.</summary>
    public static Problem FillAmongOthers() => Error(DiagnosticCodes.FillAmongOthers, "A plural alone fills the bar; among other values it needs a number.", "Write for example '4 eighths'.");

    /// <summary>A tie with nothing to tie.</summary>
    public static Problem TieToNothing() => Error(DiagnosticCodes.TieToNothing, "The sign + ties two notes, and one of them is missing.", "Write for example 'q + e'.");

    /// <summary>A tie to or from a rest.</summary>
    public static Problem TieToRest() => Error(DiagnosticCodes.TieToRest, "A rest cannot be tied.", "Leave the + away.");

    /// <summary>Values that do not divide the bar.</summary>
    public static Problem DoesNotFill(string values, string meter) => Error(DiagnosticCodes.DoesNotFill, $"A bar of {meter} cannot be filled with {values}.", "Write the notes of one bar one by one, such as 'h q'.");

    /// <summary>A tuplet without all its notes.</summary>
    public static Problem TupletOpen(int tuplet) => Error(DiagnosticCodes.TupletOpen, $"The group of {tuplet} that starts here is not complete.", $"Write all its notes one behind the other, with the number {tuplet} at each.");

    /// <summary>More than the bar holds.</summary>
    public static Problem RhythmTooFull(string beats, string has, string meter) => Error(DiagnosticCodes.RhythmTooFull, $"These notes last {beats} beats; a bar of {meter} has {has}.", "Take notes away, or part the bars with |.");

    /// <summary>Less than the bar holds.</summary>
    public static Problem RhythmTooShort(string beats, string has, string meter) => Error(DiagnosticCodes.RhythmTooShort, $"These notes last {beats} beats; a bar of {meter} has {has}.", "Add notes or rests until the bar is full.");

    private static Problem Error(string code, string message, string advice) => new(code, Severity.Error, message, advice);
}

namespace SheetPress.Lessons;

/// <summary>What can be wrong with the entries of a lesson.</summary>
public static class FieldProblems
{
    /// <summary>An entry that must be there is not.</summary>
    public static Problem MissingEntry(string name, string example) => Error(DiagnosticCodes.MissingEntry, $"The lesson has no {name}.", $"Write for example '{example}'.");

    /// <summary>A name that means nothing here.</summary>
    public static Problem UnknownEntry(string name, string place, string? near, IReadOnlyList<string> known) =>
        new(DiagnosticCodes.UnknownEntry, Severity.Error, $"'{name}' is no entry of {place}.", near is null ? $"Known here: {string.Join(", ", known)}." : $"Did you mean '{near}'?") { Suggestion = near };

    /// <summary>An option that only other styles have.</summary>
    public static Problem OptionOfOthers(string name, string place, IReadOnlyList<string> styles) =>
        Error(DiagnosticCodes.UnknownEntry, $"'{name}' is no entry of {place}.", $"It belongs to {(styles.Count == 1 ? "the style" : "the styles")} {Named(styles)}. Choose {(styles.Count == 1 ? "that" : "one of those")}, or leave '{name}' away.");

    /// <summary>A name given twice.</summary>
    public static Problem DuplicateEntry(string name, int line) => Error(DiagnosticCodes.DuplicateEntry, $"'{name}' is given twice; the first is in line {line}.", "Keep one of them.");

    /// <summary>A list where a text should be, or the like.</summary>
    public static Problem WrongType(string name, string wanted) => Error(DiagnosticCodes.WrongType, $"'{name}' takes {wanted}.", "");

    /// <summary>A text that is too long for its place on the page.</summary>
    public static Problem TooLong(string name, int maximum) => Error(DiagnosticCodes.TooLong, $"'{name}' is longer than {maximum} letters.", "Shorten it; longer texts go in the notes.");

    /// <summary>No number.</summary>
    public static Problem NotNumber(string name, string value, int minimum, int maximum) => Error(DiagnosticCodes.NotNumber, $"'{name}' takes a whole number, and '{value}' is none.", $"Write a number from {minimum} to {maximum}.");

    /// <summary>A number out of range.</summary>
    public static Problem OutOfRange(string name, int minimum, int maximum) => Error(DiagnosticCodes.OutOfRange, $"'{name}' goes from {minimum} to {maximum}.", "");

    /// <summary>Neither yes nor no.</summary>
    public static Problem NotFlag(string name, string value) => Error(DiagnosticCodes.NotFlag, $"'{name}' is yes or no, and '{value}' is neither.", "");

    /// <summary>None of the words allowed.</summary>
    public static Problem UnknownWord(string word, string name, string? near, IReadOnlyList<string> known) =>
        new(DiagnosticCodes.UnknownWord, Severity.Error, $"'{word}' is no value of '{name}'.", near is null ? $"Choose from: {string.Join(", ", known)}." : $"Did you mean '{near}'?") { Suggestion = near };

    /// <summary>No tonic.</summary>
    public static Problem UnknownKeyTonic(string text) => Error(DiagnosticCodes.UnknownKey, $"'{text}' is no key.", "Write a tonic and a mode, as in C minor, Eb major or D dorian.");

    /// <summary>No mode.</summary>
    public static Problem UnknownMode(string word, string? near, string? key) =>
        new(DiagnosticCodes.UnknownMode, Severity.Error, $"'{word}' is no mode.", near is null ? "A key is major, minor, dorian, phrygian, lydian, mixolydian, aeolian, ionian or locrian." : $"Did you mean {key}?") { Suggestion = near };

    /// <summary>A kind of music where the mode should be.</summary>
    public static Problem BluesForMode(string tonic) => new(DiagnosticCodes.UnknownMode, Severity.Error, "A blues is a form, and no mode.", $"Write {tonic} major for a blues with {tonic}7 as its home, or {tonic} minor for one with {tonic}m7.") { Suggestion = $"{tonic} major" };

    /// <summary>A lone small letter, which is a minor key for some.</summary>
    public static Problem KeyInSmallLetter(string text, string taken, string other) =>
        new(DiagnosticCodes.KeyInSmallLetter, Severity.Warning, $"'{text}' is taken as {taken}.", $"Write {taken} to be sure, or {other} if you mean that.") { Suggestion = taken };

    /// <summary>A key with too large a signature.</summary>
    public static Problem KeyTooFar(string text, string easier) => new(DiagnosticCodes.KeyTooFar, Severity.Error, $"'{text}' would need more than seven sharps or flats.", $"Write {easier}, which sounds the same.") { Suggestion = easier };

    /// <summary>No meter.</summary>
    public static Problem UnknownMeter(string text) => Error(DiagnosticCodes.UnknownMeter, $"'{text}' is no meter.", "Write for example 4/4, 6/8 or 7/8 (2+2+3).");

    /// <summary>A meter out of range.</summary>
    public static Problem MeterOutOfRange() => Error(DiagnosticCodes.MeterOutOfRange, "A meter has 1 to 32 beats of 1, 2, 4, 8 or 16.", "Write for example 4/4 or 12/8.");

    /// <summary>Groups that do not add up.</summary>
    public static Problem BadGroups(int beats) => Error(DiagnosticCodes.BadGroups, $"The groups in brackets have to add up to {beats}.", "Write for example 7/8 (2+2+3).");

    /// <summary>No tempo.</summary>
    public static Problem UnknownTempo(string text) => Error(DiagnosticCodes.UnknownTempo, $"'{text}' is no tempo.", "Write beats a minute, as in 92, or name the value: dotted quarter = 60.");

    /// <summary>No value before the equals sign.</summary>
    public static Problem UnknownTempoBeat() => Error(DiagnosticCodes.UnknownTempoBeat, "Before the equals sign comes one note value.", "Write for example half = 60 or dotted quarter = 72.");

    /// <summary>No value on a side of an equation.</summary>
    public static Problem UnknownEquationValue() => Error(DiagnosticCodes.UnknownTempoBeat, "On each side of an equation of note values stands one value, neither a rest nor of a tuplet.", "Write for example quarter = dotted quarter or eighth = eighth.");

    /// <summary>No instrument.</summary>
    public static Problem UnknownInstrument(string name, IReadOnlyList<string> near, IReadOnlyList<string> known) =>
        new(DiagnosticCodes.UnknownInstrument, Severity.Error, $"There is no instrument '{name}'.", near.Count == 0 ? $"Choose from: {string.Join(", ", known)}." : $"Did you mean {OneOf(near)}?") { Suggestion = near.Count == 0 ? null : near[0] };

    private static string OneOf(IReadOnlyList<string> words) =>
        words.Count == 1 ? $"'{words[0]}'" : string.Join(", ", words.SkipLast(1).Select(w => $"'{w}'")) + $" or '{words[^1]}'";

    /// <summary>An own instrument without a base.</summary>
    public static Problem InstrumentWithoutBase() => Error(DiagnosticCodes.InstrumentWithoutBase, "An instrument of your own needs a base.", "Write for example 'base: bass-4', and below it what differs.");

    /// <summary>Too few or too many strings.</summary>
    public static Problem StringCount() => Error(DiagnosticCodes.StringCount, "A tuning names 3 to 9 strings.", "Write the strings from low to high, as in E1 A1 D2 G2.");

    /// <summary>No pitch.</summary>
    public static Problem UnknownPitch(string text) => Error(DiagnosticCodes.UnknownPitch, $"'{text}' is no pitch.", "Write a note and its octave, as in E1 or F#2; middle C is C4.");

    /// <summary>A string too low or too high.</summary>
    public static Problem StringOutOfRange(string text) => Error(DiagnosticCodes.StringOutOfRange, $"No string sounds as low or high as {text}.", "Strings go from C0 to C7; middle C is C4.");

    /// <summary>No length.</summary>
    public static Problem UnknownLength(string text) => Error(DiagnosticCodes.UnknownLength, $"'{text}' is no length.", "Write millimetres or inches, as in 864 mm or 34 in.");

    /// <summary>A neck of absurd length.</summary>
    public static Problem LengthOutOfRange() => Error(DiagnosticCodes.LengthOutOfRange, "A scale length is 200 to 1200 millimetres.", "Write it as in 864 mm or 34 in.");

    private static string Named(IReadOnlyList<string> styles)
    {
        const int most = 4;
        var names = string.Join(", ", styles.Take(most).Select(s => $"'{s}'"));
        return styles.Count > most ? names + " and others" : names;
    }

    private static Problem Error(string code, string message, string advice) => new(code, Severity.Error, message, advice);
}

namespace SheetPress.Lessons;

// Codes about rhythms, as values or counted.
public static partial class DiagnosticCodes
{
    /// <summary>A rhythm with nothing in it.</summary>
    public const string EmptyRhythm = "empty-rhythm";

    /// <summary>A bar of a rhythm with nothing in it.</summary>
    public const string EmptyRhythmBar = "empty-rhythm-bar";

    /// <summary>A rhythm of absurd length.</summary>
    public const string RhythmTooLong = "rhythm-too-long";

    /// <summary>No note value.</summary>
    public const string UnknownRhythmWord = "unknown-rhythm-word";

    /// <summary>No counting syllable.</summary>
    public const string UnknownSyllable = "unknown-syllable";

    /// <summary>A silence that does not say where.</summary>
    public const string SilentCount = "silent-count";

    /// <summary>A number the bar does not have.</summary>
    public const string CountTooHigh = "count-too-high";

    /// <summary>A number out of order.</summary>
    public const string CountOutOfOrder = "count-out-of-order";

    /// <summary>A syllable behind the end of the bar.</summary>
    public const string CountPastBar = "count-past-bar";

    /// <summary>No word for marks.</summary>
    public const string UnknownMarkWord = "unknown-mark-word";

    /// <summary>A plural among other values.</summary>
    public const string FillAmongOthers = "fill-among-others";

    /// <summary>A tie with nothing to tie.</summary>
    public const string TieToNothing = "tie-to-nothing";

    /// <summary>A tie to or from a rest.</summary>
    public const string TieToRest = "tie-to-rest";

    /// <summary>Values that do not divide the bar.</summary>
    public const string DoesNotFill = "does-not-fill";

    /// <summary>A tuplet without all its notes.</summary>
    public const string TupletOpen = "tuplet-open";

    /// <summary>More than the bar holds.</summary>
    public const string RhythmTooFull = "rhythm-too-full";

    /// <summary>Less than the bar holds.</summary>
    public const string RhythmTooShort = "rhythm-too-short";
}

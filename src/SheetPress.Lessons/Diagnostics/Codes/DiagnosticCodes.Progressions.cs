namespace SheetPress.Lessons;

// Codes about written progressions.
public static partial class DiagnosticCodes
{
    /// <summary>Nothing in it.</summary>
    public const string NoBars = "no-bars";

    /// <summary>More bars than any piece has.</summary>
    public const string TooManyMeasures = "too-many-measures";

    /// <summary>A bar with nothing in it.</summary>
    public const string EmptyBar = "empty-bar";

    /// <summary>No chord symbol.</summary>
    public const string UnknownChord = "unknown-chord";

    /// <summary>A sign or a number where a chord should be.</summary>
    public const string SignForChord = "sign-for-chord";

    /// <summary>No roman numeral.</summary>
    public const string UnknownRoman = "unknown-roman";

    /// <summary>A run of bar signs that means nothing.</summary>
    public const string UnknownBarline = "unknown-barline";

    /// <summary>A bracket that is not closed on its line.</summary>
    public const string UnclosedMark = "unclosed-mark";

    /// <summary>Nothing in the bracket.</summary>
    public const string EmptyMark = "empty-mark";

    /// <summary>Nearly one of the words for marks.</summary>
    public const string UnknownMark = "unknown-mark";

    /// <summary>Words over the music without their quotation marks.</summary>
    public const string WordsForMark = "words-for-mark";

    /// <summary>A rehearsal mark as long as a sentence.</summary>
    public const string LongLabel = "long-label";

    /// <summary>A mark that belongs before the bar's chords.</summary>
    public const string MarkBehindChord = "mark-behind-chord";

    /// <summary>A bar that changes its tempo, clef, meter or key twice.</summary>
    public const string ChangeTwice = "change-twice";

    /// <summary>Two tempos for the start.</summary>
    public const string TempoTwice = "tempo-twice";

    /// <summary>An equation of note values with no bar before it.</summary>
    public const string EquationAtStart = "equation-at-start";

    /// <summary>A mark with no bar.</summary>
    public const string NoBarForMark = "no-bar-for-mark";

    /// <summary>A pickup of no length.</summary>
    public const string PickupLength = "pickup-length";

    /// <summary>A pickup later on.</summary>
    public const string PickupNotFirst = "pickup-not-first";

    /// <summary>A pickup as long as a bar.</summary>
    public const string PickupTooLong = "pickup-too-long";

    /// <summary>Beats that are no number.</summary>
    public const string BadBeats = "bad-beats";

    /// <summary>Beats of nothing.</summary>
    public const string BeatsWithoutChord = "beats-without-chord";

    /// <summary>More beats than the bar has.</summary>
    public const string TooManyBeats = "too-many-beats";

    /// <summary>Fewer beats than the bar has.</summary>
    public const string TooFewBeats = "too-few-beats";

    /// <summary>Chords that do not share a bar evenly.</summary>
    public const string SharesUnclear = "shares-unclear";

    /// <summary>A key of one small letter and no mode.</summary>
    public const string KeyInSmallLetter = "key-in-small-letter";

    /// <summary>A chord symbol that people use in two ways.</summary>
    public const string TwoMeanings = "two-meanings";

    /// <summary>A number of times with no repeat before it.</summary>
    public const string TimesWithoutRepeat = "times-without-repeat";

    /// <summary>No bar before.</summary>
    public const string NothingBefore = "nothing-before";

    /// <summary>No chord before.</summary>
    public const string NothingToHold = "nothing-to-hold";

    /// <summary>'same' beside other chords.</summary>
    public const string SameNotAlone = "same-not-alone";

    /// <summary>'same' with beats.</summary>
    public const string SameWithBeats = "same-with-beats";

    /// <summary>'same' in another meter.</summary>
    public const string SameInOtherLength = "same-in-other-length";

    /// <summary>A repeat with nothing in it.</summary>
    public const string RepeatOfNothing = "repeat-of-nothing";

    /// <summary>A repeat that is never closed.</summary>
    public const string RepeatNotClosed = "repeat-not-closed";

    /// <summary>Times out of range.</summary>
    public const string BadTimes = "bad-times";

    /// <summary>Times beside endings.</summary>
    public const string TimesWithEndings = "times-with-endings";

    /// <summary>An ending that starts inside a bar.</summary>
    public const string EndingInsideBar = "ending-inside-bar";

    /// <summary>Endings out of order.</summary>
    public const string EndingOutOfOrder = "ending-out-of-order";

    /// <summary>An ending before another that does not go back.</summary>
    public const string EndingWithoutRepeat = "ending-without-repeat";

    /// <summary>A last ending that goes back.</summary>
    public const string LastEndingRepeats = "last-ending-repeats";

    /// <summary>A jump whose sign is missing.</summary>
    public const string JumpWithoutGoal = "jump-without-goal";

    /// <summary>A segno, coda, To Coda or Fine that no jump uses.</summary>
    public const string SignWithoutJump = "sign-without-jump";
}

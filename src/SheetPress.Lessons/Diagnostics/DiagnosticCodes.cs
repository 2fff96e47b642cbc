namespace SheetPress.Lessons;

/// <summary>The stable codes of the findings that reading a lesson can make. Reports rely on them: a code keeps its meaning.</summary>
public static class DiagnosticCodes
{
    // FileProblems

    /// <summary>No such path.</summary>
    public const string NotFound = "not-found";

    /// <summary>A folder without lessons.</summary>
    public const string NoLessons = "no-lessons";

    /// <summary>A file that cannot be opened.</summary>
    public const string Unreadable = "unreadable";

    /// <summary>Two files with one id.</summary>
    public const string SameId = "same-id";

    /// <summary>UTF-16.</summary>
    public const string Utf16 = "utf16";

    /// <summary>Not UTF-8.</summary>
    public const string NotUtf8 = "not-utf8";

    /// <summary>A file that is too large.</summary>
    public const string FileTooLarge = "file-too-large";

    /// <summary>A line that is too long.</summary>
    public const string LineTooLong = "line-too-long";

    /// <summary>A character that is no text.</summary>
    public const string ControlCharacter = "control-character";

    // YamlProblems

    /// <summary>The file holds nothing.</summary>
    public const string EmptyFile = "empty-file";

    /// <summary>The top of the file is no list of entries.</summary>
    public const string NotEntries = "not-entries";

    /// <summary>A second document in one file.</summary>
    public const string SecondDocument = "second-document";

    /// <summary>Nested too deep.</summary>
    public const string TooDeep = "too-deep";

    /// <summary>An entry's name is a list or a mapping.</summary>
    public const string NameNotText = "name-not-text";

    /// <summary>A tab indents a line.</summary>
    public const string Tab = "tab";

    /// <summary>A quote is never closed.</summary>
    public const string UnclosedQuote = "unclosed-quote";

    /// <summary>An escape YAML does not know.</summary>
    public const string Escape = "escape";

    /// <summary>Text follows a block sign.</summary>
    public const string BlockSignWithText = "block-sign-with-text";

    /// <summary>Text follows a closed quote.</summary>
    public const string TextBehindQuote = "text-behind-quote";

    /// <summary>Text follows a bracket that begins a value.</summary>
    public const string TextBehindBracket = "text-behind-bracket";

    /// <summary>No space after a colon.</summary>
    public const string NoSpaceAfterColon = "no-space-after-colon";

    /// <summary>No space after the dash of a list.</summary>
    public const string NoSpaceAfterDash = "no-space-after-dash";

    /// <summary>A sign that means something in YAML begins a value.</summary>
    public const string SignAtStart = "sign-at-start";

    /// <summary>A bracket is never closed.</summary>
    public const string UnclosedBracket = "unclosed-bracket";

    /// <summary>A list starts on the line of its name.</summary>
    public const string ListOnSameLine = "list-on-same-line";

    /// <summary>A value holds a colon and a space.</summary>
    public const string ColonInValue = "colon-in-value";

    /// <summary>A line without a colon.</summary>
    public const string NoColon = "no-colon";

    /// <summary>The indentation fits nothing.</summary>
    public const string Indentation = "indentation";

    /// <summary>Any other fault.</summary>
    public const string Syntax = "syntax";

    /// <summary>A comment sign swallows part of a value.</summary>
    public const string CommentHidesText = "comment-hides-text";

    // FieldProblems

    /// <summary>An entry that must be there is not.</summary>
    public const string MissingEntry = "missing-entry";

    /// <summary>A name that means nothing here.</summary>
    public const string UnknownEntry = "unknown-entry";

    /// <summary>A name given twice.</summary>
    public const string DuplicateEntry = "duplicate-entry";

    /// <summary>A list where a text should be, or the like.</summary>
    public const string WrongType = "wrong-type";

    /// <summary>A text that is too long for its place on the page.</summary>
    public const string TooLong = "too-long";

    /// <summary>No number.</summary>
    public const string NotNumber = "not-number";

    /// <summary>A number out of range.</summary>
    public const string OutOfRange = "out-of-range";

    /// <summary>Neither yes nor no.</summary>
    public const string NotFlag = "not-flag";

    /// <summary>None of the words allowed.</summary>
    public const string UnknownWord = "unknown-word";

    /// <summary>No tonic.</summary>
    public const string UnknownKey = "unknown-key";

    /// <summary>No mode.</summary>
    public const string UnknownMode = "unknown-mode";

    /// <summary>A key with too large a signature.</summary>
    public const string KeyTooFar = "key-too-far";

    /// <summary>No meter.</summary>
    public const string UnknownMeter = "unknown-meter";

    /// <summary>A meter out of range.</summary>
    public const string MeterOutOfRange = "meter-out-of-range";

    /// <summary>Groups that do not add up.</summary>
    public const string BadGroups = "bad-groups";

    /// <summary>No tempo.</summary>
    public const string UnknownTempo = "unknown-tempo";

    /// <summary>No value before the equals sign.</summary>
    public const string UnknownTempoBeat = "unknown-tempo-beat";

    /// <summary>No instrument.</summary>
    public const string UnknownInstrument = "unknown-instrument";

    /// <summary>An own instrument without a base.</summary>
    public const string InstrumentWithoutBase = "instrument-without-base";

    /// <summary>Too few or too many strings.</summary>
    public const string StringCount = "string-count";

    /// <summary>No pitch.</summary>
    public const string UnknownPitch = "unknown-pitch";

    /// <summary>A string too low or too high.</summary>
    public const string StringOutOfRange = "string-out-of-range";

    /// <summary>No length.</summary>
    public const string UnknownLength = "unknown-length";

    /// <summary>A neck of absurd length.</summary>
    public const string LengthOutOfRange = "length-out-of-range";

    // ProgressionProblems

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

    // RhythmProblems

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

    // ExerciseProblems

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

    // LineProblems

    /// <summary>No note of a written line.</summary>
    public const string UnknownNote = "unknown-note";

    /// <summary>A line without notes.</summary>
    public const string EmptyLine = "empty-line";

    /// <summary>No bar before to repeat.</summary>
    public const string NothingToRepeat = "nothing-to-repeat";

    /// <summary>A bar repeat beside notes.</summary>
    public const string RepeatAmongNotes = "repeat-among-notes";

    /// <summary>A bar of a line that does not add up.</summary>
    public const string BarLength = "bar-length";

    /// <summary>A bar of a line with more or fewer notes than its rhythm.</summary>
    public const string BarStrokes = "bar-strokes";

    /// <summary>Notes that cannot share a bar.</summary>
    public const string NoRhythm = "no-rhythm";

    /// <summary>Values in the line and a rhythm besides.</summary>
    public const string RhythmTwice = "rhythm-twice";

    /// <summary>A note before the first value.</summary>
    public const string MissingValue = "missing-value";

    /// <summary>A line longer than the progression.</summary>
    public const string TooManyBars = "too-many-bars";

    /// <summary>A line that does not go evenly into the progression.</summary>
    public const string UnevenRepeat = "uneven-repeat";

    /// <summary>A degree where no chord sounds.</summary>
    public const string NoChord = "no-chord";

    /// <summary>A lead to a chord that does not come.</summary>
    public const string NoNextChord = "no-next-chord";

    /// <summary>A pitch without a place on the neck.</summary>
    public const string OffTheNeck = "off-the-neck";

    /// <summary>A string or fret on which the pitch does not lie.</summary>
    public const string PinMisses = "pin-misses";

    /// <summary>A finger that the hand does not have, or one for several notes.</summary>
    public const string NoSuchFinger = "no-such-finger";

    /// <summary>A pitch that is no natural harmonic.</summary>
    public const string NoHarmonic = "no-harmonic";

    /// <summary>A change of clef or tempo where it cannot be.</summary>
    public const string MisplacedChange = "misplaced-change";

    /// <summary>A hammer-on, pull-off or slide to no note, or to one on the wrong side.</summary>
    public const string LostConnection = "lost-connection";

    /// <summary>A slur with one end.</summary>
    public const string OpenSlur = "open-slur";

    /// <summary>A style that makes no sense on the instrument.</summary>
    public const string WrongInstrument = "wrong-instrument";

    /// <summary>Options of an exercise that make no sense together.</summary>
    public const string OptionsClash = "options-clash";

    /// <summary>A rhythm with too few notes for what the style promises.</summary>
    public const string NoRoom = "no-room";

    /// <summary>A chord that one hand cannot hold.</summary>
    public const string CannotHold = "cannot-hold";

    // PatternProblems

    /// <summary>A pattern without notes.</summary>
    public const string PatternOfNothing = "pattern-of-nothing";

    /// <summary>A pattern with tones and lines.</summary>
    public const string TonesAndLines = "tones-and-lines";

    /// <summary>A pattern named like another style.</summary>
    public const string StyleNameTaken = "style-name-taken";

    /// <summary>A rhythm for a pattern that has one.</summary>
    public const string PatternHasRhythm = "pattern-has-rhythm";

    /// <summary>A pattern in a meter it is not written for.</summary>
    public const string OtherMeter = "other-meter";
}

namespace SheetPress.Lessons;

// Codes about lines of notes and how they lie on the neck.
public static partial class DiagnosticCodes
{
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
}

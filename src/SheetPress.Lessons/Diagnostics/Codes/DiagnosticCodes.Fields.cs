namespace SheetPress.Lessons;

// Codes about entries of a lesson and their values.
public static partial class DiagnosticCodes
{
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
}

namespace SheetPress.Lessons;

// Codes about files as a whole.
/// <summary>The stable codes of the findings that reading a lesson can make. Reports rely on them: a code keeps its meaning.</summary>
public static partial class DiagnosticCodes
{
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
}

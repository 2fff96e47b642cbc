namespace SheetPress.Lessons;

/// <summary>What can be wrong with lesson files as a whole.</summary>
public static class FileProblems
{
    /// <summary>No such path.</summary>
    public static Problem NotFound() => Error(DiagnosticCodes.NotFound, "There is no file or folder of this name.", "Check the path.");

    /// <summary>A folder without lessons.</summary>
    public static Problem NoLessons() => Error(DiagnosticCodes.NoLessons, "There are no lessons in this folder.", "Lessons are files that end in .yaml or .yml; 'new' writes one to start from.");

    /// <summary>A file that cannot be opened.</summary>
    public static Problem Unreadable() => Error(DiagnosticCodes.Unreadable, "This file cannot be opened.", "Check that it is there and that you may read it.");

    /// <summary>Two files with one id.</summary>
    public static Problem SameId(string id, string other) => Error(DiagnosticCodes.SameId, $"This file would write the same outputs ('{id}') as {other}.", "Give one of them another name.");

    /// <summary>UTF-16.</summary>
    public static Problem Utf16() => Error(DiagnosticCodes.Utf16, "This file is saved as UTF-16 ('Unicode').", "Save it as UTF-8 in your editor.");

    /// <summary>Not UTF-8.</summary>
    public static Problem NotUtf8() => Error(DiagnosticCodes.NotUtf8, "This file is not saved as UTF-8: the sign here cannot be read.", "Save it as UTF-8 in your editor.");

    /// <summary>A file that is too large.</summary>
    public static Problem FileTooLarge(int maximum) => Error(DiagnosticCodes.FileTooLarge, $"This file is longer than {maximum} letters.", "Split it into several lessons.");

    /// <summary>A line that is too long.</summary>
    public static Problem LineTooLong(int maximum) => Error(DiagnosticCodes.LineTooLong, $"This line is longer than {maximum} letters.", "Break it into several lines.");

    /// <summary>A character that is no text.</summary>
    public static Problem ControlCharacter(int code) =>
        Error(DiagnosticCodes.ControlCharacter, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"There is a sign here that is no text (U+{code:X4})."), "Delete it; is this file a lesson at all?");

    private static Problem Error(string code, string message, string advice) => new(code, Severity.Error, message, advice);
}

namespace SheetPress.Cli;

/// <summary>The exit codes of the program.</summary>
internal static class ExitCodes
{
    /// <summary>All went well; there may be warnings.</summary>
    public const int Success = 0;

    /// <summary>A lesson, chord or option has an error; what could be made was made.</summary>
    public const int ProblemsFound = 1;

    /// <summary>A file could not be read or written.</summary>
    public const int FileTrouble = 2;
}

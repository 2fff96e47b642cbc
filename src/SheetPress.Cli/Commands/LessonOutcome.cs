using SheetPress.Lessons;
using SheetPress.Publishing;

namespace SheetPress.Cli;

/// <summary>What became of one lesson file.</summary>
/// <param name="Path">The file as the user named it.</param>
/// <param name="Diagnostics">What was found.</param>
/// <param name="Built">The lesson with its music; null when it has errors.</param>
internal sealed record LessonOutcome(string Path, DiagnosticBag Diagnostics, BuiltLesson? Built)
{
    /// <summary>What was written; null when nothing was.</summary>
    public PublishedLesson? Published { get; init; }

    /// <summary>Why files could not be written; null when they could.</summary>
    public string? FileTrouble { get; init; }

    /// <summary>Milliseconds of reading and building.</summary>
    public double ReadMilliseconds { get; init; }

    /// <summary>Whether the lesson can be made.</summary>
    public bool IsGood => Built is not null && !Diagnostics.HasErrors;
}

using System.Diagnostics;
using SheetPress.Lessons;

namespace SheetPress.Cli;

/// <summary>Reads lessons and builds their music, as build, check and styles do.</summary>
internal static class LessonRun
{
    /// <summary>Reads a lesson file and builds it.</summary>
    public static LessonOutcome Build(string path, LessonOverrides overrides, IReadOnlyList<ExerciseStyle> styles)
    {
        var start = Stopwatch.GetTimestamp();
        var (source, bag) = LessonFiles.Load(path);
        return Build(source, bag, overrides, styles) with { ReadMilliseconds = Stopwatch.GetElapsedTime(start).TotalMilliseconds };
    }

    /// <summary>Reads a lesson from its text and builds it.</summary>
    public static LessonOutcome Build(SourceText source, DiagnosticBag bag, LessonOverrides overrides, IReadOnlyList<ExerciseStyle>? styles = null)
    {
        var lesson = bag.HasErrors ? null : LessonReader.Read(source, bag, overrides, styles);
        var built = lesson is null ? null : LessonBuilder.Build(lesson, bag);
        return new LessonOutcome(source.Path, bag, built);
    }

    /// <summary>Writes findings in the order of their places.</summary>
    public static void WriteDiagnostics(TextWriter writer, DiagnosticBag bag)
    {
        foreach (var item in bag.Sorted()) writer.WriteLine(DiagnosticPrinter.Print(item));
        if (bag.LeftOut > 0) writer.WriteLine($"{bag.Source.Path}: {bag.LeftOut} more problems are left out.");
    }
}

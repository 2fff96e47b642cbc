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
        BuiltLesson? built = null;
        Guard(bag, () =>
        {
            var lesson = bag.HasErrors ? null : LessonReader.Read(source, bag, overrides, styles);
            built = lesson is null ? null : LessonBuilder.Build(lesson, bag);
        });
        return new LessonOutcome(source.Path, bag, built);
    }

    /// <summary>Does a piece of work for one lesson; a fault of the program is reported like a problem of the lesson, so that the others go on.</summary>
    /// <returns>Whether the work came to its end.</returns>
    public static bool Guard(DiagnosticBag bag, Action work)
    {
        try
        {
            work();
            return true;
        }
        catch (Exception e) when (e is not (IOException or UnauthorizedAccessException))
        {
            bag.Error("program-fault", default, $"SheetPress itself failed on this lesson: {e.GetType().Name}: {e.Message}", "The lesson may be right. Please report it, with the lesson; leaving out one exercise after the other shows which one it is.");
            return false;
        }
    }

    /// <summary>Writes findings in the order of their places.</summary>
    public static void WriteDiagnostics(TextWriter writer, DiagnosticBag bag)
    {
        foreach (var item in bag.Sorted()) writer.WriteLine(DiagnosticPrinter.Print(item));
        if (bag.LeftOut > 0) writer.WriteLine($"{bag.Source.Path}: {bag.LeftOut} more problems are left out.");
    }
}

using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Publishing;
using SheetPress.Theory;

namespace SheetPress.Benchmarks;

/// <summary>The demo lessons, built once for the benchmarks that start from finished scores.</summary>
internal static class DemoLessons
{
    /// <summary>Paths of the demo lessons, the catalogue of styles left out (it is as long as the others together).</summary>
    public static IReadOnlyList<string> Paths { get; } =
        [.. LessonFiles.Find([Path.Combine(Root(), "lesson-sources")]).Paths.Where(p => !p.Contains("catalogue", StringComparison.Ordinal))];

    /// <summary>Reads a lesson and makes its music.</summary>
    public static BuiltLesson Build(string path, Key? key = null)
    {
        var (source, bag) = LessonFiles.Load(path);
        var lesson = LessonReader.Read(source, bag, new LessonOverrides { Key = key }) ?? throw new InvalidOperationException(path);
        return LessonBuilder.Build(lesson, bag);
    }

    /// <summary>Engraves and composes the handout.</summary>
    public static SheetDocument Compose(BuiltLesson built) =>
        SheetComposer.Compose(HandoutAssembler.Assemble(built, HandoutWording.English), PageStyle.Handout(PaperSize.A4));

    // The benchmarks run from a folder of their own deep below bin.
    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "SheetPress.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("Run the benchmarks from the repository.");
    }
}

using SheetPress.Engraving;
using SheetPress.Lessons;

namespace SheetPress.Publishing.Tests.Torture;

/// <summary>The lessons beside this file: sheets made to be hard to set.</summary>
internal static class TortureSheets
{
    /// <summary>Names of the sheets whose names begin alike, in order.</summary>
    public static IEnumerable<string> Named(string start) =>
        Directory.GetFiles(Folder(), start + "-*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal);

    /// <summary>The music of a sheet, which has no finding of any kind.</summary>
    public static BuiltLesson Build(string sheet)
    {
        var (source, bag) = LessonFiles.Load(Path.Combine(Folder(), sheet + ".yaml"));
        var lesson = LessonReader.Read(source, bag).ShouldNotBeNull(string.Join("\n", bag.Items.Select(d => d.Message)));
        var built = LessonBuilder.Build(lesson, bag);
        bag.Items.ShouldBeEmpty(string.Join("\n", bag.Items.Select(d => d.Message)));
        return built;
    }

    /// <summary>What stands on a sheet.</summary>
    public static HandoutContent Content(string sheet) => HandoutAssembler.Assemble(Build(sheet), HandoutWording.English);

    /// <summary>Looks the pages of a sheet over in each style, and writes those of the first as PNG where the environment asks for it.</summary>
    public static void LookOver(string sheet, HandoutContent content, params ReadOnlySpan<PageStyle> styles)
    {
        for (var i = 0; i < styles.Length; i++)
        {
            var document = SheetComposer.Compose(content, styles[i]);
            if (i == 0) Picture(sheet, document);
            var findings = PageLint.Check(document, margin: 15);
            findings.ShouldBeEmpty($"{styles[i].Paper.Name}, staff space {styles[i].StaffSpace}\n{string.Join("\n", findings.Take(20))}");
        }
    }

    private static void Picture(string sheet, SheetDocument document)
    {
        if (Environment.GetEnvironmentVariable("SHEETPRESS_PICTURES") is not { Length: > 0 } folder) return;
        Directory.CreateDirectory(folder);
        for (var i = 0; i < document.Pages.Length; i++)
        {
            using var stream = File.Create(Path.Combine(folder, FormattableString.Invariant($"{sheet}-{i + 1}.png")));
            PngWriter.Write(document.Pages[i], stream);
        }
    }

    private static string Folder()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "SheetPress.sln"))) root = root.Parent.ShouldNotBeNull();
        return Path.Combine(root.FullName, "tests", "SheetPress.Publishing.Tests", "Torture");
    }
}

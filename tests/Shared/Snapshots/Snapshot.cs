using System.Runtime.CompilerServices;

namespace SheetPress.Tests;

/// <summary>
/// Compares a text with the approved one in a file named for the test, beside the test's source. To approve what is new, run the
/// tests with SHEETPRESS_APPROVE=1 and look at the difference in version control.
/// </summary>
internal static class Snapshot
{
    internal static void Match(string text, [CallerFilePath] string source = "", [CallerMemberName] string test = "")
    {
        var file = FileOf(source, test);
        if (Environment.GetEnvironmentVariable("SHEETPRESS_APPROVE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, text);
        }
        File.Exists(file).ShouldBeTrue($"There is no approved text {file}.");
        var (wanted, found) = (File.ReadAllText(file).Split('\n'), text.Split('\n'));
        for (var i = 0; i < Math.Max(wanted.Length, found.Length); i++)
        {
            var (w, f) = (i < wanted.Length ? wanted[i] : "<end>", i < found.Length ? found[i] : "<end>");
            f.ShouldBe(w, $"{Path.GetFileName(file)}, line {i + 1}; run with SHEETPRESS_APPROVE=1 to approve.");
        }
    }

    // Deterministic builds replace the path of the sources: the repository is found from where the tests run.
    private static string FileOf(string source, string test)
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (root is not null && !File.Exists(Path.Combine(root.FullName, "SheetPress.sln"))) root = root.Parent;
        const string tests = "/tests/";
        var path = source.Replace('\\', '/');
        var inTests = path[(path.LastIndexOf(tests, StringComparison.Ordinal) + tests.Length)..];
        return Path.Combine(root!.FullName, "tests", Path.GetDirectoryName(inTests)!, "Approved", $"{Path.GetFileNameWithoutExtension(inTests)}.{test}.txt");
    }
}

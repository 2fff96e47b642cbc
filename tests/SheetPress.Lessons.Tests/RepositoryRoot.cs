namespace SheetPress.Lessons.Tests;

/// <summary>Finds files of the repository from wherever the tests run.</summary>
internal static class RepositoryRoot
{
    /// <summary>The path of something in the repository.</summary>
    public static string Combine(params string[] parts)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "SheetPress.sln"))) folder = folder.Parent;
        return Path.Combine([(folder ?? throw new DirectoryNotFoundException("There is no SheetPress.sln above the tests.")).FullName, .. parts]);
    }
}

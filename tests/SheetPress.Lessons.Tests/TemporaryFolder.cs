namespace SheetPress.Lessons.Tests;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("sheetpress-").FullName;

    /// <summary>Writes a file, with the folders above it.</summary>
    public void Write(string name, string text)
    {
        var file = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}

using System.Diagnostics;

namespace SheetPress.Cli.Tests;

/// <summary>Runs the program as a user does: a process of its own, in a folder of its own.</summary>
public sealed class SheetPressProcess : IDisposable
{
    /// <summary>What a run said and how it ended.</summary>
    public sealed record Result(int ExitCode, string Output, string Error);

    public string Folder { get; } = Directory.CreateTempSubdirectory("sheetpress-cli-").FullName;

    public string Path(params string[] parts) => System.IO.Path.Combine([Folder, .. parts]);

    public void WriteFile(string name, string text)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(Path(name))!);
        File.WriteAllText(Path(name), text);
    }

    public Result Run(params string[] arguments) => RunWith([], arguments);

    public Result RunWith(Dictionary<string, string> environment, params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = Folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
            StandardErrorEncoding = System.Text.Encoding.UTF8,
        };
        start.ArgumentList.Add(System.IO.Path.Combine(AppContext.BaseDirectory, "sheetpress.dll"));
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        foreach (var (name, value) in environment) start.Environment[name] = value;
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Result(process.ExitCode, output, error.Result);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

using System.ComponentModel;
using System.Diagnostics;

namespace SheetPress.Publishing.Tests.Pdf;

/// <summary>Checks files with qpdf, where it is installed.</summary>
public sealed class QpdfTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("pdf").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_structure_of_the_file_is_sound()
    {
        var path = Path.Combine(_folder, "all.pdf");
        using (var stream = File.Create(path))
        {
            PdfWriter.Write(SamplePages.Document(20), stream);
        }
        var (code, output) = Run("qpdf", "--check", path);
        code.ShouldBe(0, output); // 2 for errors, 3 for warnings.
    }

    private static (int Code, string Output) Run(string program, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var output = process.StandardOutput.ReadToEnd() + process.StandardError.ReadToEnd();
            process.WaitForExit();
            return (process.ExitCode, output);
        }
        catch (Win32Exception) when (Environment.GetEnvironmentVariable("CI") != "true")
        {
            Assert.Skip($"{program} is not installed.");
            throw;
        }
    }
}

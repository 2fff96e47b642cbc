using System.CommandLine;
using SheetPress.Lessons;
using SheetPress.Publishing;

namespace SheetPress.Cli;

/// <summary>new: writes a commented starter lesson.</summary>
internal static class NewCommand
{
    public static Command Create()
    {
        var title = new Argument<string>("TITLE") { Description = "Title of the lesson; the file is named after it." };
        var output = new Option<string?>("--output", "-o") { Description = "File to write, or folder to write it in.", HelpName = "OUT" };
        var command = new Command("new", "Write a commented starter lesson that can be built as it is.") { title, output };
        command.SetAction(result => Run(result.GetValue(title)!, result.GetValue(output)));
        return command;
    }

    private static int Run(string title, string? output)
    {
        var name = LessonFiles.Slug(title) + ".yaml";
        var path = output is null ? name : Directory.Exists(output) || output.EndsWith('/') ? Path.Combine(output, name) : output;
        if (File.Exists(path))
        {
            Console.Error.WriteLine($"{path} is there already and is left as it is. Choose another title, or another file with --output.");
            return ExitCodes.FileTrouble;
        }
        try
        {
            AtomicFile.Write(path, stream =>
            {
                using var writer = new StreamWriter(stream);
                writer.Write(StarterLesson.Text(title));
            });
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{path} cannot be written: {e.Message}");
            return ExitCodes.FileTrouble;
        }
        Console.Out.WriteLine($"{path} is ready. Change it as you like, then: sheetpress build {path}");
        return ExitCodes.Success;
    }
}

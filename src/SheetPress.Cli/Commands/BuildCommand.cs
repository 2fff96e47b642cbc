using System.CommandLine;
using System.Globalization;
using SheetPress.Lessons;
using SheetPress.Publishing;

namespace SheetPress.Cli;

/// <summary>build: makes the sheets of all lessons in the paths given.</summary>
internal static class BuildCommand
{
    public static Command Create()
    {
        var paths = CommonOptions.Paths();
        var output = new Option<string>("--output", "-o") { Description = "Folder that gets one folder a lesson.", HelpName = "OUT", DefaultValueFactory = _ => "out" };
        var key = CommonOptions.Key("Play every lesson in this key; fingerings are chosen anew.");
        var instrument = CommonOptions.Instrument("Write every lesson for this instrument.");
        var paper = CommonOptions.Paper();
        var pages = CommonOptions.Pages();
        var images = new Option<bool>("--images") { Description = "Write every page as PNG and SVG too." };
        var report = new Option<string?>("--report") { Description = "Write a JSON report of files, pages, notes, findings and times.", HelpName = "FILE" };
        var command = new Command("build", "Make the handout, MusicXML and MIDI of every lesson.") { paths, output, key, instrument, paper, pages, images, report };
        command.SetAction(result => Run(
            result.GetValue(paths)!,
            new LessonOverrides { Key = result.GetValue(key), InstrumentId = result.GetValue(instrument), Pages = CommonOptions.PagesOf(result.GetValue(pages)) },
            new PublishOptions
            {
                OutputFolder = result.GetValue(output)!,
                Paper = CommonOptions.PaperOf(result.GetValue(paper)!),
                Images = result.GetValue(images),
            },
            result.GetValue(report)));
        return command;
    }

    private static int Run(string[] paths, LessonOverrides overrides, PublishOptions options, string? report)
    {
        var search = LessonFiles.Find(paths);
        foreach (var problem in search.Problems) Console.Error.WriteLine(DiagnosticPrinter.Print(problem));
        var outcomes = new LessonOutcome[search.Paths.Count];
        BuildProgress.Run(outcomes.Length, lessonDone => Parallel.For(0, outcomes.Length, i =>
        {
            var outcome = LessonRun.Build(search.Paths[i], overrides, search.StylesFor(search.Paths[i]));
            if (outcome.IsGood) outcome = Publish(outcome, options);
            // Only a report asks for the music again; without one, memory stays the same however many lessons there are.
            outcomes[i] = report is null ? outcome with { Built = null } : outcome;
            lessonDone();
        }));
        foreach (var outcome in outcomes) WriteOutcome(outcome, options);
        var trouble = outcomes.Any(o => o.FileTrouble is not null);
        if (report is not null)
        {
            try
            {
                ReportWriter.Write(report, outcomes);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                Console.Error.WriteLine($"The report {report} cannot be written: {e.Message}");
                trouble = true;
            }
        }
        WriteTotals(outcomes);
        if (outcomes.Any(o => o.Diagnostics.HasErrors) || search.Problems.Count > 0) return ExitCodes.ProblemsFound;
        return trouble ? ExitCodes.FileTrouble : ExitCodes.Success;
    }

    private static LessonOutcome Publish(LessonOutcome outcome, PublishOptions options)
    {
        try
        {
            PublishedLesson? published = null;
            LessonRun.Guard(outcome.Diagnostics, () => published = LessonPublisher.Publish(outcome.Built!, options));
            return outcome with { Published = published };
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return outcome with { FileTrouble = e.Message };
        }
    }

    private static void WriteOutcome(LessonOutcome outcome, PublishOptions options)
    {
        LessonRun.WriteDiagnostics(Console.Error, outcome.Diagnostics);
        if (outcome.FileTrouble is { } trouble)
            Console.Error.WriteLine($"{outcome.Path}: the sheets cannot be written: {trouble}");
        if (outcome.Published is not { } published) return;
        if (published.MissingCharacters.Length > 0)
            Console.Error.WriteLine($"{outcome.Path}: no font on this machine has the characters {string.Join(" ", published.MissingCharacters)}; they are printed as empty boxes.");
        Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{outcome.Path} -> {Path.Combine(options.OutputFolder, published.Id)}  ({Count(published.Pages, "page")}, {Count(published.Measures, "measure")}, {Count(published.Notes, "note")})"));
    }

    private static void WriteTotals(LessonOutcome[] outcomes)
    {
        var written = outcomes.Count(o => o.Published is not null);
        if (outcomes.Length < 2 && written == outcomes.Length) return;
        var failed = outcomes.Length - written;
        Console.Out.WriteLine($"{Count(written, "lesson")} made{(failed > 0 ? $", {failed} not made" : "")}, {Count(outcomes.Sum(o => o.Published?.Pages ?? 0), "page")}.");
    }

    private static string Count(int number, string noun) => string.Create(CultureInfo.InvariantCulture, $"{number} {noun}{(number == 1 ? "" : "s")}");
}

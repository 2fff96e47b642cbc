using System.Collections.Immutable;
using System.CommandLine;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Publishing;

namespace SheetPress.Cli;

/// <summary>check: looks for problems and writes nothing.</summary>
internal static class CheckCommand
{
    // White that every edge of a page keeps, in millimetres.
    private const double LeastMargin = 15;

    public static Command Create()
    {
        var paths = CommonOptions.Paths();
        var key = CommonOptions.Key("Check every lesson in this key.");
        var instrument = CommonOptions.Instrument("Check every lesson for this instrument.");
        var page = new Option<bool>("--page") { Description = "Typeset the pages too and report whatever on them a careful engraver would mark." };
        var paper = CommonOptions.Paper();
        var pages = CommonOptions.Pages();
        var command = new Command("check", "Look for problems in lessons without writing anything.") { paths, key, instrument, page, paper, pages };
        command.SetAction(result => Run(
            result.GetValue(paths)!,
            new LessonOverrides { Key = result.GetValue(key), InstrumentId = result.GetValue(instrument), Pages = CommonOptions.PagesOf(result.GetValue(pages)) },
            result.GetValue(page) ? CommonOptions.PaperOf(result.GetValue(paper)!) : null));
        return command;
    }

    private static int Run(string[] paths, LessonOverrides overrides, PaperSize? paper)
    {
        var search = LessonFiles.Find(paths);
        foreach (var problem in search.Problems) Console.Error.WriteLine(DiagnosticPrinter.Print(problem));
        var outcomes = new LessonOutcome[search.Paths.Count];
        var marked = new ImmutableArray<LintFinding>[outcomes.Length];
        Parallel.For(0, outcomes.Length, i =>
        {
            var outcome = LessonRun.Build(search.Paths[i], overrides, search.StylesFor(search.Paths[i]));
            marked[i] = [];
            if (paper is not null && outcome.IsGood) LessonRun.Guard(outcome.Diagnostics, () => marked[i] = Look(outcome.Built!, paper));
            outcomes[i] = outcome with { Built = null };
        });
        for (var i = 0; i < outcomes.Length; i++)
        {
            var outcome = outcomes[i];
            LessonRun.WriteDiagnostics(Console.Error, outcome.Diagnostics);
            foreach (var finding in marked[i]) Console.Error.WriteLine($"{outcome.Path}: {finding}");
            if (!marked[i].IsEmpty) continue;
            if (!outcome.Diagnostics.HasErrors) Console.Out.WriteLine($"{outcome.Path}: {(outcome.Diagnostics.Items.Count == 0 ? "all well" : "can be made, with warnings")}");
        }
        if (outcomes.Any(o => o.Diagnostics.HasErrors) || marked.Any(m => !m.IsEmpty) || search.Problems.Count > 0) return ExitCodes.ProblemsFound;
        return ExitCodes.Success;
    }

    private static ImmutableArray<LintFinding> Look(BuiltLesson built, PaperSize paper) =>
        SheetLint.Check(HandoutAssembler.Assemble(built, HandoutWording.English), PageStyles.For(built.Lesson.Pages, paper), LeastMargin);
}

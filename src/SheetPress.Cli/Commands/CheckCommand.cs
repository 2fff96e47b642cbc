using System.CommandLine;
using SheetPress.Lessons;

namespace SheetPress.Cli;

/// <summary>check: looks for problems and writes nothing.</summary>
internal static class CheckCommand
{
    public static Command Create()
    {
        var paths = CommonOptions.Paths();
        var key = CommonOptions.Key("Check every lesson in this key.");
        var instrument = CommonOptions.Instrument("Check every lesson for this instrument.");
        var command = new Command("check", "Look for problems in lessons without writing anything.") { paths, key, instrument };
        command.SetAction(result => Run(result.GetValue(paths)!, new LessonOverrides { Key = result.GetValue(key), InstrumentId = result.GetValue(instrument) }));
        return command;
    }

    private static int Run(string[] paths, LessonOverrides overrides)
    {
        var search = LessonFiles.Find(paths);
        foreach (var problem in search.Problems) Console.Error.WriteLine(DiagnosticPrinter.Print(problem));
        var outcomes = new LessonOutcome[search.Paths.Count];
        Parallel.For(0, outcomes.Length, i => outcomes[i] = LessonRun.Build(search.Paths[i], overrides, search.StylesFor(search.Paths[i])) with { Built = null });
        foreach (var outcome in outcomes)
        {
            LessonRun.WriteDiagnostics(Console.Error, outcome.Diagnostics);
            if (!outcome.Diagnostics.HasErrors) Console.Out.WriteLine($"{outcome.Path}: {(outcome.Diagnostics.Items.Count == 0 ? "all well" : "can be made, with warnings")}");
        }
        if (outcomes.Any(o => o.Diagnostics.HasErrors) || search.Problems.Count > 0) return ExitCodes.ProblemsFound;
        return ExitCodes.Success;
    }
}

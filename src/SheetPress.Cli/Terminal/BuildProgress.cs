using Spectre.Console;

namespace SheetPress.Cli;

/// <summary>Shows how far a build is: a bar on a terminal, nothing elsewhere (the lines of the lessons tell).</summary>
internal static class BuildProgress
{
    // A bar for fewer lessons would be gone before it can be read.
    private const int FewestForABar = 4;

    /// <summary>Runs work that calls back once for each lesson done, from any thread.</summary>
    /// <param name="total">How many lessons there are.</param>
    /// <param name="work">The work.</param>
    public static void Run(int total, Action<Action> work)
    {
        if (total >= FewestForABar && !Console.IsErrorRedirected) RunWithBar(total, work);
        else work(() => { });
    }

    // Kept apart, so that the console library is loaded only where there is a terminal.
    private static void RunWithBar(int total, Action<Action> work) =>
        AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) })
            .Progress()
            .AutoClear(true)
            .Columns(new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .Start(context =>
            {
                var task = context.AddTask("lessons", maxValue: total);
                work(() => task.Increment(1));
            });
}

using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using SheetPress.Lessons;

namespace SheetPress.Cli;

/// <summary>styles: the list of exercise styles, or one of them with options, a picture and YAML to paste.</summary>
internal static class StylesCommand
{
    private const int PictureWidth = 100;

    public static Command Create()
    {
        var name = new Argument<string?>("NAME") { Description = "A style to show in full.", Arity = ArgumentArity.ZeroOrOne };
        var levels = new Option<bool>("--levels") { Description = "Show what the levels from 1 to 5 change." };
        var command = new Command("styles", "List the exercise styles with their options, or show one in full.") { name, levels };
        command.SetAction(result => result.GetValue(levels) ? ShowLevels() : result.GetValue(name) is { } style ? ShowOne(style) : ShowAll());
        return command;
    }

    private static int ShowAll()
    {
        foreach (var group in ExerciseStyles.All.GroupBy(s => s.Group))
        {
            Console.Out.WriteLine(char.ToUpperInvariant(group.Key[0]) + group.Key[1..]);
            foreach (var style in group)
            {
                Console.Out.WriteLine($"  {style.Name,-22} {style.Summary}");
                if (!style.Options.IsEmpty) Console.Out.WriteLine($"  {"",-22} options: {string.Join(", ", style.Options.Select(o => o.Name))}");
            }
            Console.Out.WriteLine();
        }
        Console.Out.WriteLine("'sheetpress styles NAME' shows one with its options, a picture and a piece of YAML to paste.");
        Console.Out.WriteLine("'sheetpress styles --levels' shows what the levels from 1 to 5 change.");
        return ExitCodes.Success;
    }

    private static int ShowLevels()
    {
        ImmutableArray<ImmutableArray<string>> rows = [LevelGuide.Head, .. LevelGuide.Rows];
        var widths = Enumerable.Range(0, LevelGuide.Head.Length).Select(column => rows.Max(r => r[column].Length)).ToArray();
        foreach (var row in rows) Console.Out.WriteLine(string.Join("  ", row.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd());
        Console.Out.WriteLine();
        Console.Out.WriteLine("What an exercise says itself (a rhythm, a range, an option) always wins over its level.");
        return ExitCodes.Success;
    }

    private static int ShowOne(string name)
    {
        if (ExerciseStyles.Find(name) is not { } style)
        {
            var nearest = NearestWord.Find(name, ExerciseStyles.All.Select(s => s.Name));
            Console.Error.WriteLine($"There is no style '{name}'.{(nearest is null ? "" : $" Did you mean '{nearest}'?")} 'sheetpress styles' lists them all.");
            return ExitCodes.ProblemsFound;
        }
        var output = Console.Out;
        output.WriteLine($"{style.Name}: {style.Summary}");
        output.WriteLine();
        if (style.Guide.Length > 0)
        {
            output.WriteLine(style.Guide);
            output.WriteLine();
        }
        if (style.Options.IsEmpty) output.WriteLine("It has no options of its own.");
        foreach (var option in style.Options) output.WriteLine("  " + Describe(option));
        output.WriteLine();
        var snippet = Snippet(style);
        DrawPicture(output, style, snippet);
        output.WriteLine("To paste under 'exercises:' in a lesson:");
        output.WriteLine();
        output.Write(snippet);
        return ExitCodes.Success;
    }

    private static string Describe(StyleOption option)
    {
        var values = option.Type switch
        {
            OptionType.Choice => string.Join(" | ", option.Choices),
            OptionType.Flag => "true | false",
            OptionType.Degrees => "degrees such as R 3 5 b7",
            OptionType.Number => string.Create(CultureInfo.InvariantCulture, $"{option.Minimum} to {option.Maximum}"),
            _ => "text",
        };
        var preset = option.Required ? "must be given" : option.Default.Length > 0 ? $"{option.Default} when not given" : "may be left out";
        return $"{option.Name,-14} {option.Summary} ({values}; {preset})";
    }

    // Every option with its default, so that the snippet shows what can be changed.
    private static string Snippet(ExerciseStyle style)
    {
        var yaml = new StringBuilder();
        yaml.Append("  - style: ").Append(style.Name).Append('\n');
        foreach (var option in style.Options)
        {
            var value = option.Default.Length > 0 ? option.Default : option.Example;
            if (value.Length == 0) continue;
            if (value.Contains('\n', StringComparison.Ordinal) || value.Contains('|', StringComparison.Ordinal))
                yaml.Append("    ").Append(option.Name).Append(": |\n      ").Append(value.Trim().Replace("\n", "\n      ", StringComparison.Ordinal)).Append('\n');
            else
                yaml.Append("    ").Append(option.Name).Append(": ").Append(value).Append('\n');
        }
        return yaml.ToString();
    }

    private static void DrawPicture(TextWriter output, ExerciseStyle style, string snippet)
    {
        var text = "title: Picture\nkey: C minor\n" + (style.HomeMeter is { } meter ? $"meter: {meter}\n" : "") + $"instrument: {style.HomeInstrument ?? "bass-4"}\nprogression: |\n  Dm7b5 | G7 | Cm7 | Cm7\nexercises:\n" + snippet;
        var source = new SourceText("picture.yaml", text);
        var outcome = LessonRun.Build(source, new DiagnosticBag(source), LessonOverrides.None);
        if (outcome.Built is not { Exercises: [var first, ..] })
        {
            LessonRun.WriteDiagnostics(output, outcome.Diagnostics);
            return;
        }
        output.WriteLine("Over Dm7b5 | G7 | Cm7 | Cm7 in C minor:");
        output.WriteLine();
        TabText.Write(output, first.Score, PictureWidth);
    }
}

using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using SheetPress.Lessons;
using SheetPress.Publishing;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Cli;

/// <summary>explain: the harmony of a progression as a table, and each chord on the neck.</summary>
internal static class ExplainCommand
{
    private const int HighestFretShown = 12;

    public static Command Create()
    {
        var progression = new Argument<string>("PROGRESSION") { Description = "Chord symbols or roman numerals with | between the bars." };
        var key = CommonOptions.Key("The key it is in.", required: true);
        var meter = new Option<Meter?>("--meter") { Description = "The meter; 4/4 when not given.", HelpName = "METER", CustomParser = ParseMeter };
        var instrument = CommonOptions.Instrument("The instrument whose neck is shown; bass-4 when not given.");
        var command = new Command("explain", "Show what each chord of a progression does, and where its tones lie.") { progression, key, meter, instrument };
        command.SetAction(result => Run(
            result.GetValue(progression)!,
            result.GetValue(key)!,
            result.GetValue(meter) ?? new Meter(4, 4),
            InstrumentCatalogue.Find(result.GetValue(instrument) ?? "bass-4")!));
        return command;
    }

    private static Meter? ParseMeter(System.CommandLine.Parsing.ArgumentResult result)
    {
        if (result.Tokens is not [var token]) return null;
        var bag = new DiagnosticBag(new SourceText("meter", token.Value));
        if (MeterReader.Read(LocatedText.At(token.Value, 0), bag) is { } meter) return meter;
        foreach (var item in bag.Items) result.AddError($"{item.Message} {item.Advice}".Trim());
        return null;
    }

    private static int Run(string text, Key key, Meter meter, Instrument instrument)
    {
        var source = new SourceText("progression", text);
        var bag = new DiagnosticBag(source);
        var progression = ProgressionReader.Read(LocatedText.At(text, 0), key, meter, bag);
        LessonRun.WriteDiagnostics(Console.Error, bag);
        if (progression is null || bag.HasErrors) return ExitCodes.ProblemsFound;

        var output = Console.Out;
        output.WriteLine(key.ToDisplayString());
        output.WriteLine();
        WriteTable(output, progression);
        foreach (var note in TheoryNotes.For(progression))
        {
            output.WriteLine();
            output.WriteLine(TerminalText.Plain(MarkedText.Plain(note)));
        }
        foreach (var chord in progression.Chords.Select(c => c.Chord).OfType<Chord>().Distinct())
        {
            output.WriteLine();
            output.WriteLine($"{chord.ToDisplayString()}   {string.Join(" ", chord.Tones.Select(t => $"{t.Note.ToDisplayString()} ({t.Degree.ToDisplayString()})"))}");
            NeckText.Write(output, instrument, chord, Math.Min(HighestFretShown, instrument.PlayableFrets));
        }
        return ExitCodes.Success;
    }

    private static void WriteTable(TextWriter output, Progression progression)
    {
        var table = new TextTable("Bars", "Chord", "In the key", "What it does", "Chord tones", "Guide tones", "Scale", "Notes (* not in the key)", "Why");
        foreach (var row in HarmonyRows.For(progression))
        {
            table.Add(
                row.Measures,
                row.Chord?.ToDisplayString() ?? "N.C.",
                row.Roman,
                MarkedText.Plain(row.Function),
                string.Join(" ", row.Tones.Select(t => t.Note)),
                string.Join(" ", row.GuideTones.Select(t => t.Note)),
                row.ScaleName,
                string.Join(" ", row.ScaleNotes.Select(n => n.Note + (n.IsChanged ? "*" : ""))),
                row.Reason);
        }
        table.Write(output);
    }
}

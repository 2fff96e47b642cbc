using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace SheetPress.Lessons;

/// <summary>The table of levels as a teacher reads it: one row for each thing that changes, one column a level.</summary>
public static class LevelGuide
{
    /// <summary>The head of the table: what changes, then the levels.</summary>
    public static ImmutableArray<string> Head { get; } = ["level", .. LevelTable.All.Select(l => l.Number.ToString(CultureInfo.InvariantCulture))];

    /// <summary>The rows: what changes, then what each level makes of it.</summary>
    public static ImmutableArray<ImmutableArray<string>> Rows { get; } =
    [
        Row("player", l => l.Player),
        Row("frets of the lines", l => l.HighestFret > 24 ? "the whole neck" : string.Create(CultureInfo.InvariantCulture, $"0 to {l.HighestFret}")),
        Row("scales, arpeggios", l => l.Runs switch { RunValue.Beats => "beats", RunValue.Eighths => "eighths", _ => "sixteenths" }),
        Row("arpeggios over", l => l.ArpeggioOctaves == 1 ? "one octave" : "two octaves"),
        Row("walking: notes", l => l.Walking switch { WalkingNotes.ChordTones => "chord tones", WalkingNotes.ScaleSteps => "and scale steps", _ => "and half steps" }),
        Row("two-feel: notes", l => l.Walking == WalkingNotes.ChordTones ? "root and fifth" : "any chord tone"),
        Row("walking, two-feel: skips", l => l.SkipEvery == 0 ? "none" : $"every {Words(l.SkipEvery)} bars"),
        Row("walking, two-feel: range", l => string.Create(CultureInfo.InvariantCulture, $"{l.LineRange} half steps")),
        Row("two-feel: leads", l => l.LeadEvery switch { 0 => "none", 1 => "every chord", _ => "every second chord" }),
        Row("grooves", l => l.Groove),
        Row("fills in grooves", l => l.FillEvery == 0 ? "none" : $"every {Words(l.FillEvery)} bars"),
        Row("rhythm on one note", l => l.OneNote),
        Row("widest stretch", l => string.Create(CultureInfo.InvariantCulture, $"{HandModel.WidestSpan(l.Number)} mm")),
    ];

    /// <summary>The table in Markdown, for guides.</summary>
    public static string Markdown()
    {
        var text = new StringBuilder();
        Append(text, Head);
        Append(text, [.. Head.Select(_ => "---")]);
        foreach (var row in Rows) Append(text, row);
        return text.ToString();
    }

    private static void Append(StringBuilder text, ImmutableArray<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

    private static ImmutableArray<string> Row(string name, Func<Level, string> cell) => [name, .. LevelTable.All.Select(cell)];

    private static string Words(int number) => number switch { 2 => "two", 4 => "four", 8 => "eight", _ => number.ToString(CultureInfo.InvariantCulture) };
}

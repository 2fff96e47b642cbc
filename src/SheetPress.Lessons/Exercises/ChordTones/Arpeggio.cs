using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The chord tones in order, up, down or both ways.</summary>
internal sealed class Arpeggio : ExerciseStyle
{
    public override string Name => "arpeggio";
    public override string Title => "Arpeggios";
    public override string Summary => "The tones of every chord in order: up, down or both, in one or two octaves, from any inversion.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("direction", OptionType.Choice, "Which way it runs.", "up") { Choices = ["up", "down", "both"] },
        new("octaves", OptionType.Number, "How far it reaches; by level when not given.", "") { Minimum = 1, Maximum = 2 },
        new("start", OptionType.Choice, "The lowest tone: the root, or an inversion.", "root") { Choices = ["root", "third", "fifth", "seventh"] },
    ];

    public override string Instruction(ExerciseRequest request) => request.Word("direction") switch
    {
        "down" => "Hear the chord before you play it, then come down through its tones to the lowest.",
        "both" => "Up and down through each chord without a break at the turn.",
        _ => "Play each chord from its lowest tone upward and hear how it changes from chord to chord.",
    };

    public override Line Generate(ExerciseContext context)
    {
        var direction = context.Request.Word("direction");
        var octaves = context.Request.Number("octaves") ?? LevelTable.ArpeggioOctaves(context.Level);
        var start = context.Request.Word("start") switch { "third" => 1, "fifth" => 2, "seventh" => 3, _ => 0 };
        return new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, room) => Figure(step.BasicTones, direction, octaves, start));
    }

    // Up from the lowest tone; a chord of three tones takes its octave along, so that the figure has four.
    private static ImmutableArray<CellTone> Figure(ImmutableArray<Degree> tones, string direction, int octaves, int start)
    {
        var count = tones.Length * octaves;
        var up = new List<CellTone>(count + 1);
        start = Math.Min(start, tones.Length - 1);
        for (var i = start; i <= start + count; i++) up.Add(CellTone.Of(tones[i % tones.Length]).Up(i / tones.Length));
        var top = up[^1];
        if (tones.Length >= 4) up.RemoveAt(count);
        return direction switch
        {
            "up" => [.. up],
            "down" => [top, .. Reversed(up, top)],
            _ => tones.Length >= 4 ? [.. up, top, .. Reversed(up[1..], top)] : [.. up, .. Reversed(up[1..], top)],
        };
    }

    private static IEnumerable<CellTone> Reversed(List<CellTone> tones, CellTone without) => Enumerable.Reverse(tones).Where(t => t != without);
}

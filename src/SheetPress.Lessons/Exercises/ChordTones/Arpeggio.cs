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
        new("start", OptionType.Choice, "The lowest tone: the root, an inversion, or of each chord the tone nearest to where the one before started.", "root") { Choices = ["root", "third", "fifth", "seventh", "nearest"] },
    ];

    public override string Instruction(ExerciseRequest request) => (request.Word("direction"), request.Word("start")) switch
    {
        (_, "nearest") => "Stay where you are: each chord starts on its tone nearest to where the last one started. Name that tone as you land on it.",
        ("down", _) => "Hear the chord before you play it, then come down through its tones to the lowest.",
        ("both", _) => "Up and down through each chord without a break at the turn.",
        _ => "Play each chord from its lowest tone upward and hear how it changes from chord to chord.",
    };

    public override Line Generate(ExerciseContext context)
    {
        var direction = context.Request.Word("direction");
        var start = context.Request.Word("start") switch { "third" => 1, "fifth" => 2, "seventh" => 3, _ => 0 };
        var nearest = context.Request.Word("start") == "nearest" ? new NearestTone(NeckRange.Of(context)) : null;
        var range = NeckRange.Of(context);
        return new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, room) =>
        {
            var tones = step.BasicTones;
            var from = Math.Min(nearest?.IndexIn(step, tones) ?? start, tones.Length - 1);
            // Two octaves are for where bar and neck have room for them, unless the lesson asks for them.
            var root = Pitch.AtOrAbove(step.Chord.Root, Math.Max(0, range.Lowest)).MidiNumber;
            var fits = room >= 2 * tones.Length && root + ChordStack.At(tones, from + (2 * tones.Length) - 1).FromRoot.HalfSteps <= range.Highest;
            var octaves = context.Request.Number("octaves") ?? (fits ? LevelTable.Of(context.Level).ArpeggioOctaves : 1);
            return Figure(tones, direction, octaves, from, room);
        });
    }

    // A chord of three tones takes its octave along, so that the figure has four.
    private static ImmutableArray<CellTone> Figure(ImmutableArray<Degree> tones, string direction, int octaves, int start, int room)
    {
        CellTone At(int index) => ChordStack.At(tones, start + index);
        var top = tones.Length * octaves;
        if (direction == "both") return Figures.UpAndBack(At, top, room);
        var count = tones.Length >= 4 && room != top + 1 ? top : top + 1;
        var figure = Enumerable.Range(0, count).Select(At);
        return Figures.TurningBack([.. direction == "down" ? figure.Reverse() : figure], room);
    }
}

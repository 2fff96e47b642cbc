using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The scale over each chord in a pattern of steps.</summary>
internal sealed class ScalePattern : ExerciseStyle
{
    public override string Name => "scale-patterns";
    public override string Title => "Scale patterns";
    public override string Summary => "The scale over each chord in thirds, fourths, sixths, octaves, triads, or groups of three and four.";
    public override string Group => "scales";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("pattern", OptionType.Choice, "The figure that starts on each step of the scale.", "thirds") { Choices = ["thirds", "fourths", "sixths", "octaves", "triads", "threes", "fours"] },
        new("direction", OptionType.Choice, "Which way the steps go.", "up") { Choices = ["up", "down"] },
        new("scale", OptionType.Choice, "The scale suggested for each chord, or the notes of the key.", "chord") { Choices = ["chord", "key"] },
        ChangedNotes.Option,
    ];

    public override string Instruction(ExerciseRequest request) => "Keep the figure going from step to step, slowly enough to hear each interval.";

    public override Line Generate(ExerciseContext context)
    {
        var upward = context.Request.Word("direction") == "up";
        var ofKey = context.Request.Word("scale") == "key";
        int[] steps = context.Request.Word("pattern") switch
        {
            "fourths" => [0, 3],
            "sixths" => [0, 5],
            "octaves" => [0, 7],
            "triads" => [0, 2, 4],
            "threes" => [0, 1, 2],
            "fours" => [0, 1, 2, 3],
            _ => [0, 2],
        };
        return new CellLine(context, LevelRhythm.ForRuns(context)) { MarksOf = ChangedNotes.Marks(context.Request) }.Write((step, room) => Figure(ofKey ? step.KeyScale : step.Scale, steps, upward, room));
    }

    private static ImmutableArray<CellTone> Figure(ImmutableArray<Degree> scale, int[] steps, bool upward, int room)
    {
        // A scale of other than seven tones keeps the octave an octave; the other figures count its own steps.
        var reach = steps is [0, 7] ? [0, scale.Length] : steps;
        var figure = ImmutableArray.CreateBuilder<CellTone>();
        for (var start = 0; start <= scale.Length && figure.Count < Math.Max(room, 1); start++)
        {
            foreach (var offset in reach) figure.Add(ChordStack.At(scale, upward ? start + offset : Math.Max(0, (scale.Length + reach[^1]) - start - offset)));
        }
        return figure.ToImmutable();
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The two triads inside a seventh chord.</summary>
internal sealed class TriadPairs : ExerciseStyle
{
    public override string Name => "triads-inside";
    public override string Title => "The triads inside the chord";
    public override string Summary => "The lower triad (R 3 5) and the upper triad (3 5 7) inside each seventh chord.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("triad", OptionType.Choice, "Which of the two; a plain triad has its first inversion for the upper one.", "both") { Choices = ["both", "lower", "upper"] },
    ];

    public override string Instruction(ExerciseRequest request) => "A seventh chord is two triads: hear the lower one, then the one on its third.";

    public override Line Generate(ExerciseContext context)
    {
        int[] figure = context.Request.Word("triad") switch
        {
            "lower" => [0, 1, 2, 1],
            "upper" => [1, 2, 3, 2],
            _ => [0, 1, 2, 0, 1, 2, 3, 2],
        };
        return new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, _) => ChordStack.At(ChordStack.FourTones(step), figure));
    }
}

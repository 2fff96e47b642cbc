using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Root and octave in turn.</summary>
internal sealed class RootOctave : ExerciseStyle
{
    public override string Name => "root-octave";
    public override string Title => "Roots and octaves";
    public override string Summary => "Root and octave in turn over every chord.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options => [new("start", OptionType.Choice, "Which of the two comes first.", "low") { Choices = ["low", "high"] }];
    public override string Instruction(ExerciseRequest request) => "Keep the shape of the octave in the hand: two strings across, two frets up on strings tuned in fourths.";

    public override Line Generate(ExerciseContext context)
    {
        var highFirst = context.Request.Word("start") == "high";
        return new CellLine(context, LevelRhythm.Or(context, context.Level <= 1 ? EvenRhythms.Beats : EvenRhythms.Eighths)).Write((step, _) =>
        {
            var low = CellTone.Of(step.BassDegree);
            return highFirst ? [low.Up(1), low] : [low, low.Up(1)];
        });
    }
}

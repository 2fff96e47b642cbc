using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The root of each chord, or its bass note where a slash names one.</summary>
internal sealed class Roots : ExerciseStyle
{
    public override string Name => "roots";
    public override string Title => "Roots";
    public override string Summary => "The root of every chord, or the bass note of a slash chord.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options => [];
    public override string Instruction(ExerciseRequest request) => "Land on each root exactly with the beat and let it sound until the next one.";

    public override Line Generate(ExerciseContext context)
    {
        var rhythm = LevelRhythm.Or(context, context.Level <= 1 ? EvenRhythms.Halves : EvenRhythms.Beats);
        return new CellLine(context, rhythm) { NotesBeforeRest = 0 }.Write(static (step, _) => [CellTone.Of(step.BassDegree)]);
    }
}

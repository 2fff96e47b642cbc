using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Intervals above each root, one a chord, as shapes for the hand.</summary>
internal sealed class IntervalShapes : ExerciseStyle
{
    public override string Name => "interval-shapes";
    public override string Title => "Intervals as shapes";
    public override string Summary => "Root and one interval above it, another interval with every chord.";
    public override string Group => "neck";
    public override ImmutableArray<StyleOption> Options => [new("intervals", OptionType.Degrees, "The intervals in turn.", "3 5 7 8 10")];
    public override string Instruction(ExerciseRequest request) => "See the shape before you play it: so many strings across, so many frets up or down.";

    public override Line Generate(ExerciseContext context)
    {
        var intervals = context.Request.Degrees("intervals");
        var turn = 0;
        return new CellLine(context, LevelRhythm.Or(context, EvenRhythms.Beats)).Write((step, _) =>
        {
            var interval = intervals.IsEmpty ? new DegreeRequest(new Degree(5), false) : intervals[turn++ % intervals.Length];
            return [CellTone.Of(Degree.Root), CellTone.Of(DegreeResolver.Resolve(interval, step))];
        });
    }
}

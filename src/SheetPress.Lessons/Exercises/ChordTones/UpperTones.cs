using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Arpeggios that reach into the extensions.</summary>
internal sealed class UpperTones : ExerciseStyle
{
    public override string Name => "extensions";
    public override string Title => "Extensions";
    public override string Summary => "Arpeggios in thirds up into ninth, eleventh and thirteenth, as the chord or its scale has them.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("from", OptionType.Choice, "The lowest tone of the arpeggio.", "third") { Choices = ["root", "third", "fifth", "seventh"] },
        new("to", OptionType.Number, "The highest extension.", "9") { Minimum = 9, Maximum = 13 },
    ];

    public override string Instruction(ExerciseRequest request) => "Sing the root, then play the colours above it and hear which of them want to move.";

    public override Line Generate(ExerciseContext context)
    {
        var first = context.Request.Word("from") switch { "root" => 1, "fifth" => 5, "seventh" => 7, _ => 3 };
        var last = context.Request.Number("to") ?? 9;
        last -= (last + 1) % 2;
        return new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, room) =>
        {
            var up = new List<CellTone>();
            for (var number = first; number <= last; number += 2)
            {
                // Across the seventh of a triad without one the stack goes on with the ninth.
                var degree = DegreeResolver.Resolve(new DegreeRequest(new Degree(number), false), step);
                if (degree.Number != 8 && (up.Count == 0 || degree.HalfSteps > up[^1].FromRoot.HalfSteps)) up.Add(CellTone.Of(degree));
            }
            // The extensions are the point: where there is no room for all, the lower tones are left out.
            return Figures.TurningBack(room < up.Count && !step.IsFinal ? up[^room..] : up, room);
        });
    }
}

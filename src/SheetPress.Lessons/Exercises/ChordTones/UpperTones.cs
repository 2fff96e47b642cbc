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
        new("to", OptionType.Choice, "The highest extension.", "9") { Choices = ["9", "11", "13"] },
    ];

    public override string Instruction(ExerciseRequest request) => "Sing the root, then play the colours above it and hear which of them want to move.";

    public override Line Generate(ExerciseContext context)
    {
        var first = context.Request.Word("from") switch { "root" => 1, "fifth" => 5, "seventh" => 7, _ => 3 };
        var last = context.Request.Word("to") switch { "11" => 11, "13" => 13, _ => 9 };
        return new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, room) =>
        {
            var up = new List<CellTone>();
            for (var number = first; number <= last; number += 2)
            {
                // Across the seventh of a triad without one the stack goes on with the ninth.
                var degree = DegreeResolver.Resolve(new DegreeRequest(new Degree(number), false), step);
                if (degree.Number != 8 && IsThere(step, degree) && (up.Count == 0 || degree.HalfSteps > up[^1].FromRoot.HalfSteps)) up.Add(CellTone.Of(degree));
            }
            if (up.Count == 0) up.Add(CellTone.Of(Degree.Root));
            // The extensions are the point: where there is no room for all, the lower tones are left out.
            return Figures.TurningBack(room < up.Count && !step.IsFinal ? up[^room..] : up, room);
        });
    }
    // A scale of six tones has no thirteenth to offer.
    private static bool IsThere(HarmonyStep step, Degree degree) =>
        degree.Number <= 7 || step.ChordDegree(degree.Simple.Number) is not null || step.ScaleDegree(degree.Simple.Number) is not null;
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A target tone on the first beat of every chord, with a pickup into it.</summary>
internal sealed class TargetTone : ExerciseStyle
{
    public override string Name => "target-tones";
    public override string Title => "Target tones";
    public override string Summary => "Every chord is met on its third, fifth, seventh or ninth, and a pickup leads into that tone.";
    public override string Group => "links";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("target", OptionType.Choice, "The tone on the first beat.", "third") { Choices = ["third", "fifth", "seventh", "ninth"] },
        new("pickup", OptionType.Choice, "How it is reached.", "scale-below") { Choices = Leads.Names },
    ];

    public override string Instruction(ExerciseRequest request) => $"Know the {request.Word("target")} of the next chord before you get there, and lean on it when you arrive.";

    public override Line Generate(ExerciseContext context)
    {
        var number = context.Request.Word("target") switch { "fifth" => 5, "seventh" => 7, "ninth" => 9, _ => 3 };
        var rhythm = LevelRhythm.Or(context, context.Level <= 3 ? EvenRhythms.Beats : EvenRhythms.Eighths);
        return new CellLine(context, rhythm) { Lead = Leads.Of(context.Request.Word("pickup")) }.Write((step, room) => Figure(step, number, room));
    }

    // The target, then the chord tones from the root upward, so that the harmony is heard with it; from a ninth they come down.
    private static ImmutableArray<CellTone> Figure(HarmonyStep step, int number, int room)
    {
        var target = DegreeResolver.Resolve(new DegreeRequest(new Degree(number), false), step);
        var others = ChordStack.FourTones(step).Where(d => d.HalfSteps != target.HalfSteps).Select(CellTone.Of);
        return target.Number > 8 ? Figures.TurningBack([CellTone.Of(target), .. others.Reverse()], room) : [CellTone.Of(target), .. others];
    }
}

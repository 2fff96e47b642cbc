using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Root and fifth, then a few scale steps into the next root.</summary>
internal sealed class ScaleLink : ExerciseStyle
{
    public override string Name => "scale-links";
    public override string Title => "Scale runs into the next root";
    public override string Summary => "Root and fifth, then scale steps that arrive on the next root with the beat.";
    public override string Group => "links";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("from", OptionType.Choice, "Which side the run comes from.", "below") { Choices = ["below", "above"] },
        new("notes", OptionType.Number, "Notes of the run.", "3") { Minimum = 1, Maximum = 7 },
        new("overshoot", OptionType.Flag, "Whether the run goes a step too far and comes back to the root.", "false"),
    ];

    public override string Instruction(ExerciseRequest request) => "Count backward from the next root: the run starts where it has to, and lands with the beat.";

    public override (string Option, Problem Problem)? ClashIn(ExerciseRequest request) =>
        request.Flag("overshoot") && request.Number("notes") is { } notes and < 3 ? ("notes", OptionProblems.TooShortToOvershoot(notes)) : null;

    public override Line Generate(ExerciseContext context)
    {
        var request = context.Request;
        var lead = Leads.Run(request.Number("notes") ?? 3, request.Word("from") == "below", request.Flag("overshoot"));
        return new CellLine(context, LevelRhythm.ForRuns(context)) { Lead = lead }.Write((step, room) =>
        {
            var root = CellTone.Of(step.BassDegree);
            var fifth = CellTone.Of(DegreeResolver.Resolve(new DegreeRequest(new Degree(5), false), step));
            return [root, fifth, root.Up(1), fifth];
        });
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The scale over each chord, from its root.</summary>
internal sealed class ScaleRun : ExerciseStyle
{
    public override string Name => "scale-run";
    public override string Title => "Scale runs";
    public override string Summary => "The scale of each chord, or of the key, from the root of every chord: up, down or both.";
    public override string Group => "scales";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("direction", OptionType.Choice, "Which way it runs; where one way fills a chord, both ways take turns.", "both") { Choices = ["up", "down", "both"] },
        new("scale", OptionType.Choice, "The scale suggested for each chord, or the notes of the key.", "chord") { Choices = ["chord", "key"] },
        new("octaves", OptionType.Number, "How far it reaches.", "1") { Minimum = 1, Maximum = 2 },
        ChangedNotes.Option,
    ];

    public override string Instruction(ExerciseRequest request) => request.Word("scale") == "key"
        ? "Stay in the key: the notes are the same, only the starting point moves with the chord."
        : request.Flag("accent-changes")
            ? "Name the scale of each chord before you play it. A note with an accent is not in the key: lean on it."
            : "Name the scale of each chord before you play it, and listen for the notes that change.";

    public override Line Generate(ExerciseContext context)
    {
        var direction = context.Request.Word("direction");
        var octaves = context.Request.Number("octaves") ?? 1;
        var ofKey = context.Request.Word("scale") == "key";
        var downward = true;
        return new CellLine(context, LevelRhythm.ForRuns(context)) { MarksOf = ChangedNotes.Marks(context.Request) }.Write((step, room) =>
        {
            var scale = ofKey ? step.KeyScale : step.Scale;
            if (step.IsFinal && direction != "down") return Turn(scale, room);
            downward = !downward;
            return Figure(scale, direction, octaves, room, downward);
        });
    }

    private static ImmutableArray<CellTone> Figure(ImmutableArray<Degree> scale, string direction, int octaves, int room, bool downward)
    {
        var top = scale.Length * octaves;
        // Where one way fills the chord, the way back is for the next one.
        if (direction == "both" && room != top + 1) return Figures.UpAndBack(i => ChordStack.At(scale, i), top, room);
        var up = Enumerable.Range(0, top + 1).Select(i => ChordStack.At(scale, i));
        var isDown = direction == "down" || (direction == "both" && downward);
        return Figures.TurningBack([.. isDown ? up.Reverse() : up], room);
    }

    // Up and back within the last chord, so that the run ends on the root by step.
    private static ImmutableArray<CellTone> Turn(ImmutableArray<Degree> scale, int room)
    {
        var figure = ImmutableArray.CreateBuilder<CellTone>(room);
        for (var i = 0; i < room; i++)
        {
            // An even number of notes leaves one step out on the way up.
            var above = room % 2 == 1 ? Math.Min(i, room - 1 - i) : i < (room / 2) - 1 ? i : room - 1 - i;
            figure.Add(CellTone.Of(scale[above % scale.Length]).Up(above / scale.Length));
        }
        return figure.MoveToImmutable();
    }
}

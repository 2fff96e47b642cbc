using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Root, octave, and from there a run by scale steps into the root of the next chord, which falls on its beat. Where the chord
/// has room for more notes than the run needs, chord tones lead from the root to the start of the run; where it has room for
/// fewer, the run is joined on the way. The octaves of all roots are chosen together, so that the line stays near home.
/// </summary>
internal sealed class OctaveRun : ExerciseStyle
{
    public override string Name => "octave-run";
    public override string Title => "Octave runs";
    public override string Summary => "From the octave of each root by scale steps into the next root, which falls on the beat.";
    public override string Group => "links";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("direction", OptionType.Choice, "Whether runs come down from the upper octave, up from the lower one, or take turns.", "down") { Choices = ["down", "up", "both"] },
        new("overshoot", OptionType.Flag, "Whether the run goes a step too far and comes back to the root.", "false"),
    ];

    public override string Instruction(ExerciseRequest request) => "Aim at the next root before you start the run: it has to arrive exactly on the beat.";

    public override Line Generate(ExerciseContext context)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.ForRuns(context));
        var range = NeckRange.Of(context);
        var writer = new LineWriter();
        var direction = context.Request.Word("direction");
        ImmutableArray<RunStep> steps =
        [
            .. track.Sounding.Where(s => !slots[s.Index].IsEmpty).Select((s, i) => new RunStep(s, slots[s.Index].Length, direction == "up" || (direction == "both" && i % 2 == 1))),
        ];
        if (context.Request.Rhythm is not null && steps.Length > 1 && steps.All(s => s.Room < 2)) context.Diagnostics.Add(context.Request.Span, OptionProblems.NoRoom(Name));
        var builder = new RunBuilder(range, context.Request.Flag("overshoot"));
        var roots = RunPlanner.Plan(steps, builder, range);
        var placer = new PitchPlacer(context, range);
        for (var i = 0; i < steps.Length; i++)
        {
            var step = steps[i].Harmony;
            var own = slots[step.Index];
            var root = placer.Place(new NamedPitch(roots[i], step.BassDegree), own[0].Start);
            if (TargetOf(steps, roots, i) is not { } target)
            {
                writer.Add(own[0] with { Duration = step.End - own[0].Start }, root);
                continue;
            }
            var run = builder.Build(steps[i], root.Pitch, target);
            for (var k = 0; k < own.Length; k++) writer.Add(own[k], k == 0 ? root : run[k - 1]);
        }
        return writer.Finish(context.Progression.Length);
    }

    // The root to run into: the next one in the line, or that of the chord to which a repeat leads back; null where the line rests.
    private static Pitch? TargetOf(ImmutableArray<RunStep> steps, ImmutableArray<Pitch> roots, int index)
    {
        var next = steps[index].Harmony.Next;
        if (next is null) return null;
        for (var i = 0; i < steps.Length; i++) if (ReferenceEquals(steps[i].Harmony, next)) return roots[i];
        return null;
    }
}

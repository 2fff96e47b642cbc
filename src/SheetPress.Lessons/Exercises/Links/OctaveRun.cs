using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// Root, octave, and from there a run by scale steps into the root of the next chord, which falls on its beat. Where the chord
/// has room for more notes than the run needs, chord tones lead from the root to the start of the run; where it has room for
/// fewer, the run is joined on the way.
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
        var placer = new PitchPlacer(context, range);
        var writer = new LineWriter();
        var steps = track.Sounding.Where(s => !slots[s.Index].IsEmpty).ToList();
        var homes = RegisterPlanner.Plan([.. steps.Select(s => new RegisterNeed(s.Chord.Lowest, [0, 12, 0]))], range);
        var builder = new RunBuilder(range, context.Request.Flag("overshoot"));
        var direction = context.Request.Word("direction");
        Pitch? arrival = null;
        for (var i = 0; i < steps.Count; i++)
        {
            var step = steps[i];
            var own = slots[step.Index];
            var root = placer.Place(new NamedPitch(arrival ?? homes[i], step.BassDegree), own[0].Start);
            arrival = null;
            if (step.IsFinal || step.Next is null || (step.Next.Index > step.Index && i + 1 == steps.Count))
            {
                writer.Add(own[0] with { Duration = step.End - own[0].Start }, root);
                continue;
            }
            var upward = direction == "up" || (direction == "both" && i % 2 == 1);
            var follows = i + 1 < steps.Count && ReferenceEquals(steps[i + 1], step.Next);
            var goal = follows ? homes[i + 1] : homes[steps.FindIndex(s => ReferenceEquals(s, step.Next)) is var at and >= 0 ? at : i];
            var run = builder.Build(step, root.Pitch, goal, own.Length, upward);
            for (var k = 0; k < own.Length; k++) writer.Add(own[k], k == 0 ? root : run.Notes[k - 1]);
            if (follows) arrival = run.Target;
        }
        return writer.Finish(context.Progression.Length);
    }
}

using System.Collections.Immutable;
using System.Globalization;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A walking line: the root on one, strong tones on strong beats, and a step or half step into the next root.</summary>
internal sealed class WalkingLine : ExerciseStyle
{
    private const double WithoutRoom = 0.5;

    public override string Name => "walking-line";
    public override string Title => "Walking line";
    public override string Summary => "A walking line: roots on one, chord tones on the strong beats, a step or half step into the next root.";
    public override string Group => "lines";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("approach", OptionType.Choice, "How the last note leads into the next root; mixed varies it, at levels 1 and 2 by scale steps only.", "mixed")
        {
            Choices = ["mixed", "chromatic", "chromatic-below", "chromatic-above", "scale", "scale-below", "scale-above", "dominant"],
        },
        new("on-one", OptionType.Choice, "What stands on the first beat of a new chord.", "root") { Choices = ["root", "chord-tone"] },
        Skips.Option,
        new("choruses", OptionType.Number, "Different lines over the progression, each an exercise of its own.", "1") { Minimum = 1, Maximum = 8 },
    ];

    public override string Instruction(ExerciseRequest request) => "Even quarters, long and connected. Sing the roots, and hear how the note before leads into them.";

    public override ImmutableArray<ExerciseRequest> Expand(ExerciseRequest request)
    {
        var choruses = request.Number("choruses") ?? 1;
        if (choruses == 1) return [request];
        var title = request.Title ?? Title;
        return [.. Enumerable.Range(0, choruses).Select(i => request with { Seed = request.Seed + i, Title = string.Create(CultureInfo.InvariantCulture, $"{title}, chorus {i + 1}") })];
    }

    public override Line Generate(ExerciseContext context)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.Or(context, EvenRhythms.Beats));
        var planner = new WalkingCandidates(context, NeckRange.Of(context));
        var places = new List<(Slot Slot, int Chord)>();
        var layers = new List<ImmutableArray<Candidate>>();
        var arrivals = new List<bool>();
        HarmonyStep? before = null;
        foreach (var step in track.Sounding)
        {
            var own = slots[step.Index];
            if (own.IsEmpty) continue;
            if (step.IsFinal) own = [own[0] with { Duration = step.End - own[0].Start }];
            for (var k = 0; k < own.Length; k++)
            {
                places.Add((own[k], step.Index));
                layers.Add(planner.For(step, before, own[k], k, own.Length, layers.Count));
                arrivals.Add(k == 0 && before is not null && !step.Continues(before));
            }
            before = step;
        }
        var line = LineSearch.Best(layers, (int beforeLast, in Candidate last, in Candidate next, int slot) =>
            WalkingCosts.Move(beforeLast, last.Midi, next.Midi) + (arrivals[slot] ? Arrival(slot) * planner.ArrivalCost(last.Midi, next.Midi) : 0));
        var writer = new LineWriter();
        var skips = Skips.Of(context, [.. places.Select(p => p.Slot)]);
        for (var i = 0; i < line.Length; i++) Skips.Write(writer, places[i].Slot, line[i], skips[i]);
        return writer.Finish(context.Progression.Length);

        // A chord of one note has no room to prepare the next one: where both cannot be had, its own arrival comes first.
        double Arrival(int slot) => slot >= 2 && places[slot - 1].Chord != places[slot - 2].Chord ? WithoutRoom : 1;
    }
}

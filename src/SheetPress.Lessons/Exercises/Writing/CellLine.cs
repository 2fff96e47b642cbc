using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>
/// The line of every style that plays a figure over each chord: the figure starts anew with each chord and goes round as
/// long as the chord lasts. The last chord comes to rest on its root (see <see cref="Resting"/>).
/// </summary>
internal static class CellLine
{
    /// <summary>Writes the line.</summary>
    /// <param name="context">The exercise.</param>
    /// <param name="rhythmOf">The rhythm of a meter.</param>
    /// <param name="figureOf">The figure over a chord, given how many notes the chord has room for; at least one tone.</param>
    /// <param name="notesBeforeRest">Notes of the last chord before its held root.</param>
    public static Line Write(ExerciseContext context, Func<Meter, RhythmPattern> rhythmOf, Func<HarmonyStep, int, ImmutableArray<CellTone>> figureOf, int notesBeforeRest = Resting.UsualNotesBefore)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, rhythmOf);
        var range = NeckRange.Of(context);
        var steps = new List<(HarmonyStep Step, ImmutableArray<Slot> Slots, ImmutableArray<CellTone> Figure)>();
        var needs = new List<RegisterNeed>();
        foreach (var step in track.Sounding)
        {
            var own = slots[step.Index];
            if (own.IsEmpty) continue;
            if (step.IsFinal) own = Resting.Shorten(own, step.End, notesBeforeRest);
            var figure = figureOf(step, own.Length);
            steps.Add((step, own, figure));
            needs.Add(new RegisterNeed(step.Chord.Root, Offsets(figure, own.Length)));
        }
        var roots = RegisterPlanner.Plan(needs, range);
        var writer = new LineWriter();
        var placer = new PitchPlacer(context, range);
        for (var i = 0; i < steps.Count; i++)
        {
            var (step, own, figure) = steps[i];
            NamedPitch? previous = null;
            for (var k = 0; k < own.Length; k++)
            {
                var tone = figure[k % figure.Length];
                var pitch = placer.Place(new NamedPitch(roots[i] + tone.FromRoot, tone.Degree), own[k].Start);
                if (step.IsFinal && k == own.Length - 1 && !(k == 0 && RestsAlready(step, tone))) pitch = Resting.Root(roots[i], (previous ?? pitch).Pitch, range);
                writer.Add(own[k], pitch);
                previous = pitch;
            }
        }
        return writer.Finish(context.Progression.Length);
    }

    private static bool RestsAlready(HarmonyStep step, CellTone tone) => tone.Degree is { } degree && (degree.Simple == Degree.Root || degree == step.BassDegree);

    private static ImmutableArray<int> Offsets(ImmutableArray<CellTone> figure, int count)
    {
        var offsets = ImmutableArray.CreateBuilder<int>(Math.Min(count, figure.Length));
        for (var i = 0; i < figure.Length && i < count; i++) offsets.Add(figure[i].FromRoot.HalfSteps);
        return offsets.ToImmutable();
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One line that keeps its direction through the chord changes, enters each chord at its nearest tone, and turns only at the ends of its range.</summary>
internal abstract class ConnectedLine : ExerciseStyle
{
    /// <summary>The tones that the line may use over a chord, within the octave above its root.</summary>
    protected abstract ImmutableArray<Degree> TonesOf(ExerciseContext context, HarmonyStep step);

    /// <summary>Marks for a note by its chord; null for none besides those of the rhythm.</summary>
    protected virtual Func<HarmonyStep, NamedPitch, StrokeMarks>? MarksOf(ExerciseRequest request) => null;

    /// <summary>The options of every connected line.</summary>
    protected static ImmutableArray<StyleOption> CommonOptions =>
    [
        new("direction", OptionType.Choice, "Which way it sets out.", "up") { Choices = ["up", "down"] },
        new("span", OptionType.Number, "Half steps from the lowest to the highest note; by level when not given.", "") { Minimum = 12, Maximum = 36 },
    ];

    public override (string Option, Problem Problem)? ClashIn(ExerciseRequest request) =>
        request.Number("span") is not null && request.Neck.Position is not null ? ("span", OptionProblems.SpanInPosition()) : null;

    public override Line Generate(ExerciseContext context)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.ForRuns(context));
        var range = NeckRange.Of(context);
        var (lowest, highest) = Ends(context, range);
        var writer = new LineWriter();
        var placer = new PitchPlacer(context, range);
        var upward = context.Request.Word("direction") == "up";
        var marksOf = MarksOf(context.Request);
        NamedPitch? last = null;
        foreach (var step in track.Sounding)
        {
            var own = slots[step.Index];
            if (own.IsEmpty) continue;
            if (step.IsFinal) own = Resting.Shorten(own, step.End);
            var ladder = ScaleLadder.Of(step, TonesOf(context, step), range, lowest, highest);
            for (var k = 0; k < own.Length; k++)
            {
                var next = last is { } from ? Next(ladder, from, ref upward) : First(ladder, step, upward);
                if (step.IsFinal && k == own.Length - 1) next = Resting.Root(Pitch.AtOrAbove(step.Chord.Root, lowest), (last ?? next ?? default).Pitch, range);
                var pitch = placer.Place(next ?? new NamedPitch(Pitch.AtOrAbove(step.Chord.Root, lowest), Degree.Root), own[k].Start);
                writer.Add(own[k], pitch, marksOf?.Invoke(step, pitch) ?? default);
                last = pitch;
            }
        }
        return writer.Finish(context.Progression.Length);
    }

    // In a position all that lies under the hand, else the span from home.
    private static (int Lowest, int Highest) Ends(ExerciseContext context, NeckRange range)
    {
        var lowest = Math.Max(range.Home, range.Lowest);
        var highest = Math.Min(range.Highest, lowest + (context.Request.Number("span") ?? 14 + (2 * context.Level)));
        if (context.Request.Neck.Position is null) return (lowest, highest);
        var inside = Enumerable.Range(range.Lowest, Math.Max(0, range.Highest - range.Lowest + 1)).Where(m => range.CanPlay(m) && range.Strain(m) == 0).ToArray();
        return inside.Length < 2 || inside[^1] - inside[0] < 12 ? (lowest, highest) : (inside[0], inside[^1]);
    }

    private static NamedPitch? First(ImmutableArray<NamedPitch> ladder, HarmonyStep step, bool upward)
    {
        NamedPitch? found = null;
        foreach (var tone in ladder)
        {
            if (tone.Pitch.Name.PitchClass != step.Chord.Root.PitchClass) continue;
            found = tone;
            if (upward) break;
        }
        return found ?? (ladder.IsEmpty ? null : ladder[0]);
    }

    // The nearest tone onward; at the end of the range the line turns.
    private static NamedPitch? Next(ImmutableArray<NamedPitch> ladder, NamedPitch from, ref bool upward)
    {
        for (var attempt = 0; attempt < 2; attempt++)
        {
            for (var i = 0; i < ladder.Length; i++)
            {
                var tone = upward ? ladder[i] : ladder[^(i + 1)];
                if (upward ? tone.Pitch.MidiNumber > from.Pitch.MidiNumber : tone.Pitch.MidiNumber < from.Pitch.MidiNumber) return tone;
            }
            upward = !upward;
        }
        return ladder.IsEmpty ? null : ladder[0];
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One line of chord tones that keeps its direction through the chord changes and turns only at the ends of its range.</summary>
internal sealed class ConnectedArpeggio : ExerciseStyle
{
    public override string Name => "connected-arpeggios";
    public override string Title => "Connected arpeggios";
    public override string Summary => "One unbroken line of chord tones: each chord is entered at its nearest tone, and the direction is kept up to the end of the range.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("direction", OptionType.Choice, "Which way it sets out.", "up") { Choices = ["up", "down"] },
        new("span", OptionType.Number, "Half steps from the lowest to the highest note; by level when not given.", "") { Minimum = 12, Maximum = 36 },
    ];

    public override string Instruction(ExerciseRequest request) => "Do not start over with the chord: go on to its nearest tone in the direction you are moving.";

    public override Line Generate(ExerciseContext context)
    {
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.ForRuns(context));
        var range = NeckRange.Of(context);
        var lowest = Math.Max(range.Home, range.Lowest);
        var highest = Math.Min(range.Highest, lowest + (context.Request.Number("span") ?? 14 + (2 * context.Level)));
        var writer = new LineWriter();
        var placer = new PitchPlacer(context, range);
        var upward = context.Request.Word("direction") == "up";
        NamedPitch? last = null;
        foreach (var step in track.Sounding)
        {
            var own = slots[step.Index];
            if (own.IsEmpty) continue;
            if (step.IsFinal) own = Resting.Shorten(own, step.End);
            var ladder = ScaleLadder.Of(step, ChordStack.FourTones(step), range, lowest, highest);
            for (var k = 0; k < own.Length; k++)
            {
                var next = last is { } from ? Next(ladder, from, ref upward) : First(ladder, step, upward);
                if (step.IsFinal && k == own.Length - 1) next = Resting.Root(Pitch.AtOrAbove(step.Chord.Root, lowest), (last ?? next ?? default).Pitch, range);
                var pitch = placer.Place(next ?? new NamedPitch(Pitch.AtOrAbove(step.Chord.Root, lowest), Degree.Root), own[k].Start);
                writer.Add(own[k], pitch);
                last = pitch;
            }
        }
        return writer.Finish(context.Progression.Length);
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

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>A rhythm on a single pitch.</summary>
internal sealed class OneNote : ExerciseStyle
{
    public override string Name => "one-note";
    public override string Title => "Rhythm on one note";
    public override string Summary => "One note from beginning to end: nothing to think of but the rhythm, yours or one of the level to read; another seed gives another.";
    public override string Group => "lines";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("degree", OptionType.Degrees, "Another step of the key than the tonic.", "1"),
    ];

    public override string Instruction(ExerciseRequest request) => "Count out loud, tap the beat with your foot, and make every note equally long and loud.";

    public override Line Generate(ExerciseContext context)
    {
        var key = context.Key;
        var request = context.Request.Degrees("degree") is [var first, ..] ? first : new DegreeRequest(Degree.Root, false);
        var name = request.IsExact ? key.Tonic + request.Degree.ToInterval() : key.NoteOf(request.Degree.Number);
        var range = NeckRange.Of(context);
        var pitch = RegisterPlanner.Plan([new RegisterNeed(name, [0])], range)[0];
        var placer = new PitchPlacer(context, range);
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.Or(context, meter => RhythmBook.Of(meter, context.Level, context.Request.Seed)));
        var writer = new LineWriter();
        foreach (var step in track.Sounding)
        {
            var own = slots[step.Index];
            if (step.IsFinal) own = Resting.Shorten(own, step.End, 0);
            foreach (var slot in own) writer.Add(slot, placer.Place(new NamedPitch(pitch, step.NameOf(pitch.Name)), slot.Start));
        }
        return writer.Finish(context.Progression.Length);
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Four fingers on four frets of every string, moving up the neck.</summary>
internal sealed class ChromaticWarmUp : ExerciseStyle
{
    public override string Name => "chromatic-warm-up";
    public override string Title => "Chromatic warm-up";
    public override string Summary => "Four fingers on four neighbouring frets, string by string, a fret further at each turn; the chords are only company.";
    public override string Group => "scales";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("fingers", OptionType.Choice, "The order of the fingers.", "1234") { Choices = ["1234", "1243", "1324", "1342", "1423", "1432", "4321"] },
    ];

    public override string Instruction(ExerciseRequest request) => "Start slowly and relaxed, with a light touch; stop if anything hurts.";

    public override Line Generate(ExerciseContext context)
    {
        var order = context.Request.Word("fingers");
        var strings = NeckWindow.Strings(context).ToArray();
        var neck = context.Request.Neck;
        var instrument = context.Instrument;
        var first = Math.Max(1, neck.Position ?? neck.LowestFret ?? (context.Level <= 2 ? 5 : 1));
        var last = Math.Max(first, Math.Min(instrument.PlayableFrets, neck.HighestFret ?? instrument.PlayableFrets) - 3);
        var places = new List<FretPosition>();
        for (var hand = first; hand <= last; hand++)
        {
            var turn = hand - first;
            foreach (var number in turn % 2 == 0 ? strings : strings.Reverse())
            {
                foreach (var finger in turn % 2 == 0 ? order : string.Concat(order.Reverse())) places.Add(new FretPosition(number, Math.Min(instrument.PlayableFrets, hand + finger - '1')));
            }
        }
        var at = 0;
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.ForRuns(context));
        var writer = new LineWriter();
        foreach (var step in track.Sounding)
        {
            foreach (var slot in slots[step.Index])
            {
                var place = places[at++ % places.Count];
                var pitch = ApproachNotes.Simplest(instrument.MidiNumberAt(place.String, place.Fret), preferSharps: context.Key.Fifths >= 0);
                writer.Add(slot, [new NamedPitch(pitch, step.NameOf(pitch.Name))], default, [place]);
            }
        }
        return writer.Finish(context.Progression.Length);
    }
}

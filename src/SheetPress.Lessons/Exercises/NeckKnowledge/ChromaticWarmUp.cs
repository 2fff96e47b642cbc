using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Four fingers on four frets of every string, moving up the neck.</summary>
internal sealed class ChromaticWarmUp : ExerciseStyle
{
    private const int EasyUpToLevel = 2;
    private const int EasyPosition = 5;

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
        var steps = Steps(context);
        var track = HarmonyTrack.Of(context);
        var slots = RhythmTiler.Tile(context.Progression, LevelRhythm.ForRuns(context));
        var all = track.Sounding.SelectMany(s => slots[s.Index].Select(slot => (Step: s, Slot: slot))).ToList();
        var writer = new LineWriter();
        for (var i = 0; i < all.Count; i++)
        {
            var (place, finger) = steps[i % steps.Count];
            var midi = Midi(i);
            // A note that goes on upward is spelled as a raised one, one that goes down as a lowered one.
            var rises = i + 1 < all.Count ? Midi(i + 1) > midi : i == 0 || midi > Midi(i - 1);
            var pitch = Spelled(all[i].Step.Key, midi, rises);
            writer.Add(all[i].Slot, [new NamedPitch(pitch, all[i].Step.NameOf(pitch.Name))], default, [place], [finger]);
        }
        return writer.Finish(context.Progression.Length);

        int Midi(int index) => context.Instrument.MidiNumberAt(steps[index % steps.Count].Place.String, steps[index % steps.Count].Place.Fret);
    }

    // String by string over four frets, and back over the next four: one finger to a fret all the way.
    private static List<(FretPosition Place, int Finger)> Steps(ExerciseContext context)
    {
        var order = context.Request.Word("fingers");
        var strings = NeckWindow.Strings(context).ToArray();
        var (instrument, neck) = (context.Instrument, context.Request.Neck);
        var top = Math.Min(instrument.PlayableFrets, neck.HighestFret ?? instrument.PlayableFrets);
        var first = Math.Max(1, Math.Min(neck.Position ?? neck.LowestFret ?? LowestHand(context), top - 3));
        var steps = new List<(FretPosition, int)>();
        for (var hand = first; hand <= Math.Max(first, top - 3); hand++)
        {
            var turn = hand - first;
            foreach (var number in turn % 2 == 0 ? strings : strings.Reverse())
            {
                foreach (var finger in turn % 2 == 0 ? order : string.Concat(order.Reverse()))
                {
                    var fret = hand + finger - '1';
                    if (fret <= instrument.PlayableFrets) steps.Add((new FretPosition(number, fret), finger - '0'));
                }
            }
        }
        return steps;
    }

    // Beginners start in the fifth position, others as low as four fingers reach four frets without strain.
    private static int LowestHand(ExerciseContext context)
    {
        if (context.Level <= EasyUpToLevel) return EasyPosition;
        var hand = new HandModel(context.Instrument);
        var at = 1;
        while (at < EasyPosition && hand.Distance(at, at + 3) > HandModel.WidestSpan(context.Level)) at++;
        return at;
    }

    // Common practice: what the key has is spelled as in the key, other notes as sharps upward and as flats downward.
    private static Pitch Spelled(Key key, int midi, bool rises)
    {
        for (var letter = 0; letter < 7; letter++)
        {
            var note = key.Spell((Letter)letter);
            if (note.PitchClass == NoteMath.Modulo(midi, 12)) return Pitch.AtOrAbove(note, midi);
        }
        return ApproachNotes.Simplest(midi, rises);
    }
}

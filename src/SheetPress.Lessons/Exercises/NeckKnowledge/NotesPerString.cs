using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The scale of each chord with the same number of notes on every string, or all of it along one string.</summary>
internal sealed class NotesPerString : ExerciseStyle
{
    public override string Name => "notes-per-string";
    public override string Title => "Scales by strings";
    public override string Summary => "The scale of each chord from its root, two or three notes to a string, or along one string.";
    public override string Group => "scales";
    public override bool IsAboutPlaces => true;
    public override ImmutableArray<StyleOption> Options =>
    [
        new("per-string", OptionType.Choice, "How many notes stand on each string.", "three") { Choices = ["two", "three", "all"] },
    ];

    public override string Instruction(ExerciseRequest request) => request.Word("per-string") == "all"
        ? "Along one string the whole and half steps can be seen: watch the distances."
        : "The same number of notes on every string: let the plucking hand find its own pattern.";

    public override Line Generate(ExerciseContext context)
    {
        var perString = context.Request.Word("per-string") switch { "two" => 2, "all" => int.MaxValue, _ => 3 };
        var strings = NeckWindow.Strings(context).ToArray();
        var (lowest, highest) = NeckWindow.Frets(context, context.Instrument.PlayableFrets);
        return PlacedLine.Write(context, LevelRhythm.ForRuns(context), (step, _) =>
        {
            var best = new List<PlacedTone>();
            // From the lowest string whose root leaves room; up an octave where the strings above would need frets below the nut.
            foreach (var first in Enumerable.Range(0, strings.Length))
            {
                for (var root = RootFret(context.Instrument, step, strings[first], lowest); root <= highest; root += 12)
                {
                    var tones = Climb(context.Instrument, step, strings.AsSpan(first), root, perString, lowest, highest);
                    if (tones.Count > best.Count) best = tones;
                }
                if (best.Count > step.Scale.Length) break;
            }
            return best.Count < 3 ? [.. best] : [.. best, .. Enumerable.Reverse(best).Skip(1).SkipLast(1)];
        });
    }

    private static int RootFret(Instrument instrument, HarmonyStep step, int number, int lowest) =>
        lowest + NoteMath.Modulo(step.Chord.Root.PitchClass - instrument.MidiNumberAt(number, lowest), 12);

    private static List<PlacedTone> Climb(Instrument instrument, HarmonyStep step, ReadOnlySpan<int> strings, int rootFret, int perString, int lowest, int highest)
    {
        var tones = new List<PlacedTone>();
        var root = instrument.MidiNumberAt(strings[0], rootFret);
        var scale = step.Scale;
        var most = perString == int.MaxValue ? scale.Length + 1 : perString * strings.Length;
        for (var i = 0; i < most; i++)
        {
            var number = strings[perString == int.MaxValue ? 0 : i / perString];
            var degree = scale[i % scale.Length];
            var fret = root + degree.HalfSteps + (12 * (i / scale.Length)) - instrument.MidiNumberAt(number, 0);
            if (fret < lowest || fret > highest) break;
            tones.Add(NeckWindow.At(instrument, step, degree, new FretPosition(number, fret)));
        }
        return tones;
    }
}

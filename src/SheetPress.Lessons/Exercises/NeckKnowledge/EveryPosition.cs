using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>An arpeggio or scale across all strings in one position after the other.</summary>
internal sealed class EveryPosition : ExerciseStyle
{
    private const int UsualHighestFret = 12;
    private const int Span = 3;

    public override string Name => "every-position";
    public override string Title => "In every position";
    public override string Summary => "The arpeggio or scale of each chord across all strings in one position, with every chord a position further up.";
    public override string Group => "neck";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("of", OptionType.Choice, "What is played: the arpeggio or the scale of each chord, or the scale of the key in all its positions.", "arpeggio") { Choices = ["arpeggio", "scale", "key"] },
    ];

    public override string Instruction(ExerciseRequest request) => "One finger to a fret: find all the tones under the hand before you move it.";

    public override Line Generate(ExerciseContext context)
    {
        var of = context.Request.Word("of");
        var (lowest, highest) = NeckWindow.Frets(context, UsualHighestFret + Span);
        var strings = NeckWindow.Strings(context).ToArray();
        var hand = context.Request.Neck.Position ?? 0;
        return PlacedLine.Write(context, LevelRhythm.ForRuns(context), step =>
        {
            var degrees = of switch { "scale" => step.Scale, "key" => step.KeyScale, _ => step.BasicTones };
            var starts = Starts(context, step, degrees, strings[0], Math.Max(1, lowest), highest - Span);
            if (starts.Count == 0) return [];
            // The next position up; from the top of the neck back to the bottom.
            var start = starts.Find(s => s > hand) is var next and > 0 ? next : starts[0];
            hand = context.Request.Neck.Position is { } fixedHand ? fixedHand - 1 : start;
            var up = Best(context, step, degrees, strings, start);
            return [.. up, .. Enumerable.Reverse(up).Skip(1).SkipLast(1)];
        });
    }

    // Positions start from the tones on the lowest string.
    private static List<int> Starts(ExerciseContext context, HarmonyStep step, ImmutableArray<Degree> degrees, int lowestString, int from, int to)
    {
        var starts = new List<int>();
        for (var fret = from; fret <= Math.Max(from, to); fret++)
        {
            if (DegreeAt(context.Instrument, step, degrees, new FretPosition(lowestString, fret)) is not null) starts.Add(fret);
        }
        return starts;
    }

    // The hand lies with its first or second finger on the first tone, whichever reaches more tones without a gap.
    private static List<PlacedTone> Best(ExerciseContext context, HarmonyStep step, ImmutableArray<Degree> degrees, int[] strings, int start)
    {
        var first = Walk(context, step, degrees, strings, start, start);
        var second = start > 1 ? Walk(context, step, degrees, strings, start - 1, start) : [];
        return second.Count > first.Count ? second : first;
    }

    private static List<PlacedTone> Walk(ExerciseContext context, HarmonyStep step, ImmutableArray<Degree> degrees, int[] strings, int hand, int start)
    {
        var tones = new List<PlacedTone>();
        var last = -1;
        foreach (var number in strings)
        {
            for (var fret = number == strings[0] ? start : Math.Max(0, hand - 1); fret <= Math.Min(hand + Span + 1, context.Instrument.PlayableFrets); fret++)
            {
                var place = new FretPosition(number, fret);
                if (!context.Request.Neck.Allows(place)) continue;
                var midi = context.Instrument.MidiNumberAt(number, fret);
                if (midi <= last || DegreeAt(context.Instrument, step, degrees, place) is not { } degree) continue;
                // Outside its four frets the hand stretches only for a tone that the next string does not have.
                var outside = fret > hand + Span || fret < hand;
                if (outside && IsOnAnother(context.Instrument, strings, number, midi, hand)) continue;
                tones.Add(NeckWindow.At(context.Instrument, step, degree, place));
                last = midi;
            }
        }
        return tones;
    }

    private static bool IsOnAnother(Instrument instrument, int[] strings, int number, int midi, int hand)
    {
        foreach (var other in strings)
        {
            var fret = midi - instrument.MidiNumberAt(other, 0);
            if (other != number && fret >= hand && fret <= hand + Span) return true;
        }
        return false;
    }

    private static Degree? DegreeAt(Instrument instrument, HarmonyStep step, ImmutableArray<Degree> degrees, FretPosition place)
    {
        var above = NoteMath.Modulo(instrument.MidiNumberAt(place.String, place.Fret) - step.Chord.Root.PitchClass, 12);
        foreach (var degree in degrees) if (NoteMath.Modulo(degree.HalfSteps, 12) == above) return degree;
        return null;
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The same notes twice: low on the neck, and again a string lower and so further up.</summary>
internal sealed class TwoPositions : ExerciseStyle
{
    private const int ReachBack = 1;
    private const int ReachUp = 4;

    public override string Name => "two-positions";
    public override string Title => "The same line in two positions";
    public override string Summary => "The arpeggio or scale of each chord, and then the very same notes in another position, each a string lower.";
    public override string Group => "neck";
    public override bool IsAboutPlaces => true;
    public override ImmutableArray<StyleOption> Options =>
    [
        new("of", OptionType.Choice, "What is played.", "arpeggio") { Choices = ["arpeggio", "scale"] },
    ];

    public override string Instruction(ExerciseRequest request) => "The same notes in another place: hear how the sound changes, and see how the shape stays.";

    public override Line Generate(ExerciseContext context)
    {
        var ofScale = context.Request.Word("of") == "scale";
        return PlacedLine.Write(context, LevelRhythm.ForRuns(context), (step, count) =>
        {
            var (first, second) = Both(context, step, ofScale ? step.Scale : ChordStack.FourTones(step));
            // Where the chord is short both get their half of it.
            var half = Math.Clamp(count / 2, 1, Math.Max(1, first.Length));
            return [.. first.Take(half), .. second.Take(half)];
        });
    }

    // The lowest place where every note can be had twice, or as many as can.
    private static (ImmutableArray<PlacedTone> First, ImmutableArray<PlacedTone> Second) Both(ExerciseContext context, HarmonyStep step, ImmutableArray<Degree> degrees)
    {
        var instrument = context.Instrument;
        int[] strings = [.. NeckWindow.Strings(context).OrderBy(s => instrument.OpenStrings[s - 1].MidiNumber)];
        (ImmutableArray<PlacedTone> First, ImmutableArray<PlacedTone> Second) best = ([], []);
        for (var i = 1; i < strings.Length; i++)
        {
            for (var fret = NoteMath.Modulo(step.Chord.Root.PitchClass - instrument.MidiNumberAt(strings[i], 0), 12); fret <= instrument.PlayableFrets; fret += 12)
            {
                var low = new FretPosition(strings[i], fret);
                var high = new FretPosition(strings[i - 1], fret + instrument.MidiNumberAt(strings[i], 0) - instrument.MidiNumberAt(strings[i - 1], 0));
                if (high.Fret > instrument.PlayableFrets || !context.Request.Neck.Allows(low) || !context.Request.Neck.Allows(high)) continue;
                var found = From(context, step, degrees, strings, i, low, high);
                if (found.First.Length > best.First.Length) best = found;
            }
        }
        return best;
    }

    private static (ImmutableArray<PlacedTone> First, ImmutableArray<PlacedTone> Second) From(ExerciseContext context, HarmonyStep step, ImmutableArray<Degree> degrees, int[] strings, int at, FretPosition low, FretPosition high)
    {
        var (first, second) = (ImmutableArray.CreateBuilder<PlacedTone>(), ImmutableArray.CreateBuilder<PlacedTone>());
        var root = context.Instrument.MidiNumberAt(low.String, low.Fret);
        foreach (var (degree, above) in (IEnumerable<(Degree, int)>)[.. degrees.Select(d => (d, d.HalfSteps)), (Degree.Root, 12)])
        {
            if (Place(context, strings.AsSpan(at), root + above, low.Fret) is not { } one || Place(context, strings.AsSpan(at - 1), root + above, high.Fret) is not { } two) continue;
            first.Add(NeckWindow.At(context.Instrument, step, degree, one));
            second.Add(NeckWindow.At(context.Instrument, step, degree, two));
        }
        return (first.ToImmutable(), second.ToImmutable());
    }

    // On the highest-sounding string that has it at the hand's first fret or beyond; else a fret behind.
    private static FretPosition? Place(ExerciseContext context, ReadOnlySpan<int> strings, int midi, int rootFret)
    {
        FretPosition? fallback = null;
        for (var i = strings.Length - 1; i >= 0; i--)
        {
            var place = new FretPosition(strings[i], midi - context.Instrument.MidiNumberAt(strings[i], 0));
            if (place.Fret < Math.Max(0, rootFret - ReachBack) || place.Fret > Math.Min(rootFret + ReachUp, context.Instrument.PlayableFrets) || !context.Request.Neck.Allows(place)) continue;
            if (place.Fret >= rootFret - ReachBack && place.Fret < rootFret + ReachUp) return place;
            fallback ??= place;
        }
        return fallback;
    }
}

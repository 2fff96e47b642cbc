using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Every chord tone followed by its octave two strings away, over the string between them, without leaving the position.</summary>
internal sealed class StringSkipping : ExerciseStyle
{
    private const int Reach = 4;
    private const double PerFret = 0.1;
    private const double Stretch = 0.3;
    private const double NotTheOctave = 6;

    public override string Name => "string-skipping";
    public override string Title => "String skipping";
    public override string Summary => "Every tone of the chord followed by its octave two strings away, so that a string is skipped each time.";
    public override string Group => "neck";
    public override ImmutableArray<StyleOption> Options => [];
    public override string Instruction(ExerciseRequest request) => "The skipped string stays silent: damp it with the fretting hand.";

    public override Line Generate(ExerciseContext context)
    {
        int? hand = context.Request.Neck.Position;
        return PlacedLine.Write(context, LevelRhythm.ForRuns(context), step =>
        {
            var tones = ImmutableArray.CreateBuilder<PlacedTone>();
            var degrees = ChordStack.FourTones(step);
            foreach (var degree in degrees)
            {
                if (Pair(context, step, degrees, degree, hand) is not { } pair) continue;
                hand ??= pair.Low.Place.Fret;
                tones.Add(pair.Low);
                tones.Add(pair.High);
            }
            return tones.ToImmutable();
        });
    }

    // The tone and what lies over it, as near to the hand as they go.
    private static (PlacedTone Low, PlacedTone High)? Pair(ExerciseContext context, HarmonyStep step, ImmutableArray<Degree> degrees, Degree degree, int? hand)
    {
        var instrument = context.Instrument;
        var comfortable = HandModel.HomeFret(context.Level);
        (PlacedTone, PlacedTone)? best = null;
        var least = double.MaxValue;
        foreach (var number in NeckWindow.Strings(context))
        {
            if (number <= 2) break;
            for (var fret = NoteMath.Modulo(step.Chord.Root.PitchClass + degree.HalfSteps - instrument.MidiNumberAt(number, 0), 12); fret <= instrument.PlayableFrets; fret += 12)
            {
                var low = new FretPosition(number, fret);
                if (!context.Request.Neck.Allows(low)) continue;
                var octave = fret + 12 + instrument.MidiNumberAt(number, 0) - instrument.MidiNumberAt(number - 2, 0);
                for (var above = Math.Max(0, fret - Reach); above <= Math.Min(instrument.PlayableFrets, fret + Reach); above++)
                {
                    var high = new FretPosition(number - 2, above);
                    if (!context.Request.Neck.Allows(high) || DegreeAt(instrument, step, degrees, high) is not { } other) continue;
                    var cost = Math.Abs(fret - (hand ?? 0)) + (PerFret * fret) + (Stretch * Math.Abs(above - fret)) + Math.Max(0, Math.Max(fret, above) - comfortable) + (above == octave ? 0 : NotTheOctave);
                    if (cost >= least) continue;
                    least = cost;
                    best = (NeckWindow.At(instrument, step, degree, low), NeckWindow.At(instrument, step, other, high));
                }
            }
        }
        return best;
    }

    private static Degree? DegreeAt(Instrument instrument, HarmonyStep step, ImmutableArray<Degree> degrees, FretPosition place)
    {
        var above = NoteMath.Modulo(instrument.MidiNumberAt(place.String, place.Fret) - step.Chord.Root.PitchClass, 12);
        foreach (var degree in degrees) if (NoteMath.Modulo(degree.HalfSteps, 12) == above) return degree;
        return null;
    }
}

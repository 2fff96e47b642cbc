using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Intervals above each root, one a chord, as shapes for the hand that can be moved: without open strings, on neighbouring strings where they fit.</summary>
internal sealed class IntervalShapes : ExerciseStyle
{
    private const double PerString = 0.5;
    private const double FromHand = 0.3;
    private const double PerFret = 0.05;
    private const int WidestShape = 5;

    public override string Name => "interval-shapes";
    public override string Title => "Intervals as shapes";
    public override string Summary => "Root and one interval above it, another interval with every chord.";
    public override string Group => "neck";
    public override bool IsAboutPlaces => true;
    public override ImmutableArray<StyleOption> Options => [new("intervals", OptionType.Degrees, "The intervals in turn.", "3 5 7 8 10")];
    public override string Instruction(ExerciseRequest request) => "See the shape before you play it: so many strings across, so many frets up or down.";

    public override Line Generate(ExerciseContext context)
    {
        var intervals = context.Request.Degrees("intervals");
        var turn = 0;
        var hand = context.Request.Neck.Position ?? 3;
        return PlacedLine.Write(context, LevelRhythm.Or(context, EvenRhythms.Beats), step =>
        {
            var interval = intervals.IsEmpty ? new DegreeRequest(new Degree(5), false) : intervals[turn++ % intervals.Length];
            var degree = DegreeResolver.Resolve(interval, step);
            // What the neck has no room for comes an octave lower, or as the root alone.
            if ((Shape(context, step, degree, hand) ?? Shape(context, step, degree.Simple, hand) ?? Shape(context, step, new Degree(8), hand) ?? RootAlone(context, step)) is not { } shape) return [];
            hand = shape.Root.Place.Fret;
            return [shape.Root, shape.Other];
        });
    }

    private static (PlacedTone Root, PlacedTone Other)? Shape(ExerciseContext context, HarmonyStep step, Degree degree, int hand)
    {
        var instrument = context.Instrument;
        var comfortable = HandModel.HomeFret(context.Level);
        (PlacedTone, PlacedTone)? best = null;
        var least = double.MaxValue;
        foreach (var number in NeckWindow.Strings(context))
        {
            for (var fret = NoteMath.Modulo(step.Chord.Root.PitchClass - instrument.MidiNumberAt(number, 0), 12); fret <= instrument.PlayableFrets; fret += 12)
            {
                var root = new FretPosition(number, fret);
                if (!context.Request.Neck.Allows(root)) continue;
                foreach (var other in instrument.PositionsOf(instrument.MidiNumberAt(number, fret) + degree.HalfSteps))
                {
                    if (other == root || !context.Request.Neck.Allows(other)) continue;
                    var apart = Math.Abs(other.Fret - fret);
                    // An open string belongs to no shape that can be moved.
                    var open = (fret == 0 ? 1 : 0) + (other.Fret == 0 ? 1 : 0);
                    var cost = apart + (apart > WidestShape ? apart : 0) + (PerString * Math.Abs(number - other.String)) + (4 * open)
                        + (FromHand * Math.Abs(fret - hand)) + (PerFret * fret) + Math.Max(0, Math.Max(fret, other.Fret) - comfortable);
                    if (cost >= least) continue;
                    least = cost;
                    best = (NeckWindow.At(instrument, step, Degree.Root, root), At(instrument, step, degree, other));
                }
            }
        }
        return best;
    }

    private static (PlacedTone Root, PlacedTone Other)? RootAlone(ExerciseContext context, HarmonyStep step)
    {
        foreach (var number in NeckWindow.Strings(context))
        {
            for (var fret = 0; fret <= context.Instrument.PlayableFrets; fret++)
            {
                var place = new FretPosition(number, fret);
                if (!context.Request.Neck.Allows(place) || NoteMath.Modulo(context.Instrument.MidiNumberAt(number, fret), 12) != step.Chord.Root.PitchClass) continue;
                var root = NeckWindow.At(context.Instrument, step, Degree.Root, place);
                return (root, root);
            }
        }
        return null;
    }

    // Named by the interval itself: a tenth is no third.
    private static PlacedTone At(Instrument instrument, HarmonyStep step, Degree degree, FretPosition place)
    {
        var tone = NeckWindow.At(instrument, step, degree, place);
        return tone with { Pitch = tone.Pitch with { Degree = degree } };
    }
}

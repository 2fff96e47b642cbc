using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>The beat divided more and more finely, bar by bar, with the syllables to count.</summary>
internal sealed class Subdivisions : ExerciseStyle
{
    public override string Name => "subdivisions";
    public override string Title => "Dividing the beat";
    public override string Summary => "Bar by bar the beat is divided more finely: beats, eighths, triplets, sixteenths, and back.";
    public override string Group => "lines";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("tones", OptionType.Degrees, "What is played.", "R"),
        new("triplets", OptionType.Flag, "Whether triplets stand between eighths and sixteenths (where the beat divides in two).", "true"),
    ];

    public override string Instruction(ExerciseRequest request) => "The foot keeps the beat and never changes; only the notes between its taps grow more.";

    public override Line Generate(ExerciseContext context)
    {
        var tones = context.Request.Degrees("tones");
        var withTriplets = context.Request.Flag("triplets");
        var level = context.Level;
        return new CellLine(context, LevelRhythm.Or(context, meter => Ladder(meter, withTriplets, level))) { NotesBeforeRest = 0 }
            .Write((step, _) => ChordCell.Of(tones, step, static _ => true));
    }

    // Parts of a beat, one entry a bar; the first level stays with halves of the beat.
    private static RhythmPattern Ladder(Meter meter, bool withTriplets, int level)
    {
        ReadOnlySpan<int> parts = meter.IsCompound
            ? level <= 1 ? [1, 3] : [1, 3, 6, 3]
            : level <= 1 ? [1, 2] : withTriplets ? [1, 2, 3, 4] : [1, 2, 4, 2];
        var beat = Counting.BeatLength(meter);
        var length = meter.MeasureLength;
        var cells = ImmutableArray.CreateBuilder<RhythmCell>();
        for (var bar = 0; bar < parts.Length; bar++)
        {
            var part = beat / parts[bar];
            for (var at = Fraction.Zero; at < length; at += part)
            {
                cells.Add(new RhythmCell { Start = (length * bar) + at, Duration = Fraction.Min(part, length - at), Count = Counting.SyllableAt(meter, at) });
            }
        }
        return new RhythmPattern(cells.ToImmutable(), length * parts.Length);
    }
}

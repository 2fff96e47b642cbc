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
    public override bool IsAboutPlaces => true;
    public override ImmutableArray<StyleOption> Options =>
    [
        new("of", OptionType.Choice, "What is played: the arpeggio or the scale of each chord, or the scale of the key in all its positions.", "arpeggio") { Choices = ["arpeggio", "scale", "key"] },
    ];

    public override string Instruction(ExerciseRequest request) => "One finger to a fret: find all the tones under the hand before you move it.";

    public override Line Generate(ExerciseContext context)
    {
        var of = context.Request.Word("of");
        var (lowest, highest) = NeckWindow.Frets(context, UsualHighestFret + Span);
        var hand = context.Request.Neck.Position ?? 0;
        return PlacedLine.Write(context, LevelRhythm.ForRuns(context), (step, _) =>
        {
            var degrees = of switch { "scale" => step.Scale, "key" => step.KeyScale, _ => step.BasicTones };
            var shapes = new PositionShapes(context.Instrument, step.Chord.Root, degrees, context.Request.Neck);
            var starts = shapes.Starts(Math.Max(1, lowest), highest - Span);
            if (starts.Count == 0) return [];
            // The next position up; from the top of the neck back to the bottom.
            var start = starts.Find(s => s > hand) is var next and > 0 ? next : starts[0];
            hand = context.Request.Neck.Position is { } fixedHand ? fixedHand - 1 : start;
            ImmutableArray<PlacedTone> up = [.. shapes.From(start).Select(t => NeckWindow.At(context.Instrument, step, t.Degree, t.Place))];
            return [.. up, .. Enumerable.Reverse(up).Skip(1).SkipLast(1)];
        });
    }
}

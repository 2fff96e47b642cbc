using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The chord tones in broken figures.</summary>
internal sealed class BrokenArpeggio : ExerciseStyle
{
    public override string Name => "broken-arpeggio";
    public override string Title => "Broken arpeggios";
    public override string Summary => "The tones of each chord in broken figures: skipping one, in threes, or rocking between high and low.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("figure", OptionType.Choice, "skip: R 5 3 7; threes: R 3 5, 3 5 7, 5 7 8; rocking: R 5 3 5.", "skip") { Choices = ["skip", "threes", "rocking"] },
    ];

    public override string Instruction(ExerciseRequest request) => request.Word("figure") == "threes"
        ? "Groups of three over the beat: keep counting while the accents wander."
        : "Plan the string changes first, then play it evenly.";

    public override Line Generate(ExerciseContext context)
    {
        var figure = context.Request.Word("figure");
        return new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, room) =>
        {
            var tones = ChordStack.FourTones(step);
            return ChordStack.At(tones, tones.Length < 3 ? RootAndFifth(figure) : Indexes(figure, room));
        });
    }

    // A chord of two tones stays within its octave: R 8 5 8, R 5 8 5 or R 5 R 8.
    private static int[] RootAndFifth(string figure) => figure switch
    {
        "threes" => [0, 1, 2, 1],
        "rocking" => [0, 1, 0, 2],
        _ => [0, 2, 1, 2],
    };

    // Bars of six and eight notes have a way of their own to end the figure.
    private static int[] Indexes(string figure, int room) => (figure, room) switch
    {
        ("threes", 8) => [0, 1, 2, 1, 2, 3, 2, 1],
        ("threes", _) => [0, 1, 2, 1, 2, 3, 2, 3, 4, 3, 2, 1],
        ("rocking", _) => [0, 2, 1, 2],
        (_, 6) => [0, 2, 1, 3, 2, 1],
        _ => [0, 2, 1, 3, 2, 4, 3, 1],
    };
}

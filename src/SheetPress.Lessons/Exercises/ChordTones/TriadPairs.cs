using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>The two triads inside a seventh chord.</summary>
internal sealed class TriadPairs : ExerciseStyle
{
    public override string Name => "triads-inside";
    public override string Title => "The triads inside the chord";
    public override string Summary => "The lower triad (R 3 5) and the upper triad (3 5 7) inside each seventh chord.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("triad", OptionType.Choice, "Which of the two; a plain triad has its first inversion for the upper one.", "both") { Choices = ["both", "lower", "upper"] },
    ];

    public override string Instruction(ExerciseRequest request) => "A seventh chord is two triads: hear the lower one, then the one on its third.";

    public override Line Generate(ExerciseContext context)
    {
        var triad = context.Request.Word("triad");
        var passed = 0;
        return new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, room) =>
        {
            // Root and fifth have no triads in them: they are played with the octave.
            var tones = ChordStack.FourTones(step);
            return ChordStack.At(tones, Indexes(tones.Length < 3 ? "lower" : triad, room, passed++));
        });
    }

    // In threes where the room asks for them; where it has three notes only, the two triads take turns from chord to chord.
    private static int[] Indexes(string triad, int room, int chord) => (triad, InThrees: room % 3 == 0 && room % 4 != 0) switch
    {
        ("both", true) when room == 3 => chord % 2 == 0 ? [0, 1, 2] : [1, 2, 3],
        ("both", true) => [0, 1, 2, 1, 2, 3],
        ("lower", true) => [0, 1, 2],
        ("upper", true) => [1, 2, 3],
        ("lower", _) => [0, 1, 2, 1],
        ("upper", _) => [1, 2, 3, 2],
        _ => [0, 1, 2, 0, 1, 2, 3, 2],
    };
}

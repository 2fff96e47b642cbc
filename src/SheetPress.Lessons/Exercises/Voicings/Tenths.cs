using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Root and tenth.</summary>
internal sealed class Tenths : VoicingStyle
{
    public override string Name => "tenths";
    public override string Title => "Tenths";
    public override string Summary => "Root and tenth (the third an octave up) of each chord, together or broken.";
    public override ImmutableArray<StyleOption> Options => [PlayOption];
    public override string Instruction(ExerciseRequest request) => request.Word("play") == "together"
        ? "Pluck both strings with one motion; let the tenth sing and the root carry."
        : "Hold the shape for the whole chord and pluck its two strings in turn; let the tenth sing and the root carry.";

    protected override IEnumerable<ImmutableArray<CellTone>> Shapes(HarmonyStep step, ExerciseRequest request)
    {
        var third = CellTone.Of(DegreeResolver.Resolve(new DegreeRequest(new Degree(3), false), step));
        // A chord of root and fifth has no tenth: it is played as it is.
        yield return [CellTone.Of(Degree.Root), third.Degree is { Number: 5 } ? third : third.Up(1)];
    }
}

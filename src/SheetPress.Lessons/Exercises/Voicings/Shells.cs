using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Root, third and seventh, in one of their two usual orders.</summary>
internal sealed class Shells : VoicingStyle
{
    public override string Name => "shells";
    public override string Title => "Shell voicings";
    public override string Summary => "Root, third and seventh of each chord, close or with the third on top as a tenth.";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("shape", OptionType.Choice, "R 3 7, R 7 10, or whichever moves less.", "nearest") { Choices = ["nearest", "root-third-seventh", "root-seventh-tenth"] },
        PlayOption,
    ];

    public override string Instruction(ExerciseRequest request) => "Three notes are the whole chord: hear how third and seventh change places when the root moves by a fourth.";

    protected override IEnumerable<ImmutableArray<CellTone>> Shapes(HarmonyStep step, ExerciseRequest request)
    {
        var shape = request.Word("shape");
        var third = DegreeResolver.Resolve(new DegreeRequest(new Degree(3), false), step);
        var seventh = DegreeResolver.Resolve(new DegreeRequest(new Degree(7), false), step);
        // Root and fifth alone have their octave on top.
        if (third.Number == 5)
        {
            yield return [CellTone.Of(Degree.Root), CellTone.Of(third), CellTone.Of(new Degree(8))];
            yield break;
        }
        // A triad has no seventh: root, fifth and tenth are its open form.
        if (seventh.Number == 8) seventh = DegreeResolver.Resolve(new DegreeRequest(new Degree(5), false), step);
        var root = CellTone.Of(Degree.Root);
        if (shape != "root-seventh-tenth") yield return [root, CellTone.Of(third), CellTone.Of(seventh)];
        if (shape != "root-third-seventh") yield return [root, CellTone.Of(seventh), CellTone.Of(third).Up(1)];
    }
}

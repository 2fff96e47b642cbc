using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One line of scale steps that goes on through the chord changes, each chord with its own scale, and turns only at the ends of its range.</summary>
internal sealed class ConnectedScales : ConnectedLine
{
    public override string Name => "connected-scales";
    public override string Title => "Connected scales";
    public override string Summary => "One unbroken line of scale steps: at each chord it goes on to the nearest tone of that chord's scale, and turns only at the end of the range.";
    public override string Group => "scales";
    public override ImmutableArray<StyleOption> Options =>
    [
        .. CommonOptions,
        new("scale", OptionType.Choice, "The scale suggested for each chord, or the notes of the key.", "chord") { Choices = ["chord", "key"] },
        ChangedNotes.Option,
    ];

    public override string Instruction(ExerciseRequest request) => "Keep going through the changes: the next note is the nearest one of the new scale. Say which degree it is.";

    protected override Func<HarmonyStep, NamedPitch, StrokeMarks>? MarksOf(ExerciseRequest request) => ChangedNotes.Marks(request);

    protected override ImmutableArray<Degree> TonesOf(ExerciseContext context, HarmonyStep step) => context.Request.Word("scale") == "key" ? step.KeyScale : step.Scale;
}

using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One line of chord tones that keeps its direction through the chord changes and turns only at the ends of its range.</summary>
internal sealed class ConnectedArpeggio : ConnectedLine
{
    public override string Name => "connected-arpeggios";
    public override string Title => "Connected arpeggios";
    public override string Summary => "One unbroken line of chord tones: each chord is entered at its nearest tone, and the direction is kept up to the end of the range.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options => CommonOptions;

    public override string Instruction(ExerciseRequest request) => "Do not start over with the chord: go on to its nearest tone in the direction you are moving.";

    protected override ImmutableArray<Degree> TonesOf(ExerciseContext context, HarmonyStep step) => ChordStack.FourTones(step);
}

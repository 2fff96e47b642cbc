using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>A cell of chosen degrees over every chord.</summary>
internal sealed class ToneCell : ExerciseStyle
{
    public override string Name => "tone-cell";
    public override string Title => "Chord-tone cell";
    public override string Summary => "A cell of degrees that you choose, over every chord.";
    public override string Group => "chord tones";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("tones", OptionType.Degrees, "The degrees in playing order: a plain 3 or 7 is the one the chord has, b7 or n7 is exact.", "R 5 8 5"),
    ];
    public override string Instruction(ExerciseRequest request) => $"Play {{{string.Join(" ", request.Degrees("tones").Select(t => t.Degree.ToDisplayString()))}}} over each chord and say the degrees out loud.";

    public override Line Generate(ExerciseContext context)
    {
        var tones = context.Request.Degrees("tones");
        return new CellLine(context, LevelRhythm.Or(context, context.Level <= 1 ? EvenRhythms.Beats : EvenRhythms.Eighths)).Write((step, _) => ChordCell.Of(tones, step, static _ => false));
    }
}

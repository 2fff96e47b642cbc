using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Chord tones, and at the end of each chord a named approach to the next.</summary>
internal sealed class ApproachStyle : ExerciseStyle
{
    public override string Name => "approaches";
    public override string Title => "Approach notes";
    public override string Summary => "Chord tones that end with an approach into the next root: " + Leads.Explained + ".";
    public override string Group => "links";
    public override ImmutableArray<StyleOption> Options =>
    [
        new("approach", OptionType.Choice, "How the next root is reached.", "chromatic-below") { Choices = Leads.Names },
        new("tones", OptionType.Degrees, "The chord tones before it.", "R 3 5 8"),
    ];

    public override string Instruction(ExerciseRequest request) => request.Word("approach") switch
    {
        "enclosure" => "Both neighbours, then the note itself: the next root is surrounded before it sounds.",
        "dominant" => "The fifth of the next root comes before it, as if its dominant chord had passed by.",
        _ => "The last note of each chord belongs to the next one already: let it pull.",
    };

    public override Line Generate(ExerciseContext context)
    {
        var tones = context.Request.Degrees("tones");
        var rhythm = LevelRhythm.Or(context, context.Level <= 3 ? EvenRhythms.Beats : EvenRhythms.Eighths);
        return new CellLine(context, rhythm) { Lead = Leads.Of(context.Request.Word("approach")) }
            .Write((step, _) => ChordCell.Of(tones, step, static i => i == 0));
    }
}

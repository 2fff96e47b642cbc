using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Every chord tone followed by its octave, over the string between them.</summary>
internal sealed class StringSkipping : ExerciseStyle
{
    public override string Name => "string-skipping";
    public override string Title => "String skipping";
    public override string Summary => "Every tone of the chord followed by its octave, so that a string is skipped each time: in one place of the neck, for the advanced (level 5) climbing.";
    public override string Group => "neck";
    public override bool IsAboutPlaces => true;
    public override ImmutableArray<StyleOption> Options => [];
    public override string Instruction(ExerciseRequest request) => "The skipped string stays silent: damp it with the fretting hand.";

    public override Line Generate(ExerciseContext context)
    {
        var octaves = new SkippedOctaves(context);
        // Where the tuning has no octave over one string, the notes alone are given.
        if (context.Lesson.Progression.Chords.Any(c => c.Chord is { } chord && !octaves.HasAll(chord))) return Unplaced(context);
        return PlacedLine.Write(context, LevelRhythm.ForRuns(context), (step, room) => octaves.Over(step, ChordStack.FourTones(step), room));
    }

    private static Line Unplaced(ExerciseContext context) => new CellLine(context, LevelRhythm.ForRuns(context)).Write((step, _) =>
    {
        var tones = ChordStack.FourTones(step);
        var figure = ImmutableArray.CreateBuilder<CellTone>();
        for (var i = 0; i < tones.Length; i++)
        {
            figure.Add(ChordStack.At(tones, i));
            figure.Add(ChordStack.At(tones, i + tones.Length));
        }
        return figure.ToImmutable();
    });
}

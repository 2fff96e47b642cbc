using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One note of each chord, everywhere on the neck.</summary>
internal sealed class FindNote : ExerciseStyle
{
    private const int UsualHighestFret = 12;

    public override string Name => "find-the-note";
    public override string Title => "Find the note everywhere";
    public override string Summary => "The root of each chord, or another tone of it, in all its places on the neck.";
    public override string Group => "neck";
    public override ImmutableArray<StyleOption> Options => [new("tone", OptionType.Degrees, "The tone to find.", "R")];
    public override string Instruction(ExerciseRequest request) => "Say the name of the note each time you find it; do not go by patterns, look for it.";

    public override Line Generate(ExerciseContext context)
    {
        var request = context.Request.Degrees("tone") is [var first, ..] ? first : new DegreeRequest(Degree.Root, false);
        var (lowest, highest) = NeckWindow.Frets(context, UsualHighestFret);
        return PlacedLine.Write(context, LevelRhythm.Or(context, EvenRhythms.Beats), step =>
        {
            var degree = request.Degree == Degree.Root ? step.BassDegree : DegreeResolver.Resolve(request, step);
            var note = step.Chord.NoteOf(degree);
            var tones = new List<PlacedTone>();
            foreach (var number in NeckWindow.Strings(context))
            {
                for (var fret = lowest; fret <= highest; fret++)
                {
                    var place = new FretPosition(number, fret);
                    if (NoteMath.Modulo(context.Instrument.MidiNumberAt(number, fret), 12) == note.PitchClass) tones.Add(NeckWindow.At(context.Instrument, step, degree, place));
                }
            }
            return [.. tones.OrderBy(t => t.Pitch.Pitch.MidiNumber).ThenBy(t => t.Place.Fret)];
        });
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>Small chord diagrams over the chord symbols of an exercise.</summary>
internal static class ChordShapes
{
    private const int LeastTones = 3;

    /// <summary>
    /// The measures of the progression with a diagram at the first symbol of each chord: the grip that the line strikes there, else
    /// the fullest that the hand can hold.
    /// </summary>
    public static ImmutableArray<FrameMeasure> Over(ExerciseContext context, Line line)
    {
        var measures = context.Progression.Measures;
        if (context.Instrument.Family == InstrumentFamily.Bass)
        {
            context.Diagnostics.Add(context.Request.Span, NoWholeChords(context.Instrument.Name));
            return measures;
        }
        var track = HarmonyTrack.Of(context);
        var range = NeckRange.Of(context);
        var finder = new FullChordFinder(context, range, new VoicingFinder(context, range));
        var shown = new HashSet<Chord>();
        var result = ImmutableArray.CreateBuilder<FrameMeasure>(measures.Length);
        var start = Fraction.Zero;
        foreach (var measure in measures)
        {
            var harmonies = measure.Harmonies.ToBuilder();
            for (var i = 0; i < harmonies.Count; i++)
            {
                if (harmonies[i].Chord is not { } chord || !shown.Add(chord)) continue;
                var at = start + harmonies[i].Offset;
                harmonies[i] = harmonies[i] with { Frame = Struck(line, at) ?? Full(finder, track.At(at)) };
            }
            result.Add(measure with { Harmonies = harmonies.ToImmutable() });
            start += measure.Length;
        }
        return result.MoveToImmutable();
    }

    private static ImmutableArray<FretPosition>? Struck(Line line, Fraction at)
    {
        foreach (var note in line.Notes)
        {
            if (note.Start == at && note.Tones.Length >= LeastTones && note.Tones.All(t => t.Position is not null && t.Head == Notehead.Normal)) return [.. note.Tones.Select(t => t.Position!.Value)];
        }
        return null;
    }

    private static ImmutableArray<FretPosition> Full(FullChordFinder finder, HarmonyStep? step) =>
        step is not null && finder.Find(step).FirstOrDefault() is { Places.IsDefaultOrEmpty: false } voicing ? voicing.Places : [];

    private static Problem NoWholeChords(string instrument) => new(
        DiagnosticCodes.WrongInstrument,
        Severity.Warning,
        $"There are no chord shapes over the staff: a {instrument} does not strum whole chords.",
        "Take shapes out of 'show'; a shape of your own can stand among the lesson's diagrams.");
}

using System.Globalization;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>The path of an exercise along the neck.</summary>
internal static class PathDiagram
{
    /// <summary>Most notes shown when the lesson does not choose measures.</summary>
    private const int MostNotes = 16;

    /// <summary>The diagram; null when there is nothing to show.</summary>
    public static NeckDiagram? Make(BuiltLesson built, DiagramRequest request, HandoutWording wording)
    {
        if (request.Exercise >= built.Lesson.Exercises.Length) return null;
        // A ladder makes several exercises of one: the last is the whole.
        var wanted = built.Lesson.Exercises[request.Exercise].Span;
        var at = -1;
        for (var i = 0; i < built.Exercises.Length; i++) if (built.Exercises[i].Request.Span == wanted) at = i;
        if (at < 0) return null;
        // In the exercise's own meter, on its own instrument.
        var score = built.Exercises[at].Score;
        var measures = score.Measures;
        var (start, number) = (Fraction.Zero, 0);
        var (from, to) = (request.FromMeasure ?? 0, request.ToMeasure ?? measures.Length - 1);
        var steps = new List<PathStep>();
        for (var m = 0; m <= to && m < measures.Length; m++)
        {
            var end = start + measures[m].Length;
            var notes = built.Exercises[at].Line.Notes.Where(n => n.Start >= start && n.Start < end && n.Tones.Any(t => t.Position is not null)).ToList();
            start = end;
            if (m < from) continue;
            // As many whole bars as one picture can hold.
            if (request.ToMeasure is null && steps.Count > 0 && number + notes.Count > MostNotes)
            {
                to = m - 1;
                break;
            }
            foreach (var note in notes)
            {
                number++;
                foreach (var tone in note.Tones) if (tone.Position is { } place) steps.Add(new PathStep(place, number, tone.Degree?.Simple == Degree.Root));
            }
        }
        if (steps.Count == 0) return null;
        var diagram = NeckDiagrams.Path(score.Instrument, steps);
        return diagram with
        {
            FirstFret = Math.Max(1, Math.Min(request.FromFret ?? diagram.FirstFret, diagram.FirstFret)),
            LastFret = Math.Max(request.ToFret ?? diagram.LastFret, diagram.LastFret),
            Caption = Caption(at + 1, from + 1, Math.Min(to, measures.Length - 1) + 1, wording),
        };
    }

    private static string Caption(int exercise, int from, int to, HandoutWording wording) =>
        string.Format(CultureInfo.InvariantCulture, from == to ? wording.PathOfBar : wording.PathOfBars, exercise, from, to);
}

using System.Text.Json;
using SheetPress.Lessons;
using SheetPress.Publishing;

namespace SheetPress.Cli;

/// <summary>Writes the JSON report of a build: files, pages, measures, notes, findings, fingering, milliseconds by stage.</summary>
internal static class ReportWriter
{
    public static void Write(string path, IReadOnlyList<LessonOutcome> outcomes) => AtomicFile.Write(path, stream =>
    {
        using var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" });
        json.WriteStartObject();
        json.WriteStartArray("lessons");
        foreach (var outcome in outcomes) WriteLesson(json, outcome);
        json.WriteEndArray();
        json.WriteStartObject("totals");
        json.WriteNumber("lessons", outcomes.Count);
        json.WriteNumber("written", outcomes.Count(o => o.Published is not null));
        json.WriteNumber("pages", outcomes.Sum(o => o.Published?.Pages ?? 0));
        json.WriteNumber("measures", outcomes.Sum(o => o.Published?.Measures ?? 0));
        json.WriteNumber("notes", outcomes.Sum(o => o.Published?.Notes ?? 0));
        json.WriteNumber("errors", outcomes.Sum(o => o.Diagnostics.Items.Count(d => d.Severity == Severity.Error)));
        json.WriteNumber("warnings", outcomes.Sum(o => o.Diagnostics.Items.Count(d => d.Severity == Severity.Warning)));
        json.WriteEndObject();
        json.WriteEndObject();
    });

    private static void WriteLesson(Utf8JsonWriter json, LessonOutcome outcome)
    {
        json.WriteStartObject();
        json.WriteString("source", outcome.Path);
        if (outcome.Built is { } built) json.WriteString("lesson", built.Lesson.Id);
        json.WriteStartArray("problems");
        foreach (var item in outcome.Diagnostics.Sorted())
        {
            json.WriteStartObject();
            json.WriteString("severity", item.Severity == Severity.Error ? "error" : "warning");
            json.WriteString("code", item.Code);
            json.WriteNumber("line", item.Position.Line);
            json.WriteNumber("column", item.Position.Column);
            json.WriteString("message", item.Message);
            json.WriteString("advice", item.Advice);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        if (outcome.FileTrouble is { } trouble) json.WriteString("file-trouble", trouble);
        if (outcome.Published is { } published) WritePublished(json, outcome, published);
        json.WriteEndObject();
    }

    private static void WritePublished(Utf8JsonWriter json, LessonOutcome outcome, PublishedLesson published)
    {
        json.WriteStartArray("files");
        foreach (var file in published.Files) json.WriteStringValue(file);
        json.WriteEndArray();
        json.WriteNumber("pages", published.Pages);
        json.WriteNumber("measures", published.Measures);
        json.WriteNumber("notes", published.Notes);
        json.WriteStartArray("missing-characters");
        foreach (var character in published.MissingCharacters) json.WriteStringValue(character);
        json.WriteEndArray();
        json.WriteStartArray("exercises");
        foreach (var exercise in outcome.Built!.Exercises) WriteExercise(json, exercise);
        json.WriteEndArray();
        json.WriteStartObject("milliseconds");
        json.WriteNumber("read-and-build", Math.Round(outcome.ReadMilliseconds, 2));
        foreach (var stage in published.Stages) json.WriteNumber(stage.Stage, Math.Round(stage.Milliseconds, 2));
        json.WriteEndObject();
    }

    private static void WriteExercise(Utf8JsonWriter json, BuiltExercise exercise)
    {
        json.WriteStartObject();
        json.WriteString("name", exercise.Score.Id);
        json.WriteString("title", exercise.Score.Title);
        json.WriteString("style", exercise.Request.Style.Name);
        json.WriteNumber("measures", exercise.Score.Measures.Length);
        json.WriteNumber("notes", exercise.Line.Notes.Sum(n => n.Tones.Length));
        if (exercise.Fingering is { } hand)
        {
            json.WriteStartObject("fingering");
            json.WriteNumber("lowest-position", hand.LowestPosition);
            json.WriteNumber("highest-position", hand.HighestPosition);
            json.WriteNumber("shifts", hand.Shifts);
            json.WriteNumber("widest-stretch-mm", Math.Round(hand.WidestStretch, 1));
            json.WriteStartObject("hardest-note");
            var note = exercise.Line.Notes[hand.HardestNote];
            json.WriteNumber("quarter", note.Start.ToDouble());
            json.WriteString("pitch", note.Tones[0].Pitch.ToString());
            if (note.Tones[0].Position is { } place)
            {
                json.WriteNumber("string", place.String);
                json.WriteNumber("fret", place.Fret);
            }
            json.WriteEndObject();
            json.WriteEndObject();
        }
        json.WriteEndObject();
    }
}

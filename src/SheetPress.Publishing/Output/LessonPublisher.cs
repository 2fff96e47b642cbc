using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using SheetPress.Engraving;
using SheetPress.Lessons;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Writes all files of a lesson. Everything is made in memory first; a file appears only when it is whole.</summary>
public static class LessonPublisher
{
    /// <summary>Publishes a lesson.</summary>
    /// <param name="built">The lesson with its music.</param>
    /// <param name="options">What to write, and where.</param>
    /// <exception cref="IOException">A file cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">A file may not be written.</exception>
    public static PublishedLesson Publish(BuiltLesson built, PublishOptions options)
    {
        var lesson = built.Lesson;
        var folder = new OutputFolder(Path.Combine(options.OutputFolder, lesson.Id));
        var clock = new StageClock();

        var content = HandoutAssembler.Assemble(built, HandoutWording.English);
        var document = SheetComposer.Compose(content, PageStyles.For(lesson.Pages, options.Paper));
        clock.Lap("compose");
        folder.Write($"{lesson.Id}.pdf", stream => PdfWriter.Write(document, stream));
        clock.Lap("pdf");

        ImmutableArray<Score> scores = [.. built.Exercises.Select(e => e.Score)];
        if (!scores.IsEmpty)
        {
            WriteMusicXml(folder, lesson, scores);
            clock.Lap("musicxml");
            WriteMidi(folder, lesson, scores);
            clock.Lap("midi");
        }
        if (options.Images)
        {
            WriteImages(folder, document, options.ImageResolution);
            clock.Lap("images");
        }
        folder.RemoveLeftovers();
        return new PublishedLesson
        {
            Id = lesson.Id,
            Files = folder.Written,
            Pages = document.Pages.Length,
            Measures = scores.Sum(s => s.Measures.Length),
            Notes = built.Exercises.Sum(e => e.Line.Notes.Sum(n => n.Tones.Length)),
            MissingCharacters = [.. MissingCharacters.In(document).Select(r => r.ToString())],
            Stages = clock.Laps,
        };
    }

    private static void WriteMusicXml(OutputFolder folder, Lesson lesson, ImmutableArray<Score> scores)
    {
        var header = MusicXmlHeader.Of(lesson);
        folder.Write($"{lesson.Id}.musicxml", stream => MusicXmlWriter.WriteLesson(scores, header, stream));
        for (var i = 0; i < scores.Length; i++)
        {
            var (score, number) = (scores[i], i + 1);
            folder.Write(Path.Combine("exercises", score.Id + ".musicxml"), stream => MusicXmlWriter.WriteExercise(score, number, header, stream));
        }
    }

    private static void WriteMidi(OutputFolder folder, Lesson lesson, ImmutableArray<Score> scores)
    {
        folder.Write($"{lesson.Id}.mid", stream => MidiWriter.WriteLesson(scores, lesson.Title, MidiOptions.Default, stream));
        foreach (var score in scores)
        {
            folder.Write(Path.Combine("exercises", score.Id + ".mid"), stream => MidiWriter.WriteExercise(score, MidiOptions.Default, stream));
        }
    }

    private static void WriteImages(OutputFolder folder, SheetDocument document, double resolution)
    {
        for (var i = 0; i < document.Pages.Length; i++)
        {
            var page = document.Pages[i];
            var name = string.Create(CultureInfo.InvariantCulture, $"page-{i + 1:00}");
            folder.Write(name + ".png", stream => PngWriter.Write(page, stream, resolution));
            folder.Write(name + ".svg", stream => SvgWriter.Write(page, stream, document.Title));
        }
    }

    private sealed class StageClock
    {
        private readonly ImmutableArray<StageTime>.Builder _laps = ImmutableArray.CreateBuilder<StageTime>();
        private long _start = Stopwatch.GetTimestamp();

        public ImmutableArray<StageTime> Laps => _laps.ToImmutable();

        public void Lap(string stage)
        {
            _laps.Add(new StageTime(stage, Stopwatch.GetElapsedTime(_start).TotalMilliseconds));
            _start = Stopwatch.GetTimestamp();
        }
    }
}

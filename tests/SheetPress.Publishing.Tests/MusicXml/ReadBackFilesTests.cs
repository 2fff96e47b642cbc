using System.Text.Json;
using SheetPress.Lessons;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>
/// Writes files for the readers of tests/readback, which compare them with the scores: into the folder that READBACK_DIR names
/// (tests/readback/musicxml.ci.sh), else into a temporary one that goes again.
/// </summary>
public class ReadBackFilesTests
{
    [Fact]
    public void Files_and_their_scores_are_written()
    {
        var wanted = Environment.GetEnvironmentVariable("READBACK_DIR");
        var folder = Directory.CreateDirectory(wanted ?? Path.Combine(Path.GetTempPath(), Path.GetRandomFileName())).FullName;
        try
        {
            foreach (var score in SampleScores.All) Save(folder, score.Id, Written.Bytes(score), score.Title, [score]);
            Save(folder, "lesson", Written.LessonBytes(SampleScores.All), Written.Header.Title, SampleScores.All);
            var written = SampleScores.All.Length + 1;
            foreach (var path in LessonFiles.Find([Path.Combine(RepositoryRoot(), "lesson-sources")]).Paths) written += SaveLesson(Path.Combine(folder, "lessons"), path);
            Directory.GetFiles(folder, "*.musicxml", SearchOption.AllDirectories).Length.ShouldBe(written);
        }
        finally
        {
            if (wanted is null) Directory.Delete(folder, recursive: true);
        }
    }

    // A demo lesson under the names that a build gives its files, so that both can be compared.
    private static int SaveLesson(string folder, string path)
    {
        var (source, bag) = LessonFiles.Load(path);
        var lesson = LessonReader.Read(source, bag).ShouldNotBeNull(path);
        var built = LessonBuilder.Build(lesson, bag);
        bag.HasErrors.ShouldBeFalse(path);
        var header = MusicXmlHeader.Of(lesson);
        var scores = built.Exercises.Select(e => e.Score).ToList();
        Save(Path.Combine(folder, lesson.Id), lesson.Id, Written.LessonBytes(scores, header), header.Title, scores);
        for (var i = 0; i < scores.Count; i++) Save(Path.Combine(folder, lesson.Id, "exercises"), scores[i].Id, Written.Bytes(scores[i], header, i + 1), scores[i].Title, [scores[i]]);
        return scores.Count + 1;
    }

    private static string RepositoryRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "SheetPress.sln"))) folder = folder.Parent.ShouldNotBeNull();
        return folder.FullName;
    }

    private static void Save(string folder, string name, byte[] musicXml, string title, IReadOnlyList<Score> scores)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllBytes(Path.Combine(folder, name + ".musicxml"), musicXml);
        var dump = ScoreDump.Of(title, scores);
        JsonDocument.Parse(dump).RootElement.GetProperty("measures").GetArrayLength().ShouldBe(scores.Sum(s => s.Measures.Length));
        File.WriteAllBytes(Path.Combine(folder, name + ".score.json"), dump);
    }
}

using System.Text.Json;
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
            Directory.GetFiles(folder, "*.musicxml").Length.ShouldBe(SampleScores.All.Length + 1);
        }
        finally
        {
            if (wanted is null) Directory.Delete(folder, recursive: true);
        }
    }

    private static void Save(string folder, string name, byte[] musicXml, string title, IReadOnlyList<Score> scores)
    {
        File.WriteAllBytes(Path.Combine(folder, name + ".musicxml"), musicXml);
        var dump = ScoreDump.Of(title, scores);
        JsonDocument.Parse(dump).RootElement.GetProperty("measures").GetArrayLength().ShouldBe(scores.Sum(s => s.Measures.Length));
        File.WriteAllBytes(Path.Combine(folder, name + ".score.json"), dump);
    }
}

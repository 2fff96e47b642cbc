using SheetPress.Publishing.Tests.MusicXml;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests;

/// <summary>
/// Writes MIDI files for the reader of tests/readback, which compares them with the scores: into the folder that READBACK_DIR names
/// (tests/readback/midi.ci.sh), else into a temporary one that goes again.
/// </summary>
public class MidiReadBackFilesTests
{
    [Fact]
    public void Files_and_their_scores_are_written()
    {
        var wanted = Environment.GetEnvironmentVariable("READBACK_DIR");
        var folder = Directory.CreateDirectory(wanted ?? Path.Combine(Path.GetTempPath(), Path.GetRandomFileName())).FullName;
        try
        {
            // Swing moves notes from where they are written: the reader compares straight ones, the tests of this folder the others.
            foreach (var score in SampleScores.All)
            {
                File.WriteAllBytes(Path.Combine(folder, score.Id + ".mid"), MidiScores.Bytes(score with { Feel = Feel.Straight }));
                File.WriteAllBytes(Path.Combine(folder, score.Id + ".score.json"), ScoreDump.Of(score.Title, [score]));
            }
            Directory.GetFiles(folder, "*.mid").Length.ShouldBe(SampleScores.All.Length);
        }
        finally
        {
            if (wanted is null) Directory.Delete(folder, recursive: true);
        }
    }
}

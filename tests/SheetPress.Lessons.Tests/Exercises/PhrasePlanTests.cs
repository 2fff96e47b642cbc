using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

/// <summary>Where grooves have their fills: at the ends of phrases as players count them (common practice).</summary>
public class PhrasePlanTests
{
    [Theory]
    // Eight bars that end on a held chord: the second fill leads to it.
    [InlineData("C | F | C | F | C | F | G | C", 4, "...x..x.")]
    // The same with a repeat: the last bar leads back to the first.
    [InlineData("|: C | F | C | F | C | F | G | C :|", 4, "...x...x")]
    [InlineData("C | F | C | F | C | F | G | C", 0, "........")]
    [InlineData("C | F | C | F | C | F | G | C", 8, "......x.")]
    // A pickup is no bar of the phrase.
    [InlineData("[pickup 1] G | |: C | F | C | F | C | F | G | C :|", 4, "....x...x")]
    // Sections are counted from their marks, and their last bars lead on.
    [InlineData("[A] C | F | C | F | G | G | [B] C | F | G | C", 4, "...x.x..x.")]
    [InlineData("C | F | G || F | C | G | F | C", 4, "..x...x.")]
    // A bar left over belongs to the phrase before it.
    [InlineData("|: C | F | C | F | G :| C | F", 4, "....xx.")]
    // First and second ending.
    [InlineData("|: C | F | G |1. C :|2. C", 4, "...x.")]
    public void Phrases_are_counted_as_players_count_them(string progression, int every, string expected)
    {
        var source = new SourceText("t.yaml", $"title: T\nkey: C major\nprogression: |\n  {progression}\nexercises: [rock-eighths]\n");
        var bag = new DiagnosticBag(source);
        var lesson = LessonReader.Read(source, bag).ShouldNotBeNull(string.Join('\n', bag.Items.Select(DiagnosticPrinter.Print)));
        var track = HarmonyTrack.Of(new ExerciseContext(lesson, lesson.Exercises[0], bag));
        string.Concat(PhrasePlan.BarsWithFill(lesson.Progression, track, every).Select(x => x ? 'x' : '.')).ShouldBe(expected);
    }
}

using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

/// <summary>What is joined over a barline that is never played through is parted there. Common practice (from memory): a tie into a second ending would hold what was not sounding.</summary>
public class UnplayedJoinsTests
{
    private const string Endings = "|: C | F |1. G :|2. C ||";

    [Theory]
    [InlineData(Endings, "w C2 | w F2 | h G2 C3 | h - E2", "C2 F2 G2 C3 C3 E2")]
    [InlineData(Endings, "w C2 | h F2 G2 | h - C3 | w E2", "C2 F2 G2~ ~G2 C3 E2")]
    [InlineData("|: C | F :| G | C", "w C2 | w F2 | h - G2 | w C2", "C2 F2~ ~F2 G2 C2")]
    [InlineData("[segno] C | F [to coda] | G [D.S. al Coda] | [coda] C", "w C2 | w F2 | w G2 | h - C2", "C2 F2 G2 G2 C2")]
    [InlineData("[segno] C | F [to coda] | G [D.S. al Coda] | [coda] C", "w C2 | w F2 | h - G2 | w C2", "C2 F2~ ~F2 G2 C2")]
    public void A_note_held_into_what_does_not_follow_is_struck_anew(string progression, string line, string expected)
    {
        var events = Events(progression, line);
        string.Join(' ', events.Select(e => e.Tones[0]).Select(t => $"{(t.TieStop ? "~" : "")}{t.Pitch}{(t.TieStart ? "~" : "")}")).ShouldBe(expected);
    }

    [Fact]
    public void No_slide_and_no_slur_leads_over_it()
    {
        var events = Events(Endings, "w C2 | h F2 G2:slur | h G2 A2:slide | h C3:end-slur D3");
        events.Select(e => e.Connection).ShouldAllBe(c => c == Connection.None);
        events.Select(e => e.SlurStart).ShouldBe([false, false, true, false, false, false, false]);
        events.Select(e => e.SlurStop).ShouldBe([false, false, false, false, true, false, false]);
        Events(Endings, "w C2 | h F2 G2 | h G2 A2:slur | h C3:end-slur D3").ShouldAllBe(e => !e.SlurStart && !e.SlurStop);
        Events(Endings, "w C2 | h F2 G2:slide | h A2 C3 | h C3 D3")[2].Connection.ShouldBe(Connection.Slide);
    }

    private static List<ScoreEvent> Events(string progression, string line)
    {
        var lesson = MarkedLesson.Good($"title: Tiny\nkey: C major\ninstrument: bass-4\nprogression: \"{progression}\"\nexercises:\n  - style: own-line\n    line: {line}\n");
        var bag = new DiagnosticBag(lesson.Source);
        return [.. LessonBuilder.Build(lesson, bag).Exercises[0].Score.Measures.SelectMany(m => m.Voices[0].Events)];
    }
}

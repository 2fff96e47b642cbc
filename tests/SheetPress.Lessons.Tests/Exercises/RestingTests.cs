using SheetPress.Scores;

namespace SheetPress.Lessons.Tests;

/// <summary>Where the last chord of an exercise comes to rest: on a beat of its second half. Common practice: a line does not end between beats where a beat is left.</summary>
public class RestingTests
{
    [Theory]
    [InlineData(4, 4, "e e e e e e e e", "0 1/2 1 3/2 2")]
    [InlineData(4, 4, "q. e q. e", "0 3/2 2")]
    [InlineData(6, 8, "q e q e", "0 1 3/2")]
    [InlineData(12, 8, "q e q e q e q e", "0 1 3/2 5/2 3")]
    [InlineData(3, 4, "q. e q", "0 3/2 2")]
    [InlineData(2, 4, "q. e", "0 3/2")]
    public void The_last_chord_rests_on_a_beat(int beats, int unit, string rhythm, string expected)
    {
        var bag = new DiagnosticBag(new SourceText("", ""));
        var of = new Meter(beats, unit);
        var pattern = RhythmReader.ReadValues(LocatedText.At(rhythm, 0), of, bag);
        bag.Items.ShouldBeEmpty();
        var line = LessonMaker.Generate(LessonMaker.Lesson("Cm7 | Fm7 | Cm7", meter: of), LessonMaker.Request("tone-cell", ("tones", "R 5 8 10")) with { Rhythm = pattern }).Line;
        var bar = of.MeasureLength * 2;
        string.Join(' ', line.Notes.Where(n => n.Start >= bar).Select(n => n.Start - bar)).ShouldBe(expected);
        line.Notes[^1].End.ShouldBe(of.MeasureLength * 3);
    }
}

using System.Xml.Linq;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>Titles, identification, credits and the part list.</summary>
public class HeadTests
{
    [Fact]
    public void An_exercise_is_a_movement_of_its_lesson()
    {
        var root = Written.Read(Written.Bytes(SampleScores.Named("swing"), number: 3)).Root!;
        root.Attribute("version")!.Value.ShouldBe("4.0");
        ((string?)root.Element("work")!.Element("work-title")).ShouldBe("Studies");
        ((string?)root.Element("movement-number")).ShouldBe("3");
        ((string?)root.Element("movement-title")).ShouldBe("Study: swing");
        Credits(root).ShouldBe([("title", "Study: swing"), ("subtitle", "Studies"), ("composer", "A. Teacher"), ("rights", "May be copied.")]);
    }

    [Fact]
    public void A_lesson_is_a_work_without_movements()
    {
        var root = Written.Lesson(SampleScores.Named("swing")).Root!;
        root.Element("movement-title").ShouldBeNull();
        Credits(root).ShouldBe([("title", "Studies"), ("subtitle", "for two hands"), ("composer", "A. Teacher"), ("rights", "May be copied.")]);
    }

    [Fact]
    public void What_is_not_said_is_not_written()
    {
        var root = Written.Read(Written.LessonBytes([SampleScores.Named("swing")], new MusicXmlHeader { Title = "Bare" })).Root!;
        root.Descendants("creator").ShouldBeEmpty();
        root.Descendants("rights").ShouldBeEmpty();
        root.Descendants("encoding-date").ShouldBeEmpty();
        Credits(root).ShouldBe([("title", "Bare")]);
    }

    [Fact]
    public void The_software_signs_and_the_day_is_the_one_passed_in()
    {
        var header = Written.Header with { Date = new DateOnly(2024, 3, 9) };
        var encoding = Written.Read(Written.Bytes(SampleScores.Named("swing"), header)).Descendants("encoding").Single();
        encoding.Element("software")!.Value.ShouldMatch(@"^SheetPress \d+\.\d+\.\d+$");
        encoding.Element("encoding-date")!.Value.ShouldBe("2024-03-09");
        encoding.Elements("supports").Select(s => (string)s.Attribute("element")!).ShouldBe(["accidental", "beam"]);
    }

    [Theory]
    // Programs: General MIDI level 1, counted from 1; names of sounds: sounds.xml of MusicXML 4.0.
    [InlineData("plain", "34", "pluck.bass.electric")]
    [InlineData("bends", "26", "pluck.guitar.steel-string")]
    [InlineData("ukulele", "25", "pluck.ukulele")]
    public void The_part_has_the_sound_of_the_instrument(string sample, string program, string sound)
    {
        var part = Written.Exercise(sample).Descendants("score-part").Single();
        part.Descendants("midi-program").Single().Value.ShouldBe(program);
        part.Descendants("instrument-sound").Single().Value.ShouldBe(sound);
        Written.Exercise(sample).Descendants("note").Elements("instrument").ShouldBeEmpty();
    }

    [Fact]
    public void Notes_name_their_instrument_when_a_lesson_changes_it()
    {
        var document = Written.Lesson(SampleScores.Named("plain"), SampleScores.Named("bends"));
        document.Descendants("score-instrument").Select(i => (string)i.Attribute("id")!).ShouldBe(["P1-I1", "P1-I2"]);
        var measures = Written.Measures(document);
        measures[0].Descendants("instrument").Select(i => (string)i.Attribute("id")!).Distinct().ShouldBe(["P1-I1"]);
        measures[^1].Descendants("instrument").Select(i => (string)i.Attribute("id")!).Distinct().ShouldBe(["P1-I2"]);
        measures[^1].Descendants("staff-lines").Single().Value.ShouldBe("6");
    }

    private static List<(string, string)> Credits(XElement root) => [.. root.Elements("credit").Select(c => ((string)c.Element("credit-type")!, (string)c.Element("credit-words")!))];
}

using System.Xml.Linq;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>Numbers, meters, keys, barlines, repeats, jumps and breaks.</summary>
public class MeasureTests
{
    [Fact]
    public void A_pickup_is_implicit_and_number_zero()
    {
        // MusicXML 4.0, measure-attributes: "for a pickup measure, the number attribute is typically set to 0".
        Numbers(Written.Exercise("pickup")).ShouldBe(["0 implicit", "1", "2"]);
    }

    [Fact]
    public void Measures_of_a_lesson_count_on_and_show_their_own_numbers()
    {
        var document = Written.Lesson(SampleScores.Named("pickup"), SampleScores.Named("pickup"), SampleScores.Named("swing"));
        Numbers(document).ShouldBe(["0 implicit", "1", "2", "X1 implicit", "3 shows 1", "4 shows 2", "5 shows 1"]);
        Numbers(Written.Lesson([.. SampleScores.All])).Select(n => n.Split(' ')[0]).ShouldBeUnique();
    }

    [Fact]
    public void Both_parts_of_a_divided_measure_share_one_number()
    {
        var score = SampleScores.Build(SampleScores.Header("divided"), "4/4", "C major", "C2:4 | D2:2 | E2:2 | F2:4",
            change: f => [f[0], f[0] with { Length = 2, RepeatEndTimes = 2 }, f[0] with { Length = 2 }, f[0]]);
        Numbers(Written.Exercise(score)).ShouldBe(["1", "2", "X1 implicit", "3"]);
    }

    [Fact]
    public void Keys_and_meters_are_written_where_they_change()
    {
        var attributes = Written.Measures(Written.Exercise("keys-and-meters")).Select(m => string.Join(' ', m.Elements("attributes").Elements().Where(e => e.Name == "key" || e.Name == "time").Elements().Select(e => e.Value)));
        // Signatures: A major three sharps; B flat lydian that of F major, one flat; C sharp minor four sharps (common practice).
        attributes.ShouldBe(["3 major 6 8", "-1 lydian 5 4", "4 minor 7 8", "2 4"]);
    }

    [Fact]
    public void A_lesson_states_key_meter_and_tempo_again_at_each_exercise()
    {
        var measure = Written.Measures(Written.Lesson(SampleScores.Named("swing"), SampleScores.Named("swing")))[1];
        measure.Elements("attributes").Elements().Select(e => e.Name.LocalName).Distinct().ShouldBe(["key", "time", "clef"]);
        ((string)measure.Element("print")!.Attribute("new-system")!).ShouldBe("yes");
        measure.Descendants("words").First().Value.ShouldBe("2. Study: swing");
        ((string)measure.Descendants("per-minute").Single()).ShouldBe("132.5");
    }

    [Fact]
    public void Repeats_and_endings()
    {
        Barlines(Written.Exercise("repeats")).ShouldBe(
        [
            "",
            "right light-heavy backward 3",
            "left heavy-light forward",
            "left 1, 2 start '1., 2.' right light-heavy 1, 2 stop backward 3",
            "left 3 start '3.' right 3 discontinue",
            "right light-light",
            "left heavy-light forward right light-heavy backward",
        ]);
        // How often is said in words where no ending says it.
        var words = Written.Measures(Written.Exercise("repeats")).Select(m => string.Join(' ', m.Descendants("words").Select(w => w.Value).Where(w => w.Contains('×'))));
        words.ShouldBe(["", "3×", "", "", "", "", ""]);
    }

    [Fact]
    public void The_left_barline_comes_first_and_the_right_one_last()
    {
        var measure = Written.Measures(Written.Exercise("repeats"))[3];
        measure.Elements().First().Name.LocalName.ShouldBe("barline");
        measure.Elements().Last().Name.LocalName.ShouldBe("barline");
    }

    [Fact]
    public void An_exercise_within_a_lesson_repeats_from_its_own_start()
    {
        var document = Written.Lesson(SampleScores.Named("swing"), SampleScores.Named("repeats"));
        Barlines(document)[1].ShouldBe("left heavy-light forward");
        Barlines(Written.Exercise("repeats"))[0].ShouldBe("");
    }

    [Fact]
    public void A_jump_to_the_coda_is_words_signs_and_sounds()
    {
        var measures = Written.Measures(Written.Exercise("to-the-coda"));
        Sounds(measures).ShouldBe(["", "segno=segno1", "tocoda=coda1", "dalsegno=segno1", "coda=coda1"]);
        measures[1].Descendants("segno").Count().ShouldBe(1);
        measures[4].Descendants("coda").Count().ShouldBe(1);
        measures[2].Descendants("words").Single().Value.ShouldBe("To Coda");
        measures[3].Descendants("words").Single().Value.ShouldBe("D.S. al Coda");
        // Marks at the end of a measure come after its last note on the staff.
        measures[3].Elements().TakeWhile(e => e.Name != "backup").Last().Name.LocalName.ShouldBe("direction");
    }

    [Fact]
    public void Back_to_the_start_means_the_start_of_the_exercise()
    {
        Sounds(Written.Measures(Written.Exercise("back-to-the-start"))).ShouldBe(["", "fine=yes", "dacapo=yes"]);
        Sounds(Written.Measures(Written.Lesson(SampleScores.Named("swing"), SampleScores.Named("back-to-the-start"))))
            .ShouldBe(["", "segno=start2", "fine=yes", "dalsegno=start2"]);
    }

    // MusicXML 4.0, "sound": dalsegno and tocoda name a sign of the movement, and a player ends at any fine.
    [Fact]
    public void A_jump_that_leads_nowhere_is_words_alone()
    {
        var whole = SampleScores.Named("to-the-coda");
        var lost = whole with { Measures = [.. whole.Measures.Select(m => m with { Directions = m.Directions.RemoveAll(d => d.Kind is DirectionKind.Segno or DirectionKind.Coda) })] };
        var measures = Written.Measures(Written.Exercise(lost));
        Sounds(measures).ShouldBe(["", "", "", "", ""]);
        measures[3].Descendants("words").Single().Value.ShouldBe("D.S. al Coda");
        var back = SampleScores.Named("back-to-the-start");
        var open = back with { Measures = [.. back.Measures.Select(m => m with { Directions = m.Directions.RemoveAll(d => d.Kind == DirectionKind.DaCapo) })] };
        Sounds(Written.Measures(Written.Exercise(open))).ShouldBe(["", "", ""]);
    }

    [Fact]
    public void Names_of_signs_differ_between_exercises()
    {
        var sounds = Sounds(Written.Measures(Written.Lesson(SampleScores.Named("to-the-coda"), SampleScores.Named("to-the-coda"))));
        sounds.ShouldBe(["", "segno=segno1", "tocoda=coda1", "dalsegno=segno1", "coda=coda1", "", "segno=segno2", "tocoda=coda2", "dalsegno=segno2", "coda=coda2"]);
    }

    [Fact]
    public void Breaks_follow_the_author()
    {
        // Two measures a system, and a break marked before the third.
        var breaks = Written.Measures(Written.Exercise("plain")).Select(m => (string?)m.Element("print")?.Attribute("new-system"));
        breaks.ShouldBe([null, null, "yes", null]);
        var pickup = SampleScores.Named("pickup") with { MeasuresPerSystem = 1 };
        Written.Measures(Written.Exercise(pickup)).Select(m => (string?)m.Element("print")?.Attribute("new-system")).ShouldBe([null, null, "yes"]);
    }

    [Fact]
    public void A_silent_measure_is_one_measure_rest_in_every_meter()
    {
        var rest = Written.Notes(Written.Measures(Written.Exercise("silence"))[0]).Single();
        ((string?)rest.Element("rest")!.Attribute("measure")).ShouldBe("yes");
        ((int)rest.Element("duration")!).ShouldBe(5);
        rest.Element("type").ShouldBeNull();
    }

    [Fact]
    public void Repeated_measures_are_signs_over_written_notes()
    {
        var measures = Written.Measures(Written.Exercise("repeated-measures"));
        measures.Select(m => (string?)m.Descendants("measure-repeat").SingleOrDefault()?.Attribute("type")).ShouldBe([null, "start", null, "stop", "start"]);
        Written.Notes(measures[2]).Count.ShouldBe(2);
    }

    [Fact]
    public void Times_are_whole_numbers_of_the_least_divisions()
    {
        // Thirds, fifths and halves of a quarter note: 30.
        Written.Exercise("tuplets").Descendants("divisions").Single().Value.ShouldBe("15");
        Written.Exercise("nested-tuplets").Descendants("divisions").Single().Value.ShouldBe("9");
        Written.Exercise("chart").Descendants("divisions").Single().Value.ShouldBe("1");
    }

    private static List<string> Numbers(XDocument document) => [.. Written.Measures(document).Select(m =>
        (string)m.Attribute("number")! + (m.Attribute("text") is { } text ? " shows " + text.Value : "") + ((string?)m.Attribute("implicit") == "yes" ? " implicit" : ""))];

    private static List<string> Barlines(XDocument document) => [.. Written.Measures(document).Select(m => string.Join(' ', m.Elements("barline").Select(Describe)))];

    private static string Describe(XElement barline)
    {
        var ending = barline.Element("ending");
        var repeat = barline.Element("repeat");
        var parts = new[]
        {
            (string?)barline.Attribute("location"),
            (string?)barline.Element("bar-style"),
            ending is null ? null : $"{ending.Attribute("number")!.Value} {ending.Attribute("type")!.Value}" + (ending.Value.Length > 0 ? $" '{ending.Value}'" : ""),
            (string?)repeat?.Attribute("direction"),
            (string?)repeat?.Attribute("times"),
        };
        return string.Join(' ', parts.Where(p => p is not null));
    }

    private static List<string> Sounds(List<XElement> measures) => [.. measures.Select(m => string.Join(' ', m.Descendants("sound").Attributes().Where(a => a.Name != "tempo").Select(a => $"{a.Name}={a.Value}")))];
}

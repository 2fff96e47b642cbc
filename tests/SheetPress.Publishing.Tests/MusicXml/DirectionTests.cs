using System.Xml.Linq;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>Tempo, feel, words, dynamics and hairpins.</summary>
public class DirectionTests
{
    [Theory]
    [InlineData("plain", "quarter", 0, "92", "92")]
    [InlineData("swing", "quarter", 0, "132.5", "132.5")]
    // 60 dotted quarters a minute are 90 quarters.
    [InlineData("keys-and-meters", "quarter", 1, "60", "90")]
    public void The_tempo_is_shown_as_given_and_sounds_in_quarters(string sample, string unit, int dots, string shown, string sounding)
    {
        var direction = Written.Exercise(sample).Descendants("metronome").Single().Ancestors("direction").Single();
        direction.Descendants("beat-unit").Single().Value.ShouldBe(unit);
        direction.Descendants("beat-unit-dot").Count().ShouldBe(dots);
        direction.Descendants("per-minute").Single().Value.ShouldBe(shown);
        ((string)direction.Element("sound")!.Attribute("tempo")!).ShouldBe(sounding);
    }

    // The standard asks for quarter notes a minute in "sound" whatever the mark counts. What the way back changes is said to players alone.
    [Fact]
    public void A_new_tempo_is_a_metronome_mark_and_a_sound_and_ways_back_say_theirs_again()
    {
        var measures = Written.Measures(Written.Exercise("tempos"));
        measures.Select(m => string.Join(' ', m.Descendants("metronome").Select(t => $"{t.Element("beat-unit")!.Value}{(t.Element("beat-unit-dot") is null ? "" : ".")}={t.Element("per-minute")!.Value}")))
            .ShouldBe(["quarter=92", "", "half=60 quarter.=50", "", "quarter=66"]);
        measures.Select(m => string.Join(' ', m.Elements("direction").Elements("sound").Attributes("tempo").Select(a => a.Value))).ShouldBe(["92", "", "120 75", "", "66"]);
        measures.Select(m => string.Join(' ', m.Elements("sound").Attributes("tempo").Select(a => a.Value))).ShouldBe(["", "92", "", "92", ""]);
    }

    // 92 quarters, 92 dotted quarters (138), the same by eighths, 46 dotted halves a minute then 46 halves (92).
    [Fact]
    public void An_equation_of_note_values_is_two_beat_units_and_the_sound_it_leads_to()
    {
        var measures = Written.Measures(Written.Exercise("equations"));
        measures.Skip(1).Select(m => string.Join(' ', m.Descendants("metronome").Single().Elements().Select(e => e.Name.LocalName == "beat-unit-dot" ? "." : e.Name.LocalName + ":" + e.Value)))
            .ShouldBe(["beat-unit:quarter beat-unit:quarter .", "beat-unit:eighth beat-unit:eighth", "beat-unit:half . beat-unit:half"]);
        measures.Select(m => string.Join(' ', m.Elements("direction").Elements("sound").Attributes("tempo").Select(a => a.Value))).ShouldBe(["92", "138", "138", "92"]);
        // The start of the repeat says its own; no other measure needs it again.
        measures.SelectMany(m => m.Elements("sound").Attributes("tempo")).ShouldBeEmpty();
    }

    [Fact]
    public void Swing_is_words_and_a_sound_of_its_own()
    {
        var measure = Written.Measures(Written.Exercise("swing"))[0];
        measure.Descendants("words").Select(w => w.Value).ShouldContain("Swing");
        measure.Elements("sound").Single().Element("swing")!.Elements().Select(e => e.Value).ShouldBe(["2", "1", "eighth"]);
        var sixteenths = SampleScores.Named("swing") with { Feel = Feel.SwingSixteenths };
        Written.Exercise(sixteenths).Descendants("swing-type").Single().Value.ShouldBe("16th");
        Written.Exercise("plain").Descendants("swing").ShouldBeEmpty();
    }

    [Fact]
    public void A_straight_exercise_after_a_swung_one_says_so()
    {
        var document = Written.Lesson(SampleScores.Named("swing"), SampleScores.Named("pickup"));
        Written.Measures(document)[1].Element("sound")!.Element("swing")!.Element("straight").ShouldNotBeNull();
    }

    [Fact]
    public void Marks_stand_at_their_time()
    {
        // The sample's third measure: words two and a half quarters in, within the half note that starts at 2; divisions are 2.
        var measure = Written.Measures(Written.Exercise("plain"))[2];
        var words = measure.Elements("direction").Single(d => d.Descendants("words").Any(w => w.Value == "let it breathe"));
        ((int)words.Element("offset")!).ShouldBe(5);
        // The first measure's rehearsal mark is at its start and needs no offset.
        Written.Measures(Written.Exercise("plain"))[0].Elements("direction").Single(d => d.Descendants("rehearsal").Any()).Element("offset").ShouldBeNull();
    }

    [Fact]
    public void Dynamics_have_their_own_elements_or_words()
    {
        var dynamics = Written.Exercise("plain").Descendants("dynamics").ToList();
        dynamics[0].Elements().Single().Name.LocalName.ShouldBe("mf");
        dynamics[1].Element("other-dynamics")!.Value.ShouldBe("espr.");
        ((string)dynamics[0].Ancestors("direction").Single().Element("sound")!.Attribute("dynamics")!).ShouldBe("88.89");
        dynamics[1].Ancestors("direction").Single().Element("sound").ShouldBeNull();
    }

    [Fact]
    public void Hairpins_open_and_stop() =>
        Written.Exercise("plain").Descendants("wedge").Select(w => (string)w.Attribute("type")!).ShouldBe(["crescendo", "stop", "diminuendo", "stop"]);

    [Fact]
    public void Loudness_of_two_voices_is_written_with_its_voice()
    {
        var written = Written.Exercise("voices-of-their-own-loudness").Descendants("direction").Where(d => d.Descendants("wedge").Concat(d.Descendants("dynamics")).Any())
            .Select(d => string.Join(' ', (string)d.Element("voice")!, (string)d.Attribute("placement")!, d.Descendants("wedge").Select(w => $"{(string)w.Attribute("type")!} {(string)w.Attribute("number")!}").SingleOrDefault() ?? d.Descendants("dynamics").Single().Elements().Single().Name.LocalName));
        written.ShouldBe(["1 above mf", "1 above crescendo 1", "1 above stop 1", "2 below p", "2 below diminuendo 2", "1 above f", "2 below stop 2", "2 below ff"], ignoreOrder: true);
    }

    [Fact]
    public void The_instruction_stands_over_the_first_measure()
    {
        var first = Written.Measures(Written.Exercise("plain"))[0];
        first.Elements("direction").First().Value.ShouldStartWith("Play it slowly & evenly, twice <softly>.");
        var without = SampleScores.Named("plain") with { Instruction = "" };
        Written.Measures(Written.Exercise(without))[0].Elements("direction").First().Descendants("metronome").Count().ShouldBe(1);
    }
}

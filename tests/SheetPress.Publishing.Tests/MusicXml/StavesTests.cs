using System.Xml.Linq;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>Staves, tuning, transposition and what each staff carries, as readers need it (README.md beside the writer).</summary>
public class StavesTests
{
    [Fact]
    public void Staff_and_tab_are_two_staves_of_one_part_with_one_key_time_and_transpose()
    {
        var attributes = Written.Measures(Written.Exercise("plain"))[0].Element("attributes")!;
        ((int)attributes.Element("staves")!).ShouldBe(2);
        attributes.Elements("clef").Select(c => (string)c.Element("sign")!).ShouldBe(["F", "TAB"]);
        attributes.Elements("clef").Select(c => (string)c.Attribute("number")!).ShouldBe(["1", "2"]);
        attributes.Elements("key").Single().Attribute("number").ShouldBeNull();
        attributes.Elements("time").Single().Attribute("number").ShouldBeNull();
        var transpose = attributes.Elements("transpose").Single();
        transpose.Attribute("number").ShouldBeNull();
        ((int)transpose.Element("octave-change")!).ShouldBe(-1);
        ((int)transpose.Element("chromatic")!).ShouldBe(0);
        attributes.Descendants("clef-octave-change").ShouldBeEmpty();
    }

    [Theory]
    // Tunings: common practice, bottom line first. A capo counts apart.
    [InlineData("plain", "E1 A1 D2 G2", null)]
    [InlineData("five-strings", "B0 E1 A1 D2 G2", null)]
    [InlineData("ukulele", "G4 C4 E4 A4", null)]
    [InlineData("capo", "E2 A2 D3 G3 B3 E4", "3")]
    [InlineData("own-tuning", "E-11 A-11 D-12 G-12", null)]
    public void The_tab_has_its_tuning(string sample, string expected, string? capo)
    {
        var details = Written.Measures(Written.Exercise(sample))[0].Descendants("staff-details").Single();
        ((string)details.Attribute("number")!).ShouldBe("2");
        ((string)details.Element("staff-type")!).ShouldBe("alternate");
        details.Elements("staff-tuning").Select(t => (int)t.Attribute("line")!).ShouldBe(Enumerable.Range(1, expected.Split(' ').Length));
        string.Join(' ', details.Elements("staff-tuning").Select(t => $"{t.Element("tuning-step")!.Value}{t.Element("tuning-alter")?.Value}{t.Element("tuning-octave")!.Value}")).ShouldBe(expected);
        ((string?)details.Element("capo")).ShouldBe(capo);
    }

    [Fact]
    public void An_instrument_that_sounds_as_written_has_no_transpose() =>
        Written.Exercise("ukulele").Descendants("transpose").ShouldBeEmpty();

    [Fact]
    public void A_clef_with_an_eight_is_said_by_the_clef_only_where_nothing_transposes()
    {
        var sounding = SampleScores.Named("ukulele");
        var attributes = Written.Measures(Written.Exercise(sounding with { Instrument = sounding.Instrument with { Clef = Clef.Treble8 } }))[0].Element("attributes")!;
        ((int)attributes.Descendants("clef-octave-change").Single()).ShouldBe(-1);
        attributes.Element("transpose").ShouldBeNull();
        var guitar = SampleScores.Named("bends");
        attributes = Written.Measures(Written.Exercise(guitar with { Instrument = guitar.Instrument with { Clef = Clef.Treble8 } }))[0].Element("attributes")!;
        attributes.Descendants("clef-octave-change").ShouldBeEmpty();
        ((int)attributes.Element("transpose")!.Element("octave-change")!).ShouldBe(-1);
    }

    [Fact]
    public void String_and_fret_are_on_the_tab_alone_and_its_notes_are_silent()
    {
        var document = Written.Exercise("technique");
        Written.Notes(document, 1).Descendants("fret").ShouldBeEmpty();
        Written.Notes(document, 1).Descendants("string").ShouldBeEmpty();
        foreach (var note in Written.Notes(document, 2).Where(n => n.Element("rest") is null))
        {
            ((string?)note.Attribute("dynamics")).ShouldBe("0");
            note.Descendants("fret").Count().ShouldBe(1);
            ((string?)note.Element("stem")).ShouldBe("none");
            note.Element("accidental").ShouldBeNull();
            note.Element("beam").ShouldBeNull();
        }
    }

    [Fact]
    public void Rests_of_the_tab_are_not_printed()
    {
        var rests = Written.Notes(Written.Exercise("silence"), 2).Where(n => n.Element("rest") is not null).ToList();
        rests.ShouldNotBeEmpty();
        rests.ShouldAllBe(r => (string?)r.Attribute("print-object") == "no");
        Written.Notes(Written.Exercise("silence"), 1).ShouldAllBe(n => n.Attribute("print-object") == null);
    }

    [Theory]
    [InlineData("tab-only", "TAB")]
    [InlineData("staff-only", "F")]
    [InlineData("chart", "F")]
    public void One_staff_alone_needs_no_staff_numbers(string sample, string sign)
    {
        var document = Written.Exercise(sample);
        document.Descendants("staves").ShouldBeEmpty();
        document.Descendants("staff").ShouldBeEmpty();
        document.Descendants("sign").Select(s => s.Value).ShouldBe([sign]);
        document.Descendants("backup").ShouldBeEmpty();
    }

    [Fact]
    public void Tab_alone_sounds_and_has_its_rhythm()
    {
        var notes = Written.Notes(Written.Exercise("tab-only"));
        notes.ShouldAllBe(n => (string?)n.Attribute("dynamics") != "0");
        notes.Descendants("beam").ShouldNotBeEmpty();
        notes.Descendants("fingering").ShouldNotBeEmpty();
        notes.Descendants("hammer-on").Count().ShouldBe(2);
        notes.ShouldAllBe(n => (string?)n.Attribute("print-object") != "no");
    }

    [Fact]
    public void A_chart_has_slashes_on_the_middle_line_that_do_not_sound()
    {
        var notes = Written.Notes(Written.Exercise("chart"));
        notes.Count.ShouldBe(6);
        notes.ShouldAllBe(n => (string)n.Element("notehead")! == "slash" && (string)n.Attribute("dynamics")! == "0");
        // The middle line of an F clef is D3 as written (common practice).
        notes.ShouldAllBe(n => n.Element("pitch")!.Value == "D3");
    }

    [Fact]
    public void Exercises_with_other_staves_hide_those_they_do_not_show()
    {
        var document = Written.Lesson(SampleScores.Named("staff-only"), SampleScores.Named("tab-only"), SampleScores.Named("swing"));
        var details = Written.Measures(document).Select(m => string.Join(' ', m.Descendants("staff-details").Select(d => $"{d.Attribute("number")!.Value}:{(string?)d.Attribute("print-object") ?? "-"}:{d.Elements("staff-tuning").Count()}"))).Where(d => d.Length > 0);
        details.ShouldBe(["2:no:4", "1:no:0 2:yes:0", "1:yes:0"]);
        // The tab shows what is said once where the staff is hidden; the staff still is what sounds.
        var tab = Written.Measures(document)[1];
        Written.Notes(tab, 2).Descendants("accent").Count().ShouldBe(1);
        Written.Notes(tab, 1).Descendants("accent").ShouldBeEmpty();
        Written.Notes(tab, 1).Where(n => n.Element("rest") is null).ShouldAllBe(n => n.Attribute("dynamics") == null || (string)n.Attribute("dynamics")! != "0");
    }

    [Fact]
    public void Two_voices_have_their_own_numbers_on_each_staff_and_stems_apart()
    {
        var document = Written.Exercise("two-voices");
        Voices(document, 1).ShouldBe(["1", "2"]);
        Voices(document, 2).ShouldBe(["5", "6"]);
        var first = Written.Measures(document)[0];
        Written.Notes(first, 1).Select(n => ((string)n.Element("voice")!, (string?)n.Element("stem"))).Distinct().ShouldBe([("1", "up"), ("2", "down")]);

        static List<string> Voices(XDocument d, int staff) => [.. Written.Notes(d, staff).Select(n => (string)n.Element("voice")!).Distinct().Order()];
    }

    [Fact]
    public void A_clef_change_is_one_of_the_notation_staff()
    {
        var clefs = Written.Measures(Written.Exercise("clefs")).Select(m => string.Join(' ', m.Descendants("clef").Select(c => $"{c.Attribute("number")!.Value}{c.Element("sign")!.Value}")));
        clefs.ShouldBe(["1F 2TAB", "1G", "1F"]);
    }
}

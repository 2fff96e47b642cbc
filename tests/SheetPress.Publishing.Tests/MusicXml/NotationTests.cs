using System.Xml.Linq;
using SheetPress.Scores;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>Marks on notes: ties, slurs, slides, tuplets, technique, articulation, accidentals, lyrics.</summary>
public class NotationTests
{
    [Fact]
    public void Hammer_on_and_pull_off_are_on_the_tab_with_a_slur_on_both_staves()
    {
        var document = Written.Exercise("technique");
        Written.Notes(document, 1).Descendants().Where(e => e.Name == "hammer-on" || e.Name == "pull-off").ShouldBeEmpty();
        var tab = Written.Notes(document, 2).Descendants().Where(e => e.Name == "hammer-on" || e.Name == "pull-off").ToList();
        tab.Select(e => $"{e.Name} {e.Attribute("type")!.Value}{e.Value}").Take(4).ShouldBe(["hammer-on startH", "hammer-on stop", "pull-off startP", "pull-off stop"]);
        foreach (var staff in new[] { 1, 2 })
            Written.Notes(document, staff).Descendants("slur").Count().ShouldBe(tab.Count);
    }

    [Fact]
    public void Every_span_that_starts_also_stops_under_its_number_and_numbers_are_not_shared()
    {
        foreach (var score in SampleScores.All)
        {
            foreach (var element in new[] { "slur", "slide", "hammer-on", "pull-off", "tuplet", "wavy-line" })
            {
                var open = new HashSet<string>();
                foreach (var note in Written.Exercise(score).Descendants("note"))
                {
                    foreach (var span in note.Descendants(element))
                    {
                        var key = $"{(element == "tuplet" ? note.Element("staff")?.Value + "/" + note.Element("voice")!.Value + "/" : "")}{span.Attribute("number")!.Value}";
                        if ((string)span.Attribute("type")! == "start") open.Add(key).ShouldBeTrue($"{score.Id}: {element} {key} starts twice");
                        else open.Remove(key).ShouldBeTrue($"{score.Id}: {element} {key} stops without a start");
                    }
                    // A number that ends on a note does not begin again on it, or the stop could be taken for the new one's.
                    if (element is not ("wavy-line" or "tuplet")) note.Descendants(element).Select(s => (string)s.Attribute("number")!).ShouldBeUnique();
                }
                open.ShouldBeEmpty($"{score.Id}: {element} left open");
            }
        }
    }

    [Fact]
    public void A_chain_of_legato_notes_does_not_reuse_the_number_that_ends_on_the_same_note()
    {
        // A hammer-on to B, a pull-off from B: B holds a stop and a start.
        var b = Written.Notes(Written.Exercise("technique"), 1)[5];
        var slurs = b.Descendants("slur").Select(s => (Type: (string)s.Attribute("type")!, Number: (string)s.Attribute("number")!)).ToList();
        slurs.Select(s => s.Type).ShouldBe(["stop", "start"]);
        slurs[0].Number.ShouldNotBe(slurs[1].Number);
    }

    [Fact]
    public void A_slide_is_a_line_on_both_staves_and_chords_slide_along_their_strings()
    {
        var document = Written.Exercise("chords");
        foreach (var staff in new[] { 1, 2 })
        {
            var slides = Written.Notes(document, staff).Where(n => n.Descendants("slide").Any()).ToList();
            slides.Count.ShouldBe(6);
            slides.Take(3).Select(n => (string)n.Descendants("slide").Single().Attribute("type")!).Distinct().ShouldBe(["start"]);
        }
        var numbers = Written.Notes(document, 2).Descendants("slide").Select(s => (string)s.Attribute("type")! + s.Attribute("number")!.Value).ToList();
        numbers.Count(n => n.StartsWith("start")).ShouldBe(3);
        numbers.ShouldBeUnique();
    }

    [Fact]
    public void A_join_that_leads_nowhere_is_left_out()
    {
        var score = SampleScores.Build(SampleScores.Header("nowhere"), "4/4", "C major", "C2:1!H r:1 D2:2!S");
        Written.Exercise(score).Descendants().Where(e => e.Name == "slur" || e.Name == "slide" || e.Name == "hammer-on").ShouldBeEmpty();
    }

    [Theory]
    // The measure of the sample, the note in it, the staff, and what is written on it there.
    [InlineData(0, 0, 1, "technical/other-technical=T")]
    [InlineData(0, 2, 1, "technical/other-technical=P")]
    [InlineData(0, 3, 1, "technical/other-technical=P,articulations/accent")]
    [InlineData(1, 2, 1, "technical/down-bow,articulations/staccato")]
    [InlineData(1, 3, 1, "technical/up-bow,articulations/tenuto")]
    [InlineData(1, 4, 1, "articulations/strong-accent")]
    [InlineData(2, 0, 1, "technical/pluck=i,articulations/scoop")]
    [InlineData(2, 0, 2, "articulations/scoop")]
    [InlineData(2, 1, 1, "technical/pluck=m,articulations/plop")]
    [InlineData(2, 2, 1, "technical/pluck=a,articulations/falloff")]
    [InlineData(2, 3, 1, "ornaments/wavy-line,ornaments/wavy-line,articulations/doit")]
    [InlineData(3, 0, 2, "technical/harmonic")]
    [InlineData(3, 2, 1, "tied,fermata")]
    public void Marks(int measure, int note, int staff, string expected)
    {
        var notations = Written.Notes(Written.Measures(Written.Exercise("technique"))[measure], staff)[note].Element("notations")!;
        var found = notations.Elements().SelectMany(e => e.HasElements ? e.Elements().Where(m => m.Name != "fingering" && m.Name != "string" && m.Name != "fret").Select(m => $"{e.Name}/{m.Name}{(m.Value.Length > 0 ? "=" + m.Value : "")}") : [e.Name.LocalName]);
        string.Join(',', found).ShouldBe(expected);
    }

    [Fact]
    public void Thumb_is_no_thumb_position_and_pop_no_plucking_finger()
    {
        // "thumb-position" is a place of the fretting hand, and p among the plucking fingers is the thumb (MusicXML 4.0; p-i-m-a: common practice).
        var document = Written.Exercise("technique");
        document.Descendants("thumb-position").ShouldBeEmpty();
        document.Descendants("pluck").Select(p => p.Value).ShouldBe(["i", "m", "a"]);
    }

    [Fact]
    public void Ghost_and_dead_notes_are_an_x_on_both_staves_and_softer()
    {
        var measure = Written.Measures(Written.Exercise("technique"))[0];
        Written.Notes(measure, 1).Select(n => (string?)n.Element("notehead")).Take(4).ShouldBe([null, "x", "x", null]);
        Written.Notes(measure, 2).Select(n => (string?)n.Element("notehead")).Take(4).ShouldBe([null, "x", "x", null]);
        Written.Notes(measure, 1).Select(n => (string?)n.Attribute("dynamics")).Take(4).ShouldBe([null, "50", "50", null]);
    }

    [Fact]
    public void Bends_are_on_the_tab_in_half_steps() =>
        Written.Notes(Written.Exercise("bends"), 2).Descendants("bend-alter").Select(b => b.Value).ShouldBe(["2", "0.5", "1", "1"]);

    [Fact]
    public void Palm_muted_runs_are_said_once_with_a_dashed_line()
    {
        var measure = Written.Measures(Written.Exercise("technique"))[1];
        var directions = measure.Elements("direction").Where(d => (string?)d.Element("staff") == "2").ToList();
        directions.Select(d => string.Join(' ', d.Elements("direction-type").Elements().Select(e => e.Name.LocalName + ((string?)e.Attribute("type") ?? e.Value)))).ShouldBe(["wordsP.M. dashesstart", "dashesstop", "wordsP.M."]);
        Written.Notes(measure, 1).Select(n => n.Element("play") is not null).ShouldBe([true, true, false, false, true]);
    }

    [Fact]
    public void A_palm_muted_run_holds_over_a_tied_note()
    {
        var score = SampleScores.Build(SampleScores.Header("muted"), "4/4", "E minor", "E1:3!PalmMute E1:2!PalmMute G1:3");
        var dashes = Written.Exercise(score).Descendants("dashes").Select(d => (string)d.Attribute("type")!);
        dashes.ShouldBe(["start", "stop"]);
        Written.Measures(Written.Exercise(score))[1].Descendants("dashes").Count().ShouldBe(1);
    }

    [Fact]
    public void The_muting_of_a_lower_voice_is_said_below()
    {
        var score = SampleScores.Build(SampleScores.Header("muted"), "4/4", "E minor", "E2:2!PalmMute G2:2", "E1:2 G1:2!PalmMute");
        var words = Written.Exercise(score).Descendants("direction").Where(d => d.Descendants("words").Any(w => w.Value == "P.M."));
        words.Select(d => (string)d.Attribute("placement")!).ShouldBe(["above", "below"]);
    }

    [Fact]
    public void Tuplets_are_on_both_staves_and_say_their_unit()
    {
        var document = Written.Exercise("tuplets");
        foreach (var staff in new[] { 1, 2 })
        {
            var notes = Written.Notes(Written.Measures(document)[0], staff);
            // A quarter and an eighth in an eighth-note triplet: the quarter names the eighth as what the triplet counts.
            notes[3].Element("time-modification")!.Value.ShouldBe("32eighth");
            notes[4].Element("time-modification")!.Value.ShouldBe("32");
            notes.SelectMany(n => n.Descendants("tuplet")).Select(t => (string)t.Attribute("type")!).ShouldBe(["start", "stop", "start", "stop", "start", "stop"]);
            var bracket = notes.SelectMany(n => n.Descendants("tuplet")).First();
            ((string?)bracket.Attribute("show-number")).ShouldBe(staff == 1 ? null : "none");
            bracket.Descendants("tuplet-type").Select(t => t.Value).ShouldBe(["eighth", "eighth"]);
        }
    }

    [Fact]
    public void A_triplet_within_a_triplet_has_the_product_as_its_time_and_its_own_number()
    {
        var notes = Written.Notes(Written.Exercise("nested-tuplets"));
        notes[1].Element("time-modification")!.Value.ShouldBe("94");
        var tuplets = notes.SelectMany(n => n.Descendants("tuplet")).ToList();
        tuplets.Select(t => $"{t.Attribute("number")!.Value} {t.Attribute("type")!.Value}").ShouldBe(["1 start", "2 start", "2 stop", "1 stop"]);
        tuplets[1].Value.ShouldBe("316th216th");
    }

    [Fact]
    public void Accidentals_are_written_where_they_are_needed_or_expected()
    {
        var notes = Written.Notes(Written.Exercise("plain"));
        // C minor: B natural and then B flat in one measure; a B flat in the next needs no sign.
        var signs = notes.Select(n => ((string?)n.Element("pitch")?.Element("step"), (string?)n.Element("accidental"))).Where(n => n.Item1 == "B").ToList();
        signs.ShouldBe([("B", null), ("B", "natural"), ("B", "flat"), ("B", null), ("B", null)]);
        var cautionary = SampleScores.Build(SampleScores.Header("caution"), "2/4", "C major", "F#2:2 | F2:2");
        var sign = Written.Notes(Written.Measures(Written.Exercise(cautionary))[1]).Single().Element("accidental")!;
        (sign.Value, (string?)sign.Attribute("cautionary")).ShouldBe(("natural", "yes"));
    }

    [Fact]
    public void Counts_and_degrees_are_lines_of_words_under_the_notes()
    {
        var first = Written.Notes(Written.Exercise("plain"))[1].Elements("lyric").Select(l => $"{l.Attribute("number")!.Value} {l.Element("text")!.Value}");
        first.ShouldBe(["1 &", "2 ♭3"]);
        var degreesOnly = SampleScores.Named("plain") with { ShowCounts = false };
        Written.Notes(Written.Exercise(degreesOnly))[1].Elements("lyric").Select(l => $"{l.Attribute("number")!.Value} {l.Element("text")!.Value}").ShouldBe(["1 ♭3"]);
        var neither = SampleScores.Named("plain") with { ShowCounts = false, ShowDegrees = false };
        Written.Exercise(neither).Descendants("lyric").ShouldBeEmpty();
        Written.Notes(Written.Exercise("plain"), 2).Elements("lyric").ShouldBeEmpty();
    }

    [Fact]
    public void Fingers_are_shown_only_when_asked_for()
    {
        Written.Notes(Written.Exercise("plain"), 1).Descendants("fingering").ShouldNotBeEmpty();
        Written.Notes(Written.Exercise("plain"), 2).Descendants("fingering").ShouldBeEmpty();
        Written.Exercise(SampleScores.Named("plain") with { ShowFingers = false }).Descendants("fingering").ShouldBeEmpty();
    }

    // The element for the number in a circle; a staff with a tab has its strings in the tab.
    [Fact]
    public void A_staff_alone_has_strings_where_they_change_when_asked_for()
    {
        var alone = SampleScores.Named("plain") with { Layout = StaffLayout.Staff, ShowStrings = true };
        Written.Exercise(alone).Descendants("string").Count().ShouldBe(StringNumbers.Of(alone).Count);
        StringNumbers.Of(alone).ShouldNotBeEmpty();
        Written.Exercise(alone with { ShowStrings = false }).Descendants("string").ShouldBeEmpty();
        Written.Notes(Written.Exercise(alone with { Layout = StaffLayout.StaffAndTab }), 1).Descendants("string").ShouldBeEmpty();
    }

    [Fact]
    public void Phrases_have_slurs_on_the_staff_alone()
    {
        var document = Written.Exercise("phrases");
        Written.Notes(document, 1).Descendants("slur").Count().ShouldBe(6);
        Written.Notes(document, 2).Descendants("slur").Count().ShouldBe(2);
    }
}

using System.Xml.Linq;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing.Tests.MusicXml;

/// <summary>Chord symbols: kinds, degrees, bass, no chord, diagrams, roman numerals.</summary>
public class HarmonyTests
{
    // The standard's own words for its kinds (MusicXML 4.0 schema, type kind-value), as degrees above the root.
    private static readonly Dictionary<string, string> Kinds = new()
    {
        ["major"] = "3 5",
        ["minor"] = "b3 5",
        ["augmented"] = "3 #5",
        ["diminished"] = "b3 b5",
        ["dominant"] = "3 5 b7",
        ["major-seventh"] = "3 5 7",
        ["minor-seventh"] = "b3 5 b7",
        ["diminished-seventh"] = "b3 b5 bb7",
        ["augmented-seventh"] = "3 #5 b7",
        ["half-diminished"] = "b3 b5 b7",
        ["major-minor"] = "b3 5 7",
        ["major-sixth"] = "3 5 6",
        ["minor-sixth"] = "b3 5 6",
        ["dominant-ninth"] = "3 5 b7 9",
        ["major-ninth"] = "3 5 7 9",
        ["minor-ninth"] = "b3 5 b7 9",
        ["dominant-11th"] = "3 5 b7 9 11",
        ["major-11th"] = "3 5 7 9 11",
        ["minor-11th"] = "b3 5 b7 9 11",
        ["dominant-13th"] = "3 5 b7 9 11 13",
        ["major-13th"] = "3 5 7 9 11 13",
        ["minor-13th"] = "b3 5 b7 9 11 13",
        ["suspended-second"] = "2 5",
        ["suspended-fourth"] = "4 5",
        ["power"] = "5",
    };

    public static TheoryData<string> Suffixes => [.. ChordQualities.All.Select(q => q.Suffix)];

    [Theory]
    [MemberData(nameof(Suffixes))]
    public void Kind_and_degrees_of_every_quality_give_its_tones(string suffix)
    {
        var harmony = Harmony("Bb" + suffix);
        harmony.Element("root")!.Elements().Select(e => e.Value).ShouldBe(["B", "-1"]);
        var tones = Kinds[harmony.Element("kind")!.Value].Split(' ').Select(Degree.Parse).ToList();
        foreach (var degree in harmony.Elements("degree"))
        {
            var number = (int)degree.Element("degree-value")!;
            var alter = (int)degree.Element("degree-alter")!;
            var at = tones.FindIndex(t => t.Number == number);
            switch ((string)degree.Element("degree-type")!)
            {
                // Added degrees are measured against a dominant chord: major and perfect, but a minor seventh (MusicXML 4.0, degree-alter).
                case "add": tones.Add(new Degree(number, alter - (number == 7 ? 1 : 0))); break;
                case "alter": at.ShouldBeGreaterThanOrEqualTo(0); tones[at] = new Degree(number, tones[at].Alteration + alter); break;
                default: at.ShouldBeGreaterThanOrEqualTo(0); tones.RemoveAt(at); break;
            }
        }
        var expected = Chord.Parse("Bb" + suffix).Quality.Degrees.Where(d => d.Number != 1).ToList();
        // Players leave the 11th out of a 13th chord; the standard counts it in.
        if (harmony.Element("kind")!.Value.EndsWith("13th") && expected.All(d => d.Number != 11)) tones.Remove(new Degree(11));
        tones.OrderBy(t => t.Number).ThenBy(t => t.Alteration).ShouldBe(expected.OrderBy(t => t.Number).ThenBy(t => t.Alteration));
    }

    [Fact]
    public void Every_quality_is_valid_in_the_schema()
    {
        var symbols = ChordQualities.All.Select((q, i) => new HarmonyMark(new Fraction(i, 32), new Chord(NoteName.Parse("F#"), q, NoteName.Parse("Eb"))));
        var score = SampleScores.Build(SampleScores.Header("all-qualities"), "4/4", "C major", "C2:4", change: f => [f[0] with { Harmonies = [.. symbols] }]);
        MusicXmlSchema.Validate(Written.Exercise(score), "all qualities");
    }

    [Theory]
    // What a reader that prints the kind's text and its degrees shows (the type's text in place of the type, where it has one).
    [InlineData("C", "")]
    [InlineData("Cm7", "m7")]
    [InlineData("C7b9", "7 b9")]
    [InlineData("C13#11", "13 #11")]
    [InlineData("C9sus4", "sus4 7 9")]
    [InlineData("Cadd9", " add9")]
    [InlineData("Cm7b5", "m7♭5")]
    [InlineData("CmMaj7", "m(maj7)")]
    [InlineData("Csus24", "sus2 4")]
    public void Alterations_are_in_the_degrees_alone(string symbol, string expected)
    {
        var harmony = Harmony(symbol);
        var degrees = harmony.Elements("degree").Select(d => " " + ((string?)d.Element("degree-type")!.Attribute("text") ?? d.Element("degree-type")!.Value) + ((int)d.Element("degree-alter")!) switch { 1 => "#", -1 => "b", _ => "" } + d.Element("degree-value")!.Value);
        ((string)harmony.Element("kind")!.Attribute("text")! + string.Concat(degrees)).ShouldBe(expected);
    }

    // MusicXML 4.0, attribute parentheses-degrees: the degrees are displayed in brackets.
    [Theory]
    [InlineData("Em(add9)", true)]
    [InlineData("Csus24", true)]
    [InlineData("C7no5", true)]
    [InlineData("C(b5)", true)]
    [InlineData("Cadd9", false)]
    [InlineData("C7b9", false)]
    [InlineData("CmMaj7", false)]
    public void Degrees_stand_in_brackets_where_the_symbol_has_them(string symbol, bool areInBrackets) =>
        ((string?)Harmony(symbol).Element("kind")!.Attribute("parentheses-degrees") == "yes").ShouldBe(areInBrackets);

    [Fact]
    public void Chord_symbols_are_on_staff_one_once()
    {
        var harmonies = Written.Exercise("plain").Descendants("harmony").ToList();
        harmonies.Count.ShouldBe(6);
        harmonies.ShouldAllBe(h => (string)h.Element("staff")! == "1");
    }

    [Fact]
    public void A_slash_bass_is_a_bass() => Harmony("Gm7/Bb").Element("bass")!.Elements().Select(e => e.Value).ShouldBe(["B", "-1"]);

    [Fact]
    public void Chord_symbols_between_notes_have_an_offset()
    {
        var measure = Written.Measures(Written.Exercise("chords"))[0];
        // A whole note is tied over: the first symbol is at its start.
        measure.Element("harmony")!.Element("offset").ShouldBeNull();
        var last = Written.Measures(Written.Exercise("chords"))[2].Elements("harmony").ToList();
        last.Select(h => (string?)h.Element("offset")).ShouldBe([null, "1", null, null]);
    }

    [Fact]
    public void No_chord_is_words_beside_a_harmony_that_is_not_printed()
    {
        var measure = Written.Measures(Written.Exercise("no-chord"))[0];
        var none = measure.Elements("harmony").Last();
        ((string)none.Attribute("print-object")!).ShouldBe("no");
        none.Element("kind")!.Value.ShouldBe("none");
        ((string)none.Element("root")!.Element("root-step")!.Attribute("text")!).ShouldBe("");
        measure.Descendants("words").Count(w => w.Value == "N.C.").ShouldBe(1);
    }

    [Fact]
    public void A_diagram_is_a_frame()
    {
        var frames = Written.Exercise("chords").Descendants("frame").ToList();
        frames.Count.ShouldBe(2);
        frames[0].Elements().Select(e => e.Value).ShouldBe(["6", "4", "63", "52", "40", "30", "20", "13"]);
        // Up the neck it starts at its lowest fret.
        ((int)frames[1].Element("first-fret")!).ShouldBe(9);
        Written.Exercise("chords").Descendants("harmony").Select(h => (string)h.Attribute("print-frame")!).ShouldBe(["yes", "no", "no", "yes", "no", "no", "no", "no"]);
    }

    [Fact]
    public void Roman_numerals_stand_under_the_lowest_staff_when_asked_for()
    {
        var romans = Written.Exercise("plain").Descendants("direction").Where(d => (string?)d.Attribute("placement") == "below" && d.Descendants("words").Any()).ToList();
        romans.Select(d => d.Descendants("words").Single().Value).ShouldBe(["i7", "iv7", "V7/III", "IIImaj7", "iiø7", "V7"]);
        romans.ShouldAllBe(d => (string)d.Element("staff")! == "2");
        Written.Exercise(SampleScores.Named("plain") with { ShowRomans = false }).Descendants("words").ShouldNotContain(w => w.Value == "i7");
    }

    private static XElement Harmony(string symbol)
    {
        var score = SampleScores.Build(SampleScores.Header("symbol"), "4/4", "C major", "C2:4",
            change: f => [f[0] with { Harmonies = [new HarmonyMark(Fraction.Zero, Chord.Parse(symbol))] }]);
        return Written.Exercise(score).Descendants("harmony").Single();
    }
}

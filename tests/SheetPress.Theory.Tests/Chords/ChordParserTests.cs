using CsCheck;

namespace SheetPress.Theory.Tests;

public class ChordParserTests
{
    // Harte, Sandler, Abdallah, Gomez: Symbolic representation of musical chords, ISMIR 2005, table of shorthands.
    [Theory]
    [InlineData("maj", "R 3 5")]
    [InlineData("min", "R b3 5")]
    [InlineData("dim", "R b3 b5")]
    [InlineData("aug", "R 3 #5")]
    [InlineData("maj7", "R 3 5 7")]
    [InlineData("min7", "R b3 5 b7")]
    [InlineData("7", "R 3 5 b7")]
    [InlineData("dim7", "R b3 b5 bb7")]
    [InlineData("hdim7", "R b3 b5 b7")]
    [InlineData("minmaj7", "R b3 5 7")]
    [InlineData("maj6", "R 3 5 6")]
    [InlineData("min6", "R b3 5 6")]
    [InlineData("9", "R 3 5 b7 9")]
    [InlineData("maj9", "R 3 5 7 9")]
    [InlineData("min9", "R b3 5 b7 9")]
    [InlineData("sus4", "R 4 5")]
    public void Published_shorthands(string suffix, string degrees) => Degrees("C" + suffix).ShouldBe(degrees);

    // Built from parts, none of them in the table; common practice.
    [Theory]
    [InlineData("C7b5b9b13", "C7b5b9b13", "R 3 b5 b7 b9 b13")]
    [InlineData("Cm11b5", "Cm11b5", "R b3 b5 b7 9 11")]
    [InlineData("Cm7b5b9", "Cm7b5b9", "R b3 b5 b7 b9")]
    [InlineData("C7b9sus4add3", "C11b9", "R 3 5 b7 b9 11")]
    [InlineData("C9no3", "C9(no3)", "R 5 b7 9")]
    [InlineData("Cmaj9omit5", "Cmaj9(no5)", "R 3 7 9")]
    [InlineData("Cadd9no3", "C5(add9)", "R 5 9")]
    [InlineData("Cm(add9,no5)", "Cm(add9,no5)", "R b3 9")]
    [InlineData("C13b5b9", "C13b5b9", "R 3 b5 b7 b9 13")]
    [InlineData("C7(b9,#9,b13)", "C7b9#9b13", "R 3 5 b7 b9 #9 b13")]
    [InlineData("C6b5", "C6b5", "R 3 b5 6")]
    [InlineData("Caug(maj7,#11)", "Cmaj7#5#11", "R 3 #5 7 #11")]
    [InlineData("Cmaj13#5", "Cmaj13#5", "R 3 #5 7 9 13")]
    [InlineData("Cdim11", "Cdim11", "R b3 b5 bb7 9 11")]
    [InlineData("C°(maj9)", "CdimMaj9", "R b3 b5 7 9")]
    [InlineData("C7b5#5", "C7b5#5", "R 3 b5 #5 b7")]
    [InlineData("Csus2add11", "Csus2(4)", "R 2 4 5")]
    [InlineData("C9addb9", "C9(addb9)", "R 3 5 b7 b9 9")]
    [InlineData("C7 (b9)", "C7b9", "R 3 5 b7 b9")]
    [InlineData("C7((b9))", "C7b9", "R 3 5 b7 b9")]
    public void Suffixes_are_built_from_parts(string text, string canonical, string degrees)
    {
        Chord.Parse(text).ToString().ShouldBe(canonical);
        // Seconds and fourths without a third stay what they are; the rest is in order of number.
        Degrees(text).ShouldBe(degrees);
    }

    // Common practice.
    [Theory]
    [InlineData("B♭m7♭5", "Bbm7b5")]
    [InlineData("B♭ø", "Bbm7b5")]
    [InlineData("F♯-7", "F#m7")]
    [InlineData("CΔ", "Cmaj7")]
    [InlineData("C∆9", "Cmaj9")]
    [InlineData("CMAJ7", "Cmaj7")]
    [InlineData("CMI7", "Cm7")]
    [InlineData("CMin7", "Cm7")]
    [InlineData("C-Δ7", "CmMaj7")]
    [InlineData("Cm(maj7)", "CmMaj7")]
    [InlineData("Cm/maj7", "CmMaj7")]
    [InlineData("C7(b9,#11)", "C7b9#11")]
    [InlineData("C7(b9, 13)", "C13b9")]
    [InlineData("C7#11b9", "C7b9#11")]
    [InlineData("C6/9/E", "C6/9/E")]
    [InlineData("C69/E", "C6/9/E")]
    [InlineData("Cm7/Bb", "Cm7/Bb")]
    [InlineData("C/C", "C")]
    [InlineData("  Dm7  ", "Dm7")]
    [InlineData("Csus", "Csus4")]
    [InlineData("C7sus", "C7sus4")]
    [InlineData("Calt", "C7alt")]
    [InlineData("C+7", "C7#5")]
    [InlineData("C+", "Caug")]
    [InlineData("C7+9", "C7#9")]
    [InlineData("C7-9", "C7b9")]
    [InlineData("Co7", "Cdim7")]
    [InlineData("Comit5", "C(no5)")]
    [InlineData("Cmaj#11", "Cmaj7#11")]
    [InlineData("C(#11)", "Cadd#11")]
    [InlineData("C(b5)", "C(b5)")]
    [InlineData("C#5", "C#5")]
    [InlineData("C(#5)", "Caug")]
    [InlineData("Am7(11)", "Am7(add11)")]
    [InlineData("Cmb5", "Cdim")]
    public void Ways_to_write(string text, string canonical) => Chord.Parse(text).ToString().ShouldBe(canonical);

    // Common practice of pop charts, of charts in plain text, and of the Romance countries (7M, 5+, 9- and tones behind a slash).
    [Theory]
    [InlineData("C^7", "Cmaj7")]
    [InlineData("C-^7", "CmMaj7")]
    [InlineData("C7M", "Cmaj7")]
    [InlineData("C7M(9)", "Cmaj9")]
    [InlineData("Cm7M", "CmMaj7")]
    [InlineData("Cm(7M)", "CmMaj7")]
    [InlineData("C/9", "Cadd9")]
    [InlineData("Cm/9", "Cm(add9)")]
    [InlineData("C7/9", "C9")]
    [InlineData("C7/13", "C7(add13)")]
    [InlineData("C7/9/13", "C13")]
    [InlineData("C7/b9/b13", "C7b9b13")]
    [InlineData("C7/4", "C7sus4")]
    [InlineData("C7/4(9)", "C9sus4")]
    [InlineData("Cm7/11", "Cm7(add11)")]
    [InlineData("C7/9/E", "C9/E")]
    [InlineData("C9/6", "C6/9")]
    [InlineData("C5+", "Caug")]
    [InlineData("C7(5+)", "C7#5")]
    [InlineData("C7(9-)", "C7b9")]
    [InlineData("C7(11+)", "C7#11")]
    [InlineData("Cm7(5-)", "Cm7b5")]
    [InlineData("Cm5-/7", "Cm7b5")]
    [InlineData("C7(b9/b13)", "C7b9b13")]
    [InlineData("C7(alt.)", "C7alt")]
    [InlineData("Cmaj. 7", "Cmaj7")]
    [InlineData("C min.7", "Cm7")]
    [InlineData("C major 7", "Cmaj7")]
    [InlineData("C half diminished", "Cm7b5")]
    [InlineData("Cdiminished7", "Cdim7")]
    [InlineData("Csuspended4", "Csus4")]
    [InlineData("Csus4/2", "Csus2(4)")]
    [InlineData("Bh7", "Bm7b5")]
    [InlineData("BO7", "Bdim7")]
    [InlineData("F♯ø⁷", "F#m7b5")]
    [InlineData("C⁷⁽♭⁹⁾", "C7b9")]
    [InlineData("B♮7", "B7")]
    [InlineData("C𝄫7", "Cbb7")]
    [InlineData("F𝄪m7", "F##m7")]
    public void Other_ways_to_write(string text, string canonical) => Chord.Parse(text).ToString().ShouldBe(canonical);

    // Pop and praise charts, common practice: the 2 comes to the triad, the 4 stands for the third of a major one.
    [Theory]
    [InlineData("C2", "Cadd9")]
    [InlineData("C2/E", "Cadd9/E")]
    [InlineData("Cm2", "Cm(add9)")]
    [InlineData("C4", "Csus4")]
    [InlineData("Cm4", "Cm(add11)")]
    public void A_bare_number_is_read_and_marked(string text, string canonical)
    {
        var result = ChordParser.Parse(text);
        result.Chord!.ToString().ShouldBe(canonical);
        result.IsAmbiguous.ShouldBeTrue();
        ChordParser.Parse(canonical).IsAmbiguous.ShouldBeFalse();
    }

    // Harte, Sandler, Abdallah and Gomez, ISMIR 2005: the table of shorthands, degrees in brackets, omitted degrees, the bass as a degree.
    [Theory]
    [InlineData("C:maj", "C E G")]
    [InlineData("C:min", "C Eb G")]
    [InlineData("C:dim", "C Eb Gb")]
    [InlineData("C:aug", "C E G#")]
    [InlineData("C:maj7", "C E G B")]
    [InlineData("C:min7", "C Eb G Bb")]
    [InlineData("C:7", "C E G Bb")]
    [InlineData("C:dim7", "C Eb Gb Bbb")]
    [InlineData("C:hdim7", "C Eb Gb Bb")]
    [InlineData("C:minmaj7", "C Eb G B")]
    [InlineData("C:maj6", "C E G A")]
    [InlineData("C:min6", "C Eb G A")]
    [InlineData("C:9", "C E G Bb D")]
    [InlineData("C:maj9", "C E G B D")]
    [InlineData("C:min9", "C Eb G Bb D")]
    [InlineData("C:sus4", "C F G")]
    [InlineData("C:sus4(b7,9)", "C F G Bb D")]
    [InlineData("A:7(#9)", "A C# E G B#")]
    [InlineData("C:(1,5)", "C G")]
    [InlineData("C:maj(*3)", "C G")]
    [InlineData("C:7(*5,b9)", "C E Bb Db")]
    [InlineData("C:maj(9)", "C E G D")]
    [InlineData("Fb:min7", "Fb Abb Cb Ebb")]
    [InlineData("D:hdim7/b5", "D F Ab C", "Ab")]
    [InlineData("Bb:min7/b3", "Bb Db F Ab", "Db")]
    [InlineData("C:7/b7", "C E G Bb", "Bb")]
    public void Annotations(string text, string tones, string? bass = null)
    {
        var chord = Chord.Parse(text);
        string.Join(' ', chord.Tones.Select(t => t.Note)).ShouldBe(tones);
        chord.Bass?.ToString().ShouldBe(bass);
        Chord.Parse(chord.ToString()).ShouldBe(chord);
    }

    [Theory]
    [InlineData("N.C.")]
    [InlineData("NC")]
    [InlineData("n.c.")]
    [InlineData("N.C")]
    [InlineData("No Chord")]
    [InlineData("N. C.")]
    [InlineData("N/C")]
    [InlineData("N")]
    [InlineData("Tacet")]
    public void No_chord(string text)
    {
        ChordParser.Parse(text).ShouldBe(new ChordParseResult { IsNoChord = true });
        Chord.TryParse(text, out _).ShouldBeFalse();
    }

    [Theory]
    [InlineData("", 0, null)]
    [InlineData("   ", 3, null)]
    [InlineData("Cmja7", 2, "Cmaj7")]
    [InlineData("Cmaj77", 5, "Cmaj7")]
    [InlineData("Bbm7b", 4, "Bbm7")]
    [InlineData("Cdmi7", 1, "Cdim7")]
    [InlineData("Csuss4", 4, "Csus4")]
    [InlineData("C7(b9", 2, "C7b9")]
    [InlineData("C7b9)", 4, "C7b9")]
    [InlineData("C7/H", 3, null)]
    [InlineData("C/e", 2, "C/E")]
    [InlineData("C/3", 2, "C/E")]
    [InlineData("Cm/b3", 3, "Cm/Eb")]
    [InlineData("C7/7", 3, "C7/Bb")]
    [InlineData("D/Cmaj7", 2, "D/C")]
    [InlineData("C/E/G", 2, "C/E")]
    [InlineData("C\\E", 1, "C/E")]
    [InlineData("EB7", 1, "Eb7")]
    [InlineData("Fis", 1, "F#")]
    [InlineData("Bes7", 1, "Bb7")]
    [InlineData("As7", 1, "Ab7")]
    [InlineData("C24", 1, null)]
    [InlineData("C7[b9]", 2, "C7b9")]
    [InlineData("C:foo", 2, null)]
    [InlineData("C:m7", 2, "Cm7")]
    [InlineData("C:maj(9", 5, null)]
    [InlineData("C:maj(x)", 6, null)]
    [InlineData("C:", 2, "C")]
    [InlineData("dm7", 0, "Dm7")]
    [InlineData("hm7", 0, "Bm7")]
    [InlineData("H7", 0, "B7")]
    [InlineData("X7", 0, null)]
    [InlineData("Cm7 F7", 4, null)]
    [InlineData("C7no9", 4, "C7(no5)")]
    [InlineData("Cm7alt", 3, null)]
    [InlineData("Cadd7", 4, "Cadd9")]
    [InlineData("Bbbb7", 3, "Ab7")]
    [InlineData("Cdim7M7", 5, "Cdim7")]
    [InlineData("Gmjaor7/F#", 2, null)]
    public void An_error_says_where_and_what_was_meant(string text, int index, string? suggestion)
    {
        var result = ChordParser.Parse(text);
        result.Success.ShouldBeFalse();
        result.Chord.ShouldBeNull();
        result.ErrorIndex.ShouldBe(index, result.Message);
        result.Message.ShouldNotBeNullOrWhiteSpace();
        result.Message.ShouldNotEndWith(".");
        if (suggestion is not null) result.Suggestion.ShouldBe(suggestion);
        Chord.TryParse(text, out _).ShouldBeFalse();
        Should.Throw<FormatException>(() => Chord.Parse(text)).Message.ShouldContain(text.Trim());
    }

    [Fact]
    public void A_slip_in_one_letter_gets_a_suggestion_that_can_be_read() =>
        Gen.Select(Samples.Qualities, Gen.Int[0, 20], Gen.Char["abdgijmsu79#()"]).Sample((quality, at, letter) =>
        {
            var symbol = "C" + quality.Suffix;
            var slip = symbol.Insert(1 + (at % symbol.Length), letter.ToString());
            var result = ChordParser.Parse(slip);
            result.ErrorIndex.ShouldBeInRange(-1, slip.Length);
            if (result.Suggestion is { } suggestion) Chord.TryParse(suggestion, out _).ShouldBeTrue($"{slip}: {suggestion}");
        });

    [Fact]
    public void Any_text_is_read_or_refused_without_a_crash() =>
        Gen.Char["ABCDEFGHMabmjinordsug+-/()°øΔ♭♯♮^#,.:* 012345679"].Array[0, 12].Select(c => new string(c)).Sample(text =>
        {
            var result = ChordParser.Parse(text);
            if (result.Chord is not { } chord) return;
            Chord.Parse(chord.ToString()).ShouldBe(chord, $"{text} printed as {chord}");
            Chord.Parse(chord.ToDisplayString()).ShouldBe(chord, $"{text} printed as {chord.ToDisplayString()}");
        }, iter: 5_000);

    private static readonly Gen<Degree[]> DegreeSets =
        Gen.OneOf(
            Gen.Const("3"), Gen.Const("b3"), Gen.Const("2"), Gen.Const("4"), Gen.Const("5"), Gen.Const("b5"), Gen.Const("#5"), Gen.Const("6"), Gen.Const("b6"),
            Gen.Const("b7"), Gen.Const("7"), Gen.Const("9"), Gen.Const("b9"), Gen.Const("#9"), Gen.Const("11"), Gen.Const("#11"), Gen.Const("13"), Gen.Const("b13"))
        .Select(Degree.Parse).Array[1, 8];

    [Fact]
    public void Every_set_of_degrees_has_a_suffix_that_is_read_as_the_same_degrees() =>
        DegreeSets.Where(d => d.Count(x => x.Number == 3) <= 1 && d.Count(x => x.Number == 7) <= 1).Sample(
            degrees =>
            {
                var quality = ChordQuality.FromDegrees(degrees);
                var printed = "C" + quality.Suffix;
                var back = ChordParser.Parse(printed);
                back.Message.ShouldBeNull(printed);
                back.Chord!.Quality.Degrees.ShouldBe(quality.Degrees, printed);
                back.Chord.Quality.ShouldBe(quality);
                quality.Name.ShouldNotBeNullOrWhiteSpace();
            },
            iter: 5_000);

    private static string Degrees(string chord) => string.Join(' ', Chord.Parse(chord).Quality.Degrees);
}

using CsCheck;

namespace SheetPress.Theory.Tests;

public class RomanNumeralTests
{
    // Common practice.
    [Theory]
    [InlineData("C major", "Imaj7", "Cmaj7")]
    [InlineData("C major", "ii7", "Dm7")]
    [InlineData("C major", "V7/ii", "A7")]
    [InlineData("C major", "V7/iii", "B7")]
    [InlineData("C major", "bVII7", "Bb7")]
    [InlineData("C major", "#ivø7", "F#m7b5")]
    [InlineData("C major", "vii°7/ii", "C#dim7")]
    [InlineData("C major", "iiø7/ii", "Em7b5")]
    [InlineData("C major", "I/3", "C/E")]
    [InlineData("C major", "V7/7", "G7/F")]
    [InlineData("C major", "V7/3 of ii", "A7/C#")]
    [InlineData("C major", "V13b9/5 of V", "D13b9/A")]
    [InlineData("C major", "V7/7 of bVI", "Eb7/Db")]
    [InlineData("C major", "V7/n7 of bVI", "Eb7/D")]
    [InlineData("C major", "V7/b2 of ii", "A7/Bb")]
    [InlineData("C major", "V7/3 of V7/ii", "E7/G#")]
    [InlineData("C major", "I6/9/5 of IV", "F6/9/C")]
    [InlineData("C major", "V7/V7/ii", "E7")]
    [InlineData("C major", "IV/2", "F/G")]
    [InlineData("C major", "I6", "C6")]
    [InlineData("C major", "I6/9", "C6/9")]
    [InlineData("C major", "Vsus4", "Gsus4")]
    [InlineData("C major", "V7b9#11", "G7b9#11")]
    [InlineData("C major", "I+", "Caug")]
    [InlineData("C major", "I5", "C5")]
    [InlineData("E major", "iv6", "Am6")]
    [InlineData("F# major", "V7/vi", "A#7")]
    [InlineData("C minor", "i7", "Cm7")]
    [InlineData("C minor", "imaj7", "CmMaj7")]
    [InlineData("C minor", "iiø7", "Dm7b5")]
    [InlineData("C minor", "IIImaj7", "Ebmaj7")]
    [InlineData("C minor", "VImaj7", "Abmaj7")]
    [InlineData("C minor", "VII7", "Bb7")]
    [InlineData("C minor", "vii°7", "Bdim7")]
    [InlineData("C minor", "bvii7", "Bbm7")]
    [InlineData("C minor", "#VII7", "B7")]
    [InlineData("C minor", "viø7", "Am7b5")]
    [InlineData("C minor", "bvi", "Abm")]
    [InlineData("C minor", "V7b9", "G7b9")]
    [InlineData("C minor", "bIImaj7", "Dbmaj7")]
    [InlineData("C minor", "bbVII", "Bbb")]
    [InlineData("D dorian", "IV7", "G7")]
    [InlineData("D dorian", "viø7", "Bm7b5")]
    [InlineData("E phrygian", "IImaj7", "Fmaj7")]
    [InlineData("F lydian", "II7", "G7")]
    [InlineData("F lydian", "bIV", "Bb")]
    [InlineData("G mixolydian", "VIImaj7", "Fmaj7")]
    public void Numeral_and_chord_lead_to_each_other(string key, string numeral, string chord)
    {
        var parsed = RomanNumeral.Parse(numeral);
        parsed.ToString().ShouldBe(numeral);
        parsed.ToChord(Key.Parse(key)).ToString().ShouldBe(chord);
        var derived = parsed.Target is { } target
            ? RomanNumeral.FromChord(Chord.Parse(chord), Key.Parse(key), target)
            : RomanNumeral.FromChord(Chord.Parse(chord), Key.Parse(key));
        derived.ToString().ShouldBe(numeral);
    }

    // Common ways to write the same, common practice.
    [Theory]
    [InlineData("iim7", "ii7")]
    [InlineData("IIm7", "ii7")]
    [InlineData("ii-7", "ii7")]
    [InlineData("iimin7", "ii7")]
    [InlineData("iim7b5", "iiø7")]
    [InlineData("ii7b5", "iiø7")]
    [InlineData("iiø", "iiø7")]
    [InlineData("VIIm7b5", "viiø7")]
    [InlineData("viio", "vii°")]
    [InlineData("viio7", "vii°7")]
    [InlineData("viidim7", "vii°7")]
    [InlineData("♭VII7", "bVII7")]
    [InlineData("♯iv°7", "#iv°7")]
    [InlineData("IΔ7", "Imaj7")]
    [InlineData("IM7", "Imaj7")]
    [InlineData("V7(b9,13)", "V13b9")]
    [InlineData("V+7", "V7#5")]
    [InlineData("iv(maj7)", "ivmaj7")]
    [InlineData("iisus4", "IIsus4")]
    [InlineData("i5", "I5")]
    [InlineData("im6/9", "i6/9")]
    [InlineData("I/1", "I")]
    [InlineData("V7 of ii", "V7/ii")]
    [InlineData("vii°7 of V", "vii°7/V")]
    [InlineData("V7/3/ii", "V7/3 of ii")]
    [InlineData("V13sus4b9/4/iii", "V13sus4b9/4 of iii")]
    [InlineData("V7/ii/3", "V7/3 of ii")]
    [InlineData("V13b9/V/5", "V13b9/5 of V")]
    [InlineData("V7/V7/ii/b7", "V7/7 of V7/ii")]
    public void Other_spellings_come_out_canonical(string written, string canonical) => RomanNumeral.Parse(written).ToString().ShouldBe(canonical);

    [Theory]
    [InlineData("C minor", "bVI", "VI")]
    [InlineData("C minor", "bVII7", "VII7")]
    [InlineData("C minor", "#viø7", "viø7")]
    [InlineData("C minor", "#vii°7", "vii°7")]
    [InlineData("G mixolydian", "bVII", "VII")]
    [InlineData("F lydian", "#ivø7", "ivø7")]
    public void A_sign_that_the_scale_already_has_changes_nothing(string key, string written, string same) =>
        RomanNumeral.Parse(written).ToChord(Key.Parse(key)).ShouldBe(RomanNumeral.Parse(same).ToChord(Key.Parse(key)));

    [Theory]
    [InlineData("", 0)]
    [InlineData("X7", 0)]
    [InlineData("Ii7", 0)]
    [InlineData("VIII", 0)]
    [InlineData("V7q", 2)]
    [InlineData("V7/", 3)]
    [InlineData("V7/Q", 3)]
    [InlineData("V7/ii/", 6)]
    [InlineData("V7/ii/9", 6)]
    [InlineData("V7/9/ii", 3)]
    [InlineData("V7/3/ii/5", 8)]
    [InlineData("V7/ii/3/V", 6)]
    [InlineData("V7 of", 3)]
    [InlineData("V7 of 3", 6)]
    [InlineData("V7/3 of Q", 8)]
    [InlineData("V7/ii/3 of V", 6)]
    [InlineData("I/3/5", 4)]
    [InlineData("iimaj7x", 6)]
    [InlineData("V7(b9", 2)]
    public void An_error_says_where(string text, int index)
    {
        var result = RomanNumeralParser.Parse(text);
        result.Success.ShouldBeFalse();
        result.ErrorIndex.ShouldBe(index, result.Message);
        RomanNumeral.TryParse(text, out _).ShouldBeFalse();
        Should.Throw<FormatException>(() => RomanNumeral.Parse(text));
    }

    [Fact]
    public void An_error_names_the_nearest_numeral()
    {
        RomanNumeralParser.Parse("Imja7").Suggestion.ShouldBe("Imaj7");
        RomanNumeralParser.Parse("viidin7").Suggestion.ShouldBe("vii°7");
    }

    [Fact]
    public void No_chord_is_no_error() => RomanNumeralParser.Parse("N.C.").ShouldBe(new RomanNumeralParseResult { IsNoChord = true });

    private static readonly Gen<Chord> Chords = Gen.Select(Samples.NoteNames, Samples.Qualities, Gen.Nullable(Samples.NoteNames), (root, quality, bass) =>
        new Chord(root, quality, bass == root ? null : bass));

    [Fact]
    public void Every_chord_comes_back_from_its_numeral() =>
        Gen.Select(Chords, Samples.Keys).Where((chord, key) => IsNear(chord, key)).Sample((chord, key) =>
        {
            var numeral = RomanNumeral.FromChord(chord, key);
            numeral.ToChord(key).ShouldBe(chord, $"{chord} in {key} is {numeral}");
            var printed = RomanNumeral.Parse(numeral.ToString());
            printed.ShouldBe(numeral, $"{chord} in {key} is {numeral}");
            RomanNumeral.Parse(numeral.ToDisplayString()).ShouldBe(numeral);
        });

    [Fact]
    public void Every_chord_comes_back_from_its_numeral_applied_to_another() =>
        Gen.Select(Chords, Samples.Keys, Gen.Int[1, 7], Gen.Bool).Where((chord, key, _, _) => IsNear(chord, key)).Sample((chord, key, number, minor) =>
        {
            var target = new RomanNumeral(number, 0, Chord.Parse(minor ? "Cm" : "C").Quality);
            var local = target.ToChord(key).Root;
            if (Math.Abs(local.Fifths - chord.Root.Fifths) > 14) return;
            var numeral = RomanNumeral.FromChord(chord, key, target);
            numeral.ToChord(key).ShouldBe(chord, $"{chord} in {key} is {numeral}");
            RomanNumeral.Parse(numeral.ToString()).ShouldBe(numeral, numeral.ToString());
        });

    [Fact]
    public void Bass_behind_a_suspension_is_no_second_suspension()
    {
        var numeral = RomanNumeral.FromChord(Chord.Parse("C7sus2/F"), Key.Parse("F major"));
        numeral.ToString().ShouldBe("V7sus2/n4");
        RomanNumeral.Parse(numeral.ToString()).ShouldBe(numeral);
    }

    private static bool IsNear(Chord chord, Key key) =>
        Math.Abs(chord.Root.Fifths - key.Tonic.Fifths) <= 14 && (chord.Bass is not { } bass || Math.Abs(bass.Fifths - chord.Root.Fifths) <= 14);
}

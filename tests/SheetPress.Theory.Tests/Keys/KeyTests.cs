namespace SheetPress.Theory.Tests;

public class KeyTests
{
    public static TheoryData<Mode> AllModes => [.. Enum.GetValues<Mode>()];

    [Theory]
    [MemberData(nameof(AllModes))]
    public void Every_mode_has_fifteen_keys(Mode mode)
    {
        var keys = Key.All(mode);
        keys.Select(k => k.Fifths).ShouldBe(Enumerable.Range(-7, 15));
        foreach (var key in keys)
        {
            Key.Parse(key.ToString()).ShouldBe(key);
            // The signature holds as many signs as it says, each letter once.
            key.Scale.Notes.Sum(n => n.Alteration).ShouldBe(key.Fifths);
            key.Scale.Notes.Select(n => n.Letter).ShouldBeUnique();
            key.Scale.Notes.All(key.Contains).ShouldBeTrue();
            key.HasMinorThird.ShouldBe(key.Scale.Type.Find(3) == Degree.Parse("b3"));
        }
    }

    [Theory]
    [MemberData(nameof(AllModes))]
    public void The_twelve_keys_of_a_mode_have_twelve_tonics_a_fourth_apart(Mode mode)
    {
        var keys = Key.Twelve(mode);
        keys.Select(k => k.Tonic.PitchClass).ShouldBeUnique();
        keys.Length.ShouldBe(12);
        keys.ShouldAllBe(k => k.Fifths >= -6 && k.Fifths <= 5);
        for (var i = 0; i < 11; i++) ((keys[i + 1].Tonic.PitchClass - keys[i].Tonic.PitchClass + 12) % 12).ShouldBe(5);
    }

    [Fact]
    public void The_twelve_major_keys_are_those_of_the_cycle() =>
        // Common practice.
        string.Join(' ', Key.Twelve(Mode.Major).Select(k => k.Tonic)).ShouldBe("C F Bb Eb Ab Db Gb B E A D G");

    // The order of signs: common practice.
    [Theory]
    [InlineData("C major", 0)]
    [InlineData("F major", -1)]
    [InlineData("Eb major", -3)]
    [InlineData("C# major", 7)]
    [InlineData("Cb major", -7)]
    [InlineData("C minor", -3)]
    [InlineData("F# minor", 3)]
    [InlineData("A# minor", 7)]
    [InlineData("D dorian", 0)]
    [InlineData("E phrygian", 0)]
    [InlineData("F lydian", 0)]
    [InlineData("G mixolydian", 0)]
    [InlineData("A aeolian", 0)]
    [InlineData("B locrian", 0)]
    [InlineData("C ionian", 0)]
    [InlineData("C dorian", -2)]
    public void Signatures(string key, int fifths) => Key.Parse(key).Fifths.ShouldBe(fifths);

    [Theory]
    [InlineData("Am", "A minor")]
    [InlineData("Bb", "Bb major")]
    [InlineData("F♯ Minor", "F# minor")]
    [InlineData(" C minor ", "C minor")]
    [InlineData("Ebmaj", "Eb major")]
    public void Other_spellings(string text, string key) => Key.Parse(text).ToString().ShouldBe(key);

    [Theory]
    [InlineData("")]
    [InlineData("H major")]
    [InlineData("C happy")]
    [InlineData("G# major")]
    [InlineData("C 1")]
    [InlineData("C +1")]
    [InlineData("C major, minor")]
    public void What_is_no_key_is_not_read(string text) => Key.TryParse(text, out _).ShouldBeFalse();

    [Theory]
    [InlineData("G#", Mode.Major, "Ab major")]
    [InlineData("Fb", Mode.Major, "E major")]
    [InlineData("Db", Mode.Minor, "C# minor")]
    [InlineData("Eb", Mode.Major, "Eb major")]
    public void A_tonic_without_a_signature_is_respelled(string tonic, Mode mode, string key) =>
        Key.Nearest(NoteName.Parse(tonic), mode).ToString().ShouldBe(key);
}

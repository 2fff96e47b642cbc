namespace SheetPress.Theory.Tests;

// The twelve bars and their variants: common practice.
public class BluesFormTests
{
    private const string Plain = "F7 | F7 | F7 | F7 | Bb7 | Bb7 | F7 | F7 | C7 | Bb7 | F7 | F7";

    [Theory]
    [InlineData("F major", Plain, BluesKind.Major)]
    [InlineData("F major", "F7 | Bb7 | F7 | F7 | Bb7 | Bb7 | F7 | D7 | Gm7 | C7 | F7 D7 | Gm7 C7", BluesKind.Jazz)]
    [InlineData("F major", "F7 | Bb7 Bdim7 | F7 | Cm7 F7 | Bb7 | Bdim7 | F7/C | Am7b5 D7b9 | Gm7 | C7 | F7 D7b9 | Gm7 C7", BluesKind.Jazz)]
    [InlineData("F major", "Fmaj7 | Em7b5 A7b9 | Dm7 G7 | Cm7 F7 | Bb7 | Bbm7 Eb7 | Am7 | Abm7 Db7 | Gm7 | C7 | Am7 D7 | Gm7 C7", BluesKind.Jazz)]
    [InlineData("C minor", "Cm7 | Fm7 | Cm7 | Cm7 | Fm7 | Fm7 | Cm7 | Cm7 | Ab7 | G7#9 | Cm7 | Dm7b5 G7alt", BluesKind.Minor)]
    [InlineData("C minor", "Cm6 | Cm6 | Cm6 | C7 | Fm6 | Fm6 | Cm6 | Cm6 | Dm7b5 | G7 | Cm6 | G7", BluesKind.Minor)]
    [InlineData("A major", "A | D | A | A7 | D | D | A | A | E | E | A | E", BluesKind.Major)]
    [InlineData("E mixolydian", "E7 | E7 | E7 | E7 | A7 | A7 | E7 | E7 | B7 | A7 | E7 A7 | E7 B7", BluesKind.Major)]
    public void A_twelve_bar_blues(string key, string progression, BluesKind kind)
    {
        var form = Find(key, progression).ShouldNotBeNull();
        form.Kind.ShouldBe(kind);
        form.Sentence.ShouldNotContain("{");
        form.Sentence.ShouldEndWith(".");
    }

    [Theory]
    [InlineData("F major", "Fmaj7 | Bbmaj7 | Fmaj7 | Fmaj7 | Bbmaj7 | Bbmaj7 | Fmaj7 | Fmaj7 | C7 | Bbmaj7 | Fmaj7 | C7")]
    [InlineData("C major", Plain)]
    [InlineData("F major", "F7 | F7 | C7 | F7 | Bb7 | Bb7 | F7 | F7 | C7 | Bb7 | F7 | F7")]
    [InlineData("F major", "F7 | F7 | F7 | F7 | C7 | Bb7 | F7 | F7 | C7 | Bb7 | F7 | F7")]
    [InlineData("F major", "F7 | F7 | F7 | F7 | Bb7 | Bb7 | F7 | F7 | Bb7 | Bb7 | F7 | F7")]
    [InlineData("F major", "F7 | F7 | F7 | F7 | Bb7 | Bb7 | F7 | F7 | C7 | C7 | Dm7 | F7")]
    [InlineData("F major", "F7 | F7 | F7 | F7 | Bb7 | Bb7 | | F7 | C7 | C7 | F7 | F7")]
    [InlineData("F major", "F7 | F7 | F7 | F7 | Bb7 | Bb7 | F7 | F7 | C7 | C7 | F7")]
    public void No_twelve_bar_blues(string key, string progression) => Find(key, progression).ShouldBeNull();

    [Theory]
    [InlineData("F major", Plain, "A twelve-bar blues in F: four bars of the tonic F7; two of the subdominant B♭7 and two of the tonic; the last four fall from the dominant C7 over the subdominant B♭7 to the tonic. Where tonic and subdominant are dominant sevenths they take Mixolydian; all twelve bars can take the blues scale of F: F A♭ B♭ C♭ C E♭.")]
    [InlineData("F major", "F7 | Bb7 | F7 | Cm7 F7 | Bb7 | Bb7 | F7 | D7 | Gm7 | C7 | F7 D7 | Gm7 C7", "A twelve-bar blues in F in its jazz form: four bars of the tonic F7 with the subdominant already in the second (the quick change), and Cm7 – F7 in the fourth to lead on; two of the subdominant B♭7 and the tonic in the seventh, with D7 to lead on; the last four go home through Gm7 and C7. The last two bars are a turnaround, which leads back to the top. Where tonic and subdominant are dominant sevenths they take Mixolydian; all twelve bars can take the blues scale of F: F A♭ B♭ C♭ C E♭.")]
    [InlineData("E minor", "Em7 | Em7 | Em7 | Em7 | Am7 | Am7 | Em7 | Em7 | C7 | B7 | Em7 | B7", "A twelve-bar blues in E minor: four bars of the tonic Em7; two of the subdominant Am7 and two of the tonic; the last four go home through C7 and B7. The dominant in the last bar leads back to the top. All twelve bars can take the blues scale of E: E G A B♭ B D.")]
    public void Its_description(string key, string progression, string sentence) => Find(key, progression)!.Sentence.ShouldBe(sentence);

    [Fact]
    public void It_may_begin_later()
    {
        var bars = Bars("C7 | Gm7 C7 | " + Plain);
        HarmonicAnalysis.FindBlues(bars, 0, Key.Parse("F major")).ShouldBeNull();
        HarmonicAnalysis.FindBlues(bars, 2, Key.Parse("F major"))!.FirstBar.ShouldBe(2);
        HarmonicAnalysis.FindBlues(bars, 3, Key.Parse("F major")).ShouldBeNull();
    }

    private static BluesForm? Find(string key, string progression) => HarmonicAnalysis.FindBlues(Bars(progression), 0, Key.Parse(key));

    private static IReadOnlyList<Chord>[] Bars(string progression) =>
        [.. progression.Split('|').Select(b => (IReadOnlyList<Chord>)[.. b.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Chord.Parse)])];
}

namespace SheetPress.Theory.Tests;

public class MarkedTextTests
{
    [Theory]
    [InlineData("[Bb7] leads to [Ebmaj7]: [V7]–[I]", "B♭7 leads to E♭maj7: V7–I")]
    [InlineData("[bVI] [see below] stays", "♭VI [see below] stays")]
    [InlineData("no music [", "no music [")]
    public void Plain_text_has_no_brackets_round_music(string marked, string plain) => MarkedText.Plain(marked).ShouldBe(plain);

    [Fact]
    public void Every_quality_comes_back_from_its_marks()
    {
        foreach (var quality in ChordQualities.All)
        {
            var chord = new Chord(NoteName.Parse("Bb"), quality);
            MarkedText.Plain(MarkedText.Mark(chord)).ShouldBe(chord.ToDisplayString());
        }
    }

    // Sentences and functions with their music marked, as pages set them.
    [Theory]
    [InlineData("C minor", "Dm7b5 G7 Cm7", "[Dm7b5] – [G7] – [Cm7] is a minor [ii]–[V]–[i] into C minor: the roots climb a fourth twice, and home is on [Cm7].")]
    [InlineData("C minor", "G7 Abmaj7 Fm7", "[G7] – [Abmaj7] is a deceptive cadence: the ear expects [Cm], and the bass steps up to [Abmaj7] instead.")]
    public void Sentences_mark_their_music(string key, string progression, string marked) =>
        HarmonicAnalysis.FindPatterns([.. progression.Split(' ').Select(Chord.Parse)], Key.Parse(key))[0].Markup.ShouldBe(marked);

    [Fact]
    public void Functions_mark_their_music()
    {
        var analysis = HarmonicAnalysis.Analyze([Chord.Parse("A7"), Chord.Parse("Dm7")], Key.Parse("C major"))[0]!;
        analysis.Function.ShouldBe("secondary dominant of ii");
        analysis.FunctionMarkup.ShouldBe("secondary dominant of [ii]");
    }
}

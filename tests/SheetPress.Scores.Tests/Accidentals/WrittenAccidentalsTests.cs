using SheetPress.Theory;

namespace SheetPress.Scores.Tests.Accidentals;

/// <summary>Expected signs: common practice, as in the engraving handbooks (from memory).</summary>
public class WrittenAccidentalsTests
{
    [Theory]
    // A note of the signature needs nothing; one outside it does.
    [InlineData("C major", "C2 D2 E2 F2", "....")]
    [InlineData("G major", "F#2 F2 F#2 F#2", ".NN.")]
    [InlineData("Bb major", "Bb1 B1 Eb2 E2", ".N.N")]
    // A sign holds to the barline, for its own octave only; another octave gets a reminder.
    [InlineData("C major", "F#2 F#2 F#3 F#2", "N.N.")]
    [InlineData("C major", "F#2 F3 F2 F2", "NCN.")]
    // The measure after a sign reminds that it is gone, once.
    [InlineData("C major", "F#2 G2 | F2 F2", "N.C.")]
    [InlineData("C major", "F#2 F2 | F2 F2", "NN..")]
    [InlineData("C major", "F#2 G2 | G2 G2 | F2", "N....")]
    // A tie over the barline carries the sign for the tied note alone.
    [InlineData("C major", "F#2~ | F#2 F#2", "N.N")]
    [InlineData("C major", "F#2~ | F#2 F2", "N.C")]
    // Dead notes have no pitch to alter.
    [InlineData("C major", "xF#2 F#2", ".N")]
    public void Signs_of_a_line(string key, string line, string expected)
    {
        var measures = line.Split('|', StringSplitOptions.TrimEntries).Select((text, i) => MeasureOf(Key.Parse(key), i + 1, text, i > 0 && line.Split('|')[i - 1].TrimEnd().EndsWith('~')));
        var score = ScoreOf([.. measures]);
        var accidentals = WrittenAccidentals.Of(score);
        var found = "";
        for (var m = 0; m < score.Measures.Length; m++)
            for (var e = 0; e < score.Measures[m].Voices[0].Events.Length; e++)
                found += accidentals[m, 0, e, 0] switch { AccidentalSign.Needed => 'N', AccidentalSign.Courtesy => 'C', _ => '.' };
        found.ShouldBe(expected);
    }

    // Without a barline the sign still holds; it is repeated all the same, since the second part stands on another system.
    [Fact]
    public void A_divided_measure_repeats_its_signs()
    {
        var first = MeasureOf(Key.Parse("C major"), 1, "F#2 G#2", false) with { Barline = Barline.None };
        var signs = WrittenAccidentals.Of(ScoreOf([first, MeasureOf(Key.Parse("C major"), 1, "F#2 G2 G2", false)]));
        Enumerable.Range(0, 3).Select(e => signs[1, 0, e, 0]).ShouldBe([AccidentalSign.Needed, AccidentalSign.Needed, AccidentalSign.None]);
    }

    [Fact]
    public void A_new_signature_brings_no_courtesy_signs()
    {
        var score = ScoreOf([MeasureOf(Key.Parse("C major"), 1, "F2 G2", false), MeasureOf(Key.Parse("G major"), 2, "F#2 G2", false)]);
        WrittenAccidentals.Of(score)[1, 0, 0, 0].ShouldBe(AccidentalSign.None);
    }

    [Fact]
    public void Voices_share_the_signs_of_their_staff_in_reading_order()
    {
        var key = Key.Parse("C major");
        var upper = MeasureOf(key, 1, "C3 F#2", false).Voices[0];
        var lower = MeasureOf(key, 1, "F#2 F#2", false).Voices[0];
        var score = ScoreOf([MeasureOf(key, 1, "C3 F#2", false) with { Voices = [upper, lower] }]);
        var accidentals = WrittenAccidentals.Of(score);
        accidentals[0, 1, 0, 0].ShouldBe(AccidentalSign.Needed);
        accidentals[0, 0, 1, 0].ShouldBe(AccidentalSign.None);
        accidentals[0, 1, 1, 0].ShouldBe(AccidentalSign.None);
    }

    private static Score ScoreOf(params Measure[] measures) => new(Lines.Header, [.. measures]);

    private static Measure MeasureOf(Key key, int number, string text, bool firstIsTied)
    {
        var events = new List<ScoreEvent>();
        var at = Fraction.Zero;
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var tone = new Tone(Pitch.Parse(word.Trim('~', 'x')))
            {
                TieStart = word.EndsWith('~'),
                TieStop = firstIsTied && events.Count == 0,
                Head = word.StartsWith('x') ? Notehead.Dead : Notehead.Normal,
            };
            events.Add(new ScoreEvent { Onset = at, Value = new NoteValue(NoteBase.Quarter), Tones = [tone] });
            at += 1;
        }
        var meter = new Meter(events.Count, 4);
        return new Measure { Number = number, Meter = meter, Key = key, Length = meter.MeasureLength, Voices = [new Voice([.. events], [])] };
    }
}

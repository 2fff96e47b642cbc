using CsCheck;

namespace SheetPress.Theory.Tests;

public class KeyTranspositionTests
{
    private static readonly Gen<KeyTransposition> Transpositions = Gen.Select(Samples.Keys, Samples.Keys, (from, to) => new KeyTransposition(from, to));

    [Fact]
    public void There_and_back_keeps_the_spelling() =>
        Gen.Select(Transpositions, Samples.Pitches, Samples.Qualities).Sample((transposition, pitch, quality) =>
        {
            // Two accidentals more on each side of the way is as far as the remotest keys go.
            if (Math.Abs(pitch.Name.Fifths) > 10) return;
            var back = transposition.Inverse;
            back.Apply(transposition.Apply(pitch.Name)).ShouldBe(pitch.Name);
            // Half an octave is as near upward as downward; both ways go up then.
            var octave = transposition.Interval.HalfSteps == 6 && back.Interval.HalfSteps == 6 ? 1 : 0;
            back.Apply(transposition.Apply(pitch)).ShouldBe(new Pitch(pitch.Name, pitch.Octave + octave));
            var chord = new Chord(pitch.Name, quality, pitch.Name + Interval.PerfectFifth);
            back.Apply(transposition.Apply(chord)).ShouldBe(chord);
        });

    [Fact]
    public void The_tonic_goes_to_the_tonic_and_numerals_stay() =>
        Gen.Select(Transpositions, Gen.Int[1, 7], Gen.Int[-1, 1], Samples.Qualities).Sample((transposition, number, alteration, quality) =>
        {
            transposition.Apply(transposition.From.Tonic).ShouldBe(transposition.To.Tonic);
            transposition.Interval.HalfSteps.ShouldBeInRange(-6, 6);
            if (transposition.From.Mode != transposition.To.Mode) return;
            var numeral = new RomanNumeral(number, alteration, quality);
            transposition.Apply(numeral.ToChord(transposition.From)).ShouldBe(numeral.ToChord(transposition.To));
        });

    // Common practice.
    [Theory]
    [InlineData("C minor", "E minor", "Abmaj7", "Cmaj7")]
    [InlineData("C minor", "Eb minor", "Abmaj7", "Cbmaj7")]
    [InlineData("C minor", "D# minor", "Abmaj7", "Bmaj7")]
    [InlineData("C major", "Gb major", "F#m7b5", "Cm7b5")]
    [InlineData("C major", "F# major", "F#m7b5", "B#m7b5")]
    [InlineData("Bb major", "A major", "Eb/G", "D/F#")]
    [InlineData("D dorian", "G dorian", "G7", "C7")]
    public void Chords_keep_their_place(string from, string to, string chord, string moved) =>
        new KeyTransposition(Key.Parse(from), Key.Parse(to)).Apply(Chord.Parse(chord)).ToString().ShouldBe(moved);

    [Theory]
    [InlineData("C major", "A major", "C4", "A3")]
    [InlineData("C major", "E major", "C4", "E4")]
    [InlineData("C major", "Gb major", "C4", "Gb4")]
    [InlineData("C major", "B major", "C4", "B3")]
    [InlineData("B major", "Cb major", "B3", "Cb4")]
    public void Pitches_go_the_nearer_way(string from, string to, string pitch, string moved) =>
        new KeyTransposition(Key.Parse(from), Key.Parse(to)).Apply(Pitch.Parse(pitch)).ToString().ShouldBe(moved);

    [Theory]
    [InlineData("C major", "E major", "G major", "B major")]
    [InlineData("C major", "B major", "E major", "Eb major")]
    [InlineData("C major", "Db major", "A minor", "Bb minor")]
    public void Other_keys_of_the_music_move_along(string from, string to, string key, string moved) =>
        new KeyTransposition(Key.Parse(from), Key.Parse(to)).Apply(Key.Parse(key)).ToString().ShouldBe(moved);

    [Theory]
    [InlineData("Abb7", "G7")]
    [InlineData("Abb7/Ebb", "G7/D")]
    [InlineData("F##m7b5/C#", "Gm7b5/Db")]
    [InlineData("Ebm/Bbb", "Ebm/A")]
    [InlineData("Bb7/D", "Bb7/D")]
    public void Chords_with_double_signs_have_a_readable_form(string chord, string readable)
    {
        Chord.Parse(chord).Readable.ToString().ShouldBe(readable);
        Chord.Parse(chord).Readable.Lowest.PitchClass.ShouldBe(Chord.Parse(chord).Lowest.PitchClass);
    }
}

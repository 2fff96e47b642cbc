using CsCheck;

namespace SheetPress.Theory.Tests;

public class ChordTests
{
    // Common practice.
    [Theory]
    [InlineData("Cm7", "C Eb G Bb")]
    [InlineData("Dm7b5", "D F Ab C")]
    [InlineData("G7b9", "G B D F Ab")]
    [InlineData("Ebmaj7", "Eb G Bb D")]
    [InlineData("Bdim7", "B D F Ab")]
    [InlineData("C#dim7", "C# E G Bb")]
    [InlineData("Ebdim7", "Eb Gb Bbb Dbb")]
    [InlineData("F#7alt", "F# A# C## E G G##")]
    [InlineData("Bbm11", "Bb Db F Ab C Eb")]
    public void Tones_are_spelled_from_the_root(string chord, string tones) =>
        string.Join(' ', Chord.Parse(chord).Tones.Select(t => t.Note)).ShouldBe(tones);

    // Common practice: the way players write them.
    [Theory]
    [InlineData("Cm7b5", "Cm7♭5")]
    [InlineData("Bbmaj7/D", "B♭maj7/D")]
    [InlineData("CmMaj7", "Cm(maj7)")]
    [InlineData("CmMaj9", "Cm(maj9)")]
    [InlineData("CdimMaj7", "Cdim(maj7)")]
    [InlineData("F#7b9#11/A#", "F♯7♭9♯11/A♯")]
    [InlineData("C(b5)", "C(♭5)")]
    [InlineData("C6/9", "C6/9")]
    [InlineData("Cadd9", "Cadd9")]
    [InlineData("Emadd9", "Em(add9)")]
    [InlineData("Csus24", "Csus2(4)")]
    [InlineData("C7sus24b9/F", "C7sus2(4)♭9/F")]
    [InlineData("Caugadd9", "Caug(add9)")]
    [InlineData("Cdimaddb6", "Cdim(add♭6)")]
    [InlineData("Caddb9", "Cadd♭9")]
    [InlineData("Cadd9add11", "C(add9,add11)")]
    [InlineData("C(b5)add9no3", "C(♭5,add9,no3)")]
    [InlineData("C7b9#11add6", "C13♭9♯11")]
    [InlineData("Cm7b5add11", "Cm7♭5(add11)")]
    [InlineData("C9no3no5", "C9(no3,no5)")]
    [InlineData("Cno5", "C(no5)")]
    [InlineData("C7sus4b9", "C7sus4♭9")]
    [InlineData("Bbb", "B♭♭")]
    public void Display(string chord, string display) => Chord.Parse(chord).ToDisplayString().ShouldBe(display);

    [Theory]
    [InlineData("C", "", "")]
    [InlineData("Cm7b5", "m7", "♭5")]
    [InlineData("C7b9#11", "7", "♭9 ♯11")]
    [InlineData("C7alt", "7", "alt")]
    [InlineData("Cmaj7#11", "maj7", "♯11")]
    [InlineData("CmMaj7", "m(maj7)", "")]
    [InlineData("C7sus4", "7sus4", "")]
    [InlineData("C6/9", "6/9", "")]
    [InlineData("Cadd9", "add9", "")]
    [InlineData("C7no5", "7(no5)", "")]
    [InlineData("Cm7b5add11", "m7", "♭5 (add11)")]
    [InlineData("Caddb9", "add♭9", "")]
    [InlineData("C(b5)", "", "(♭5)")]
    public void The_symbol_is_taken_apart_for_engraving(string chord, string main, string raised)
    {
        var symbol = Chord.Parse(chord).Symbol;
        symbol.Root.ShouldBe(NoteName.Parse("C"));
        symbol.Main.ShouldBe(main);
        string.Join(' ', symbol.Raised).ShouldBe(raised);
    }

    // The words; common practice.
    [Theory]
    [InlineData("Cm7b5", "half-diminished seventh")]
    [InlineData("C7b9", "dominant seventh flat ninth")]
    [InlineData("C7b5b9b13", "dominant seventh flat fifth flat ninth flat thirteenth")]
    [InlineData("C9no3", "dominant ninth without third")]
    [InlineData("Cmaj7add13", "major seventh added thirteenth")]
    [InlineData("Cm6/9add11", "minor six-nine added eleventh")]
    [InlineData("C13sus4#11", "thirteenth suspended fourth sharp eleventh")]
    public void Names(string chord, string name) => Chord.Parse(chord).Quality.Name.ShouldBe(name);

    [Theory]
    [InlineData("C7#5b9", "C7b9#5")]
    [InlineData("Cm7b5", "Cø")]
    [InlineData("C13b9", "C7(b9,13)")]
    [InlineData("C7b5b9b13", "C7(b13,b9,b5)")]
    public void Equality_is_by_tones(string left, string right)
    {
        var (a, b) = (Chord.Parse(left), Chord.Parse(right));
        a.ShouldBe(b);
        a.GetHashCode().ShouldBe(b.GetHashCode());
        a.Quality.Equals((object)b.Quality).ShouldBeTrue();
    }

    [Fact]
    public void Transposing_there_and_back_gives_the_same_chord() =>
        Gen.Select(Samples.NoteNames, Samples.Qualities, Samples.Intervals).Sample((root, quality, interval) =>
        {
            var chord = new Chord(root, quality, root + Interval.MajorThird);
            chord.Transpose(interval).Transpose(-interval).ShouldBe(chord);
            chord.Transpose(interval).Tones.Select(t => t.Degree).ShouldBe(chord.Tones.Select(t => t.Degree));
            chord.Transpose(interval).Root.ShouldBe(root + interval);
        });
}

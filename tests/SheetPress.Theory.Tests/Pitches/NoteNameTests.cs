using CsCheck;

namespace SheetPress.Theory.Tests;

public class NoteNameTests
{
    [Fact]
    public void Printing_then_reading_gives_the_same_note() => Samples.NoteNames.Sample(note =>
    {
        NoteName.Parse(note.ToString()).ShouldBe(note);
        NoteName.Parse(note.ToDisplayString()).ShouldBe(note);
    });

    [Fact]
    public void The_line_of_fifths_names_every_note_once() => Samples.NoteNames.Sample(note =>
    {
        NoteName.FromFifths(note.Fifths).ShouldBe(note);
        NoteName.FromFifths(note.Fifths + 1).ShouldBe(note + Interval.PerfectFifth);
    });

    [Fact]
    public void The_interval_up_to_a_note_leads_there() => Gen.Select(Samples.NoteNames, Samples.NoteNames).Sample((low, high) =>
    {
        var interval = low.IntervalTo(high);
        (low + interval).ShouldBe(high);
        interval.Steps.ShouldBeInRange(0, 6);
    });

    [Fact]
    public void The_simplest_spelling_sounds_the_same_with_at_most_one_sign() =>
        Gen.Select(Gen.Int[0, 6], Gen.Int[-6, 6], (letter, alteration) => new NoteName((Letter)letter, alteration)).Sample(note =>
        {
            note.Simplest.PitchClass.ShouldBe(note.PitchClass);
            Math.Abs(note.Simplest.Alteration).ShouldBeLessThanOrEqualTo(1);
            if (Math.Abs(note.Alteration) <= 1) note.Simplest.ShouldBe(note);
        });

    // Common practice.
    [Theory]
    [InlineData("Bbb", "A")]
    [InlineData("F##", "G")]
    [InlineData("E##", "F#")]
    [InlineData("Cbb", "Bb")]
    [InlineData("Fbb", "Eb")]
    [InlineData("F###", "G#")]
    [InlineData("Cb", "Cb")]
    [InlineData("E#", "E#")]
    public void Simplest_spellings(string note, string simple) => NoteName.Parse(note).Simplest.ShouldBe(NoteName.Parse(simple));

    [Theory]
    [InlineData("")]
    [InlineData("H")]
    [InlineData("Cb#")]
    [InlineData("C!")]
    [InlineData("Cbbbbbbb")]
    public void What_is_no_note_is_not_read(string text) => NoteName.TryParse(text, out _).ShouldBeFalse();
}

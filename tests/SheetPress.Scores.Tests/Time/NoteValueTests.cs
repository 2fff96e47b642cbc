namespace SheetPress.Scores.Tests;

public class NoteValueTests
{
    // A dot adds half, a second dot a quarter of the value (common practice).
    [Theory]
    [InlineData(NoteBase.Whole, 0, "4", 0)]
    [InlineData(NoteBase.Half, 1, "3", 0)]
    [InlineData(NoteBase.Quarter, 0, "1", 0)]
    [InlineData(NoteBase.Quarter, 2, "7/4", 0)]
    [InlineData(NoteBase.Eighth, 0, "1/2", 1)]
    [InlineData(NoteBase.Sixteenth, 1, "3/8", 2)]
    [InlineData(NoteBase.SixtyFourth, 0, "1/16", 4)]
    public void Lengths_and_flags(NoteBase noteBase, int dots, string length, int flags)
    {
        var value = new NoteValue(noteBase, dots);
        value.Duration.ShouldBe(RhythmText.FractionOf(length));
        value.Flags.ShouldBe(flags);
        value.IsTuplet.ShouldBeFalse();
    }

    [Fact]
    public void A_triplet_eighth_is_a_third_of_a_quarter()
    {
        var value = new NoteValue(NoteBase.Eighth).InTuplet(3, 2);
        value.Duration.ShouldBe(new Fraction(1, 3));
        value.WrittenDuration.ShouldBe(new Fraction(1, 2));
        value.IsTuplet.ShouldBeTrue();
    }

    [Fact]
    public void The_default_is_a_whole_note() => default(NoteValue).ShouldBe(new NoteValue(NoteBase.Whole));

    [Fact]
    public void Nonsense_is_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => new NoteValue((NoteBase)7));
        Should.Throw<ArgumentOutOfRangeException>(() => new NoteValue(NoteBase.Quarter, 4));
        Should.Throw<ArgumentOutOfRangeException>(() => new NoteValue(NoteBase.Quarter, 0, 0, 2));
        Should.Throw<ArgumentOutOfRangeException>(() => new NoteValue(NoteBase.Quarter, 0, 3, 0));
    }

    [Fact]
    public void A_tempo_in_dotted_quarters_is_half_as_fast_again_in_quarters() =>
        new Tempo(60, new NoteValue(NoteBase.Quarter, 1)).QuartersPerMinute.ShouldBe(90);
}

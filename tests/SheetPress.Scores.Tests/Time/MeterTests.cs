namespace SheetPress.Scores.Tests;

public class MeterTests
{
    // Usual groups, common practice: threes in compound time, threes before twos in fives, the three last in sevens.
    [Theory]
    [InlineData("4/4", "1+1+1+1", false, "4")]
    [InlineData("3/4", "1+1+1", false, "3")]
    [InlineData("2/2", "1+1", false, "4")]
    [InlineData("5/4", "3+2", false, "5")]
    [InlineData("7/4", "4+3", false, "7")]
    [InlineData("6/4", "3+3", true, "6")]
    [InlineData("3/8", "3", false, "3/2")]
    [InlineData("6/8", "3+3", true, "3")]
    [InlineData("9/8", "3+3+3", true, "9/2")]
    [InlineData("12/8", "3+3+3+3", true, "6")]
    [InlineData("5/8", "3+2", false, "5/2")]
    [InlineData("7/8", "2+2+3", false, "7/2")]
    [InlineData("8/8 3+3+2", "3+3+2", false, "4")]
    public void Groups_and_lengths(string meter, string groups, bool compound, string length)
    {
        var made = RhythmText.MeterOf(meter);
        string.Join('+', made.Groups).ShouldBe(groups);
        made.IsCompound.ShouldBe(compound);
        made.MeasureLength.ShouldBe(RhythmText.FractionOf(length));
    }

    [Fact]
    public void Beats_start_where_groups_do() => new Meter(7, 8).BeatStarts.ShouldBe([0, 1, 2, new Fraction(7, 2)]);

    [Fact]
    public void Every_usual_grouping_adds_up()
    {
        foreach (var unit in new[] { 1, 2, 4, 8, 16 })
        {
            for (var beats = 1; beats <= 32; beats++) new Meter(beats, unit).Groups.Sum().ShouldBe(beats);
        }
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Should.Throw<ArgumentException>(() => new Meter(0, 4));
        Should.Throw<ArgumentException>(() => new Meter(33, 4));
        Should.Throw<ArgumentException>(() => new Meter(4, 3));
        Should.Throw<ArgumentException>(() => new Meter(7, 8, 3, 3));
        Should.Throw<ArgumentException>(() => new Meter(3, 8, 3, 0));
    }

    [Fact]
    public void Meters_are_equal_when_their_groups_are()
    {
        new Meter(7, 8).ShouldBe(new Meter(7, 8, 2, 2, 3));
        new Meter(7, 8).ShouldNotBe(new Meter(7, 8, 3, 2, 2));
        new Meter(7, 8).GetHashCode().ShouldBe(new Meter(7, 8, 2, 2, 3).GetHashCode());
    }
}

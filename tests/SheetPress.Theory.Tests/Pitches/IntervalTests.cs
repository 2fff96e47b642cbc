using CsCheck;

namespace SheetPress.Theory.Tests;

public class IntervalTests
{
    [Fact]
    public void Intervals_add_up_like_a_group() =>
        Gen.Select(Samples.Intervals, Samples.Intervals, Samples.Intervals).Sample((a, b, c) =>
        {
            ((a + b) + c).ShouldBe(a + (b + c));
            (a + b).ShouldBe(b + a);
            (a + Interval.Unison).ShouldBe(a);
            (a - a).ShouldBe(Interval.Unison);
            (-(-a)).ShouldBe(a);
            (a - b).ShouldBe(a + -b);
            (a * 3).ShouldBe(a + a + a);
        });

    [Fact]
    public void Pitches_and_intervals_agree_on_differences() =>
        Gen.Select(Samples.Pitches, Samples.Intervals, Samples.Intervals).Sample((pitch, a, b) =>
        {
            var moved = pitch + a;
            moved.MidiNumber.ShouldBe(pitch.MidiNumber + a.HalfSteps);
            moved.StaffStep.ShouldBe(pitch.StaffStep + a.Steps);
            pitch.IntervalTo(moved).ShouldBe(a);
            (moved - a).ShouldBe(pitch);
        });

    [Fact]
    public void Transposing_note_names_forgets_only_the_octave() =>
        Gen.Select(Samples.Pitches, Samples.Intervals).Sample((pitch, interval) =>
        {
            (pitch.Name + interval).ShouldBe((pitch + interval).Name);
            (pitch.Name + interval - interval).ShouldBe(pitch.Name);
            (pitch.Name + interval.Simple).ShouldBe(pitch.Name + interval);
        });

    [Fact]
    public void Printing_then_reading_gives_the_same_interval() =>
        Samples.Intervals.Sample(interval => Interval.Parse(interval.ToString()).ShouldBe(interval));

    [Fact]
    public void Quality_and_number_make_the_interval_again() =>
        Samples.Intervals.Where(i => !i.IsDescending && i.QualityDegree <= 1).Sample(interval => Interval.Of(interval.Quality, interval.Number).ShouldBe(interval));

    // Sizes in half steps: common practice.
    [Theory]
    [InlineData("P1", 0)]
    [InlineData("m2", 1)]
    [InlineData("M2", 2)]
    [InlineData("A2", 3)]
    [InlineData("m3", 3)]
    [InlineData("M3", 4)]
    [InlineData("d4", 4)]
    [InlineData("P4", 5)]
    [InlineData("A4", 6)]
    [InlineData("d5", 6)]
    [InlineData("P5", 7)]
    [InlineData("A5", 8)]
    [InlineData("m6", 8)]
    [InlineData("M6", 9)]
    [InlineData("d7", 9)]
    [InlineData("m7", 10)]
    [InlineData("M7", 11)]
    [InlineData("P8", 12)]
    [InlineData("m10", 15)]
    [InlineData("M10", 16)]
    [InlineData("A11", 18)]
    [InlineData("-P5", -7)]
    [InlineData("dd7", 8)]
    [InlineData("AA4", 7)]
    public void Sizes_in_half_steps(string text, int halfSteps) => Interval.Parse(text).HalfSteps.ShouldBe(halfSteps);

    [Theory]
    [InlineData("P3")]
    [InlineData("m5")]
    [InlineData("M4")]
    [InlineData("")]
    [InlineData("X2")]
    [InlineData("M")]
    [InlineData("M0")]
    [InlineData("-")]
    public void What_does_not_exist_is_not_read(string text) => Interval.TryParse(text, out _).ShouldBeFalse();

    [Theory]
    [InlineData("P15", "P1")]
    [InlineData("m10", "m3")]
    [InlineData("-P4", "P5")]
    [InlineData("-m2", "M7")]
    [InlineData("P8", "P1")]
    public void Simple_form(string interval, string simple) => Interval.Parse(interval).Simple.ShouldBe(Interval.Parse(simple));
}

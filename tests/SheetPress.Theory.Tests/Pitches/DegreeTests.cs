using CsCheck;

namespace SheetPress.Theory.Tests;

public class DegreeTests
{
    private static readonly Gen<Degree> Degrees = Gen.Select(Gen.Int[1, 30], Gen.Int[-3, 3], (number, alteration) => new Degree(number, alteration));

    [Fact]
    public void Printing_then_reading_gives_the_same_degree() => Degrees.Sample(degree =>
    {
        Degree.Parse(degree.ToString()).ShouldBe(degree);
        Degree.Parse(degree.ToDisplayString()).ShouldBe(degree);
    });

    [Fact]
    public void A_degree_and_its_interval_are_the_same() => Degrees.Where(d => d.Number > 1).Sample(degree => Degree.FromInterval(degree.ToInterval()).ShouldBe(degree));

    // Common practice.
    [Theory]
    [InlineData("R", 0)]
    [InlineData("b3", 3)]
    [InlineData("5", 7)]
    [InlineData("bb7", 9)]
    [InlineData("8", 12)]
    [InlineData("10", 16)]
    [InlineData("#11", 18)]
    [InlineData("b13", 20)]
    public void Half_steps_above_the_root(string degree, int halfSteps) => Degree.Parse(degree).HalfSteps.ShouldBe(halfSteps);

    [Theory]
    [InlineData("")]
    [InlineData("b")]
    [InlineData("0")]
    [InlineData("100")]
    [InlineData("b#3")]
    [InlineData("bbbb3")]
    [InlineData("+5")]
    public void What_is_no_degree_is_not_read(string text) => Degree.TryParse(text, out _).ShouldBeFalse();
}

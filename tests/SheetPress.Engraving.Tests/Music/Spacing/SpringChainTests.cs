namespace SheetPress.Engraving.Tests.Music.Spacing;

/// <summary>Springs in a row under one tension.</summary>
public class SpringChainTests
{
    private static readonly Spring[] Springs = [new(2, 1, 2.5), new(0, 3, 1), new(0, 3, 4), new(0, 2, 0.5, 5), new(0, 4, 2, 3), new(0, 1, 1, 2)];

    [Fact]
    public void Lengths_add_up_and_are_those_of_one_tension()
    {
        var chain = new SpringChain([.. Springs], [new Rod(1, 4, 14)]);
        var tensions = new List<double>();
        for (var length = chain.LeastLength + 0.01; length < 4 * chain.NaturalLength; length += 0.37)
        {
            chain.Solve(length).Sum().ShouldBe(length, 1e-6);
            var tension = chain.TensionFor(length);
            chain.Length(tension).ShouldBe(length, 1e-6);
            tensions.Add(tension);
        }
        tensions.ShouldBeInOrder();
        chain.TensionFor(chain.NaturalLength).ShouldBe(1, 1e-9);
    }

    // Room that a text wants is there at natural width, is given up in proportion where it is narrow, and does not grow while others have less.
    [Theory]
    [InlineData(0.5, 2.5)]
    [InlineData(1, 5)]
    [InlineData(1.5, 5)]
    [InlineData(2, 5)]
    [InlineData(3, 6)]
    public void A_wanted_length_is_not_stretched_further(double tension, double length) => Springs[3].At(tension).ShouldBe(length, 1e-9);
}

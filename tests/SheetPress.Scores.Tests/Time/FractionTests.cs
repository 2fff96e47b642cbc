using System.Numerics;
using CsCheck;

namespace SheetPress.Scores.Tests;

public class FractionTests
{
    private static readonly Gen<Fraction> Any =
        from numerator in Gen.Int[-5000, 5000]
        from denominator in Gen.Int[1, 5000]
        select new Fraction(numerator, denominator);

    [Theory]
    [InlineData(2, 4, "1/2")]
    [InlineData(6, 3, "2")]
    [InlineData(3, -6, "-1/2")]
    [InlineData(0, 7, "0")]
    public void Is_kept_in_lowest_terms(int numerator, int denominator, string expected) => new Fraction(numerator, denominator).ToString().ShouldBe(expected);

    [Fact]
    public void The_default_is_zero()
    {
        default(Fraction).ShouldBe(Fraction.Zero);
        default(Fraction).ShouldBe(new Fraction(0, 5));
        (default(Fraction) + Fraction.One).ShouldBe(1);
    }

    [Fact]
    public void Division_by_zero_is_refused()
    {
        Should.Throw<DivideByZeroException>(() => new Fraction(1, 0));
        Should.Throw<DivideByZeroException>(() => Fraction.One / Fraction.Zero);
    }

    // Against whole-number arithmetic of the platform: a/b op c/d compared after multiplying out.
    [Fact]
    public void Arithmetic_is_exact() => Gen.Select(Any, Any).Sample((a, b) =>
    {
        BigInteger n(Fraction f) => f.Numerator;
        BigInteger d(Fraction f) => f.Denominator;
        var sum = a + b;
        (n(sum) * d(a) * d(b)).ShouldBe(((n(a) * d(b)) + (n(b) * d(a))) * d(sum));
        var product = a * b;
        (n(product) * d(a) * d(b)).ShouldBe(n(a) * n(b) * d(product));
        (a - b + b).ShouldBe(a);
        if (b != 0) (a / b * b).ShouldBe(a);
        a.CompareTo(b).ShouldBe((n(a) * d(b)).CompareTo(n(b) * d(a)));
        Fraction.Min(a, b).ShouldBe(a <= b ? a : b);
        Fraction.Max(a, b).ShouldBe(a >= b ? a : b);
    });

    [Fact]
    public void Floor_and_modulo_agree_with_the_nearest_multiple_below() => Gen.Select(Any, Any).Sample((a, step) =>
    {
        if (step <= 0) return;
        var rest = a.Modulo(step);
        (rest >= 0 && rest < step).ShouldBeTrue();
        (a - rest).IsMultipleOf(step).ShouldBeTrue();
        new Fraction(a.Floor).ShouldBeLessThanOrEqualTo(a);
        new Fraction(a.Floor + 1).ShouldBeGreaterThan(a);
    });
}

using System.Globalization;

namespace SheetPress.Scores;

/// <summary>An exact fraction in lowest terms, used for musical time in quarter notes. The default value is zero.</summary>
public readonly record struct Fraction : IComparable<Fraction>
{
    private readonly long _denominatorLessOne;

    /// <summary>The numerator; it carries the sign.</summary>
    public long Numerator { get; }

    /// <summary>The denominator, always positive.</summary>
    public long Denominator => _denominatorLessOne + 1;

    /// <summary>Makes a fraction and reduces it.</summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public Fraction(long numerator, long denominator = 1)
    {
        if (denominator == 0) throw new DivideByZeroException("A fraction needs a denominator other than zero.");
        if (denominator == 1)
        {
            Numerator = numerator;
            return;
        }
        var divisor = GreatestCommonDivisor(Math.Abs(numerator), Math.Abs(denominator));
        if (denominator < 0) divisor = -divisor;
        Numerator = numerator / divisor;
        _denominatorLessOne = (denominator / divisor) - 1;
    }

    /// <summary>Zero.</summary>
    public static Fraction Zero => default;
    /// <summary>One quarter note, when time is meant.</summary>
    public static Fraction One => new(1);

    /// <summary>A whole number as a fraction.</summary>
    public static implicit operator Fraction(int value) => new(value);

    /// <summary>Sum.</summary>
    public static Fraction operator +(Fraction a, Fraction b) => a.Denominator == b.Denominator
        ? new(a.Numerator + b.Numerator, a.Denominator)
        : new((a.Numerator * b.Denominator) + (b.Numerator * a.Denominator), a.Denominator * b.Denominator);
    /// <summary>Difference.</summary>
    public static Fraction operator -(Fraction a, Fraction b) => a + (-b);
    /// <summary>Negation.</summary>
    public static Fraction operator -(Fraction a) => new(-a.Numerator, a.Denominator);
    /// <summary>Product.</summary>
    public static Fraction operator *(Fraction a, Fraction b) => new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);
    /// <summary>Quotient.</summary>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static Fraction operator /(Fraction a, Fraction b) => new(a.Numerator * b.Denominator, a.Denominator * b.Numerator);
    /// <summary>Less than.</summary>
    public static bool operator <(Fraction a, Fraction b) => a.CompareTo(b) < 0;
    /// <summary>Greater than.</summary>
    public static bool operator >(Fraction a, Fraction b) => a.CompareTo(b) > 0;
    /// <summary>At most.</summary>
    public static bool operator <=(Fraction a, Fraction b) => a.CompareTo(b) <= 0;
    /// <summary>At least.</summary>
    public static bool operator >=(Fraction a, Fraction b) => a.CompareTo(b) >= 0;

    /// <summary>The smaller of two.</summary>
    public static Fraction Min(Fraction a, Fraction b) => a <= b ? a : b;
    /// <summary>The larger of two.</summary>
    public static Fraction Max(Fraction a, Fraction b) => a >= b ? a : b;

    /// <summary>The largest whole number not above the value.</summary>
    public long Floor => Numerator >= 0 ? Numerator / Denominator : -((-Numerator + Denominator - 1) / Denominator);

    /// <summary>The rest after taking away whole multiples of a positive step; zero or positive.</summary>
    public Fraction Modulo(Fraction step) => this - (step * new Fraction((this / step).Floor));

    /// <summary>Whether the value is a whole multiple of a positive step.</summary>
    public bool IsMultipleOf(Fraction step) => (this / step).Denominator == 1;

    /// <inheritdoc />
    public int CompareTo(Fraction other) => Denominator == other.Denominator
        ? Numerator.CompareTo(other.Numerator)
        : (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator);

    /// <summary>The nearest double, for drawing and playback only.</summary>
    public double ToDouble() => (double)Numerator / Denominator;

    /// <summary>"3/2", or "2" for a whole number.</summary>
    public override string ToString() => Denominator == 1
        ? Numerator.ToString(CultureInfo.InvariantCulture)
        : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");

    private static long GreatestCommonDivisor(long a, long b)
    {
        while (b != 0) (a, b) = (b, a % b);
        return a == 0 ? 1 : a;
    }
}

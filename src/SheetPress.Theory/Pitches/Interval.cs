using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace SheetPress.Theory;

/// <summary>The quality of an interval. More than once augmented or diminished is told by <see cref="Interval.QualityDegree"/>.</summary>
public enum IntervalQuality
{
    /// <summary>Smaller than minor or perfect.</summary>
    Diminished,
    /// <summary>The smaller of the two usual sizes of seconds, thirds, sixths and sevenths.</summary>
    Minor,
    /// <summary>The usual size of unisons, fourths, fifths and octaves.</summary>
    Perfect,
    /// <summary>The larger of the two usual sizes of seconds, thirds, sixths and sevenths.</summary>
    Major,
    /// <summary>Larger than major or perfect.</summary>
    Augmented,
}

/// <summary>
/// A directed interval between spelled pitches, held as letter steps and half steps so that sums and differences are exact.
/// Positive is upward. Equality is by spelling: an augmented fourth is no diminished fifth. The default is the perfect unison.
/// </summary>
public readonly record struct Interval
{
    private static ReadOnlySpan<sbyte> UsualHalfSteps => [0, 2, 4, 5, 7, 9, 11];

    /// <summary>Letter steps: 0 a unison, 1 a second, 7 an octave; negative is downward.</summary>
    public int Steps { get; }

    /// <summary>Half steps of equal temperament; negative is downward (or a diminished unison).</summary>
    public int HalfSteps { get; }

    /// <summary>Makes an interval from letter steps and half steps.</summary>
    public Interval(int steps, int halfSteps)
    {
        Steps = steps;
        HalfSteps = halfSteps;
    }

    /// <summary>Makes an upward interval from a number (1 unison, 8 octave, 10 tenth) and half steps away from its major or perfect size.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 1.</exception>
    public static Interval FromNumber(int number, int alteration = 0)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        var steps = number - 1;
        return new Interval(steps, UsualHalfSteps[steps % 7] + (12 * (steps / 7)) + alteration);
    }

    /// <summary>Makes an upward interval from a quality and a number.</summary>
    /// <exception cref="ArgumentException">The quality does not exist for the number, such as a perfect third.</exception>
    public static Interval Of(IntervalQuality quality, int number)
    {
        var perfect = IsPerfectNumber(number);
        var alteration = quality switch
        {
            IntervalQuality.Perfect when perfect => 0,
            IntervalQuality.Major when !perfect => 0,
            IntervalQuality.Minor when !perfect => -1,
            IntervalQuality.Augmented => 1,
            IntervalQuality.Diminished => perfect ? -1 : -2,
            _ => throw new ArgumentException($"There is no {quality} interval of number {number}.", nameof(quality)),
        };
        return FromNumber(number, alteration);
    }

    /// <summary>The perfect unison.</summary>
    public static Interval Unison => default;
    /// <summary>The minor second, a half step to the next letter.</summary>
    public static Interval MinorSecond => new(1, 1);
    /// <summary>The major second.</summary>
    public static Interval MajorSecond => new(1, 2);
    /// <summary>The minor third.</summary>
    public static Interval MinorThird => new(2, 3);
    /// <summary>The major third.</summary>
    public static Interval MajorThird => new(2, 4);
    /// <summary>The perfect fourth.</summary>
    public static Interval PerfectFourth => new(3, 5);
    /// <summary>The perfect fifth.</summary>
    public static Interval PerfectFifth => new(4, 7);
    /// <summary>The perfect octave.</summary>
    public static Interval Octave => new(7, 12);

    /// <summary>The number musicians say, from 1 (unison); it has no direction.</summary>
    public int Number => Math.Abs(Steps) + 1;

    /// <summary>Half steps beyond the major or perfect size of the number, taken upward: -1 minor (or diminished fifth), 1 augmented.</summary>
    public int Alteration
    {
        get
        {
            var (steps, halfSteps) = IsDescending ? (-Steps, -HalfSteps) : (Steps, HalfSteps);
            return halfSteps - UsualHalfSteps[steps % 7] - (12 * (steps / 7));
        }
    }

    /// <summary>True when the interval goes down: to a lower letter, or on one letter to a lower half step.</summary>
    public bool IsDescending => Steps < 0 || (Steps == 0 && HalfSteps < 0);

    /// <summary>The quality of the interval.</summary>
    public IntervalQuality Quality => (IsPerfectNumber(Number), Alteration) switch
    {
        (true, 0) => IntervalQuality.Perfect,
        (false, 0) => IntervalQuality.Major,
        (false, -1) => IntervalQuality.Minor,
        (_, > 0) => IntervalQuality.Augmented,
        _ => IntervalQuality.Diminished,
    };

    /// <summary>How many times augmented or diminished: 1 in most cases, 2 for doubly so; 0 for perfect, major and minor.</summary>
    public int QualityDegree => Quality switch
    {
        IntervalQuality.Augmented => Alteration,
        IntervalQuality.Diminished => IsPerfectNumber(Number) ? -Alteration : -Alteration - 1,
        _ => 0,
    };

    /// <summary>The interval brought upward into one octave: unison to seventh (a tenth becomes a third, a descending fourth a fifth).</summary>
    public Interval Simple
    {
        get
        {
            var octaves = Steps >= 0 ? Steps / 7 : -((-Steps + 6) / 7);
            return new Interval(Steps - (7 * octaves), HalfSteps - (12 * octaves));
        }
    }

    /// <summary>Sum of two intervals.</summary>
    public static Interval operator +(Interval left, Interval right) => new(left.Steps + right.Steps, left.HalfSteps + right.HalfSteps);
    /// <summary>Difference of two intervals.</summary>
    public static Interval operator -(Interval left, Interval right) => new(left.Steps - right.Steps, left.HalfSteps - right.HalfSteps);
    /// <summary>The same interval in the other direction.</summary>
    public static Interval operator -(Interval value) => new(-value.Steps, -value.HalfSteps);
    /// <summary>An interval stacked a number of times.</summary>
    public static Interval operator *(Interval value, int times) => new(value.Steps * times, value.HalfSteps * times);

    /// <summary>Short text: quality letters P M m A d (repeated when doubly so) and the number, with a minus when descending: "P5", "m10", "-M3", "dd7".</summary>
    public override string ToString()
    {
        var quality = Quality switch
        {
            IntervalQuality.Perfect => "P",
            IntervalQuality.Major => "M",
            IntervalQuality.Minor => "m",
            IntervalQuality.Augmented => new string('A', QualityDegree),
            _ => new string('d', QualityDegree),
        };
        return string.Create(CultureInfo.InvariantCulture, $"{(IsDescending ? "-" : "")}{quality}{Number}");
    }

    /// <summary>Reads the form that <see cref="ToString"/> writes.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Interval interval)
    {
        interval = default;
        if (string.IsNullOrEmpty(text)) return false;
        var at = text[0] == '-' ? 1 : 0;
        var qualityStart = at;
        while (at < text.Length && !char.IsAsciiDigit(text[at])) at++;
        var quality = text[qualityStart..at];
        if (!int.TryParse(text.AsSpan(at), NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number is < 1 or > 99) return false;
        var perfect = IsPerfectNumber(number);
        int alteration;
        switch (quality)
        {
            case "P" when perfect: case "M" when !perfect: alteration = 0; break;
            case "m" when !perfect: alteration = -1; break;
            default:
                if (quality.Length is 0 or > 4) return false;
                if (quality.All(c => c == 'A')) alteration = quality.Length;
                else if (quality.All(c => c == 'd')) alteration = -quality.Length - (perfect ? 0 : 1);
                else return false;
                break;
        }
        interval = FromNumber(number, alteration);
        if (text[0] == '-') interval = -interval;
        return true;
    }

    /// <summary>Reads the form that <see cref="ToString"/> writes.</summary>
    /// <exception cref="FormatException">The text is no interval.</exception>
    public static Interval Parse(string text) =>
        TryParse(text, out var interval) ? interval : throw new FormatException($"'{text}' is no interval: write a quality P M m A d and a number, as in m3.");

    private static bool IsPerfectNumber(int number) => ((number - 1) % 7) is 0 or 3 or 4;
}

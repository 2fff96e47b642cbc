using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace SheetPress.Theory;

/// <summary>
/// A degree counted from a root against the major scale: number 1 upward (8 octave, 10 tenth) and an alteration in half steps.
/// "b3" is a minor third above the root, "#11" an augmented eleventh. The default value is not valid; the root is <see cref="Root"/>.
/// </summary>
public readonly record struct Degree
{
    /// <summary>The number, from 1 to 99.</summary>
    public int Number { get; }

    /// <summary>Half steps away from the major or perfect size: -1 for "b3", 1 for "#11".</summary>
    public int Alteration { get; }

    /// <summary>Makes a degree.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside 1..99 or the alteration outside -3..3.</exception>
    public Degree(int number, int alteration = 0)
    {
        if (number is < 1 or > 99) throw new ArgumentOutOfRangeException(nameof(number), number, "A degree number is from 1 to 99.");
        if (alteration is < -3 or > 3) throw new ArgumentOutOfRangeException(nameof(alteration), alteration, "A degree is altered by at most three half steps.");
        Number = number;
        Alteration = alteration;
    }

    /// <summary>The root.</summary>
    public static Degree Root => new(1);

    /// <summary>The interval upward from the root.</summary>
    public Interval ToInterval() => Interval.FromNumber(Number, Alteration);

    /// <summary>The degree that an upward interval makes above a root.</summary>
    public static Degree FromInterval(Interval interval) => new(interval.Number, interval.Alteration);

    /// <summary>The same degree within one octave: 10 becomes 3, 8 becomes 1.</summary>
    public Degree Simple => new(((Number - 1) % 7) + 1, Alteration);

    /// <summary>Half steps above the root.</summary>
    public int HalfSteps => ToInterval().HalfSteps;

    /// <summary>Plain text as teachers say it: "R" for the root, else accidentals before the number: "b3", "5", "#11".</summary>
    public override string ToString() => Text('b', '#');

    /// <summary>Text with real accidental signs: ♭3, ♯11.</summary>
    public string ToDisplayString() => Text('♭', '♯');

    /// <summary>Reads "R" or "1", "b3", "#11", "bb7"; ♭ and ♯ alike.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Degree degree)
    {
        degree = default;
        if (string.IsNullOrEmpty(text)) return false;
        if (text is "R" or "r") { degree = Root; return true; }
        var alteration = 0;
        var at = 0;
        while (at < text.Length)
        {
            var step = text[at] switch { 'b' or '♭' => -1, '#' or '♯' => 1, _ => 0 };
            if (step == 0) break;
            if ((step > 0 && alteration < 0) || (step < 0 && alteration > 0)) return false;
            alteration += step;
            at++;
        }
        if (alteration is < -3 or > 3) return false;
        if (!int.TryParse(text.AsSpan(at), NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number is < 1 or > 99) return false;
        degree = new Degree(number, alteration);
        return true;
    }

    /// <summary>Reads a degree.</summary>
    /// <exception cref="FormatException">The text is no degree.</exception>
    public static Degree Parse(string text) =>
        TryParse(text, out var degree) ? degree : throw new FormatException($"'{text}' is no degree: write R or a number with b or # before it, as in b3 or #11.");

    private string Text(char flat, char sharp)
    {
        if (Number == 1 && Alteration == 0) return "R";
        var accidentals = Alteration < 0 ? new string(flat, -Alteration) : new string(sharp, Alteration);
        return string.Create(CultureInfo.InvariantCulture, $"{accidentals}{Number}");
    }
}

using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace SheetPress.Theory;

/// <summary>
/// The build of a chord as its degrees tell it: which third, which fifths, which seventh, how far the thirds are stacked. Names, suffixes and
/// kinds are all read off this, so two ways to write the same tones come out as one quality.
/// </summary>
/// <remarks>Plain arrays and loops: this runs at the start of every process, where generic code over own structs costs most.</remarks>
internal sealed class ChordShape
{
    private readonly Degree[] degrees;

    /// <summary>Degrees by number, then by alteration, root first, none twice. Sixths beside a seventh are thirteenths; seconds and fourths beside a third are ninths and elevenths.</summary>
    internal ImmutableArray<Degree> Degrees => ImmutableCollectionsMarshal.AsImmutableArray(degrees);

    /// <summary>The third; null when suspended or left out.</summary>
    internal Degree? Third { get; }

    /// <summary>The seventh; null when there is none.</summary>
    internal Degree? Seventh { get; }

    /// <summary>The highest number that the basic name says: 0 (a triad), 6, 7, 9, 11 or 13.</summary>
    internal int Top { get; }

    /// <summary>Makes a shape of degrees above the root, in any order, the root itself left out or not.</summary>
    internal ChordShape(Degree[] given)
    {
        var (hasThird, hasSeventh, hasSecond, hasFourth) = (false, false, false, false);
        foreach (var degree in given)
        {
            hasThird |= degree.Number == 3;
            hasSeventh |= degree.Number == 7;
            hasSecond |= degree is { Number: 2, Alteration: 0 };
            hasFourth |= degree is { Number: 4, Alteration: 0 };
        }
        var sorted = new Degree[given.Length + 1];
        sorted[0] = Degree.Root;
        var count = 1;
        foreach (var degree in given)
        {
            var natural = degree.Alteration == 0;
            var number = degree.Number switch
            {
                2 when hasThird || !natural => 9,
                4 when hasThird || !natural => 11,
                9 when natural && hasSecond && !hasThird => 2,
                11 when natural && (hasFourth || hasSecond) && !hasThird => 4,
                6 when hasSeventh => 13,
                13 when !hasSeventh => 6,
                var n => n,
            };
            Insert(sorted, ref count, new Degree(number, degree.Alteration));
        }
        degrees = count == sorted.Length ? sorted : sorted[..count];
        Third = First(3);
        Seventh = First(7);
        Top = FindTop();
    }

    private static void Insert(Degree[] sorted, ref int count, Degree degree)
    {
        var at = count;
        while (at > 0 && Compare(sorted[at - 1], degree) > 0) at--;
        if (at > 0 && Compare(sorted[at - 1], degree) == 0) return;
        for (var i = count; i > at; i--) sorted[i] = sorted[i - 1];
        sorted[at] = degree;
        count++;
    }

    private static int Compare(Degree a, Degree b) => a.Number != b.Number ? a.Number - b.Number : a.Alteration - b.Alteration;

    internal bool IsSuspendedFourth => Third is null && Has(4);

    internal bool IsSuspendedSecond => Third is null && Has(2);

    internal bool HasSixth => Seventh is null && Has(6);

    internal bool IsMinor => Third is { Alteration: -1 };

    /// <summary>Whether "dim" names third and fifth together.</summary>
    internal bool IsDiminished => IsMinor && FifthIs(-1) && (Seventh is null ? !HasSixth : Seventh.Value.Alteration != -1);

    /// <summary>Whether "aug" names third and fifth together.</summary>
    internal bool IsAugmented => !IsMinor && !IsSuspendedFourth && !IsSuspendedSecond && Seventh is null && !HasSixth && FifthIs(1);

    internal bool Has(Degree degree) => Has(degree.Number, degree.Alteration);

    internal bool Has(int number, int alteration = 0)
    {
        foreach (var degree in degrees) if (degree.Number == number && degree.Alteration == alteration) return true;
        return false;
    }

    internal bool HasNumber(int number) => First(number) is not null;

    internal Degree? First(int number)
    {
        foreach (var degree in degrees) if (degree.Number == number) return degree;
        return null;
    }

    /// <summary>Whether the chord has this one fifth and no other.</summary>
    internal bool FifthIs(int alteration)
    {
        var found = false;
        foreach (var degree in degrees)
        {
            if (degree.Number != 5) continue;
            if (degree.Alteration != alteration) return false;
            found = true;
        }
        return found;
    }

    internal bool HasAlteredNinth => Has(9, -1) || Has(9, 1);

    internal bool HasAlteredFifth => FifthIs(-1) || FifthIs(1);

    private int FindTop()
    {
        if (Seventh is null) return HasSixth ? 6 : 0;
        if (!HasNumber(9)) return 7;
        // Over a major third players leave the 11th out of a 13th chord; over a minor third it belongs.
        if (Has(13) && (!IsMinor || HasNumber(11))) return 13;
        if (Has(11)) return 11;
        return Has(9) ? 9 : 7;
    }
}

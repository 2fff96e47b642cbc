using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>
/// The build of a chord as its degrees tell it: which third, which fifths, which seventh, how far the thirds are stacked. Names, suffixes and
/// kinds are all read off this, so two ways to write the same tones come out as one quality.
/// </summary>
internal readonly struct ChordShape
{
    /// <summary>Degrees by number, then by alteration, root first, none twice. Sixths beside a seventh are thirteenths; seconds and fourths beside a third are ninths and elevenths.</summary>
    internal ImmutableArray<Degree> Degrees { get; }

    /// <summary>The third; null when suspended or left out.</summary>
    internal Degree? Third { get; }

    /// <summary>The seventh; null when there is none.</summary>
    internal Degree? Seventh { get; }

    /// <summary>The highest number that the basic name says: 0 (a triad), 6, 7, 9, 11 or 13.</summary>
    internal int Top { get; }

    internal ChordShape(IEnumerable<Degree> degrees)
    {
        var given = degrees.ToArray();
        var hasThird = Array.Exists(given, d => d.Number == 3);
        var hasSeventh = Array.Exists(given, d => d.Number == 7);
        var hasSecond = !hasThird && Array.IndexOf(given, new Degree(2)) >= 0;
        var hasFourth = !hasThird && Array.IndexOf(given, new Degree(4)) >= 0;
        var list = new List<Degree>(given.Length + 1) { Degree.Root };
        foreach (var degree in given)
        {
            var natural = degree.Alteration == 0;
            var number = degree.Number switch
            {
                2 when hasThird || !natural => 9,
                4 when hasThird || !natural => 11,
                9 when natural && hasSecond => 2,
                11 when natural && (hasFourth || hasSecond) => 4,
                6 when hasSeventh => 13,
                13 when !hasSeventh => 6,
                var n => n,
            };
            var normal = new Degree(number, degree.Alteration);
            if (!list.Contains(normal)) list.Add(normal);
        }
        list.Sort((a, b) => a.Number != b.Number ? a.Number - b.Number : a.Alteration - b.Alteration);
        Degrees = [.. list];
        Third = First(3);
        Seventh = First(7);
        Top = FindTop();
    }

    internal bool IsSuspendedFourth => Third is null && Has(new(4));

    internal bool IsSuspendedSecond => Third is null && Has(new(2));

    internal bool HasSixth => Seventh is null && Has(new(6));

    internal bool IsMinor => Third is { Alteration: -1 };

    /// <summary>Whether "dim" names third and fifth together.</summary>
    internal bool IsDiminished => IsMinor && FifthIs(-1) && (Seventh is null ? !HasSixth : Seventh.Value.Alteration != -1);

    /// <summary>Whether "aug" names third and fifth together.</summary>
    internal bool IsAugmented => !IsMinor && !IsSuspendedFourth && !IsSuspendedSecond && Seventh is null && !HasSixth && FifthIs(1);

    internal bool Has(Degree degree) => Degrees.Contains(degree);

    internal bool HasNumber(int number) => First(number) is not null;

    internal Degree? First(int number)
    {
        foreach (var degree in Degrees) if (degree.Number == number) return degree;
        return null;
    }

    /// <summary>Whether the chord has this one fifth and no other.</summary>
    internal bool FifthIs(int alteration)
    {
        var found = false;
        foreach (var degree in Degrees)
        {
            if (degree.Number != 5) continue;
            if (degree.Alteration != alteration) return false;
            found = true;
        }
        return found;
    }

    private int FindTop()
    {
        if (Seventh is null) return HasSixth ? 6 : 0;
        if (!HasNumber(9)) return 7;
        // Over a major third players leave the 11th out of a 13th chord; over a minor third it belongs.
        if (Has(new(13)) && (!IsMinor || HasNumber(11))) return 13;
        if (Has(new(11))) return 11;
        return Has(new(9)) ? 9 : 7;
    }
}

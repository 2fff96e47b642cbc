using System.Collections.Immutable;
using System.Globalization;

namespace SheetPress.Scores;

/// <summary>A meter: beats over beat unit, with the groups of beat units that beams and accents follow.</summary>
public sealed record Meter
{
    /// <summary>The upper number, 1 to 32.</summary>
    public int Beats { get; }

    /// <summary>The lower number: 1, 2, 4, 8 or 16.</summary>
    public int BeatUnit { get; }

    /// <summary>Sizes of the felt groups, counted in beat units; they add up to <see cref="Beats"/> (6/8: 3+3; 5/4: 3+2; 4/4: 1+1+1+1).</summary>
    public ImmutableArray<int> Groups { get; }

    /// <summary>Makes a meter; groups default to the usual ones.</summary>
    /// <exception cref="ArgumentException">A number is out of range or the groups do not add up.</exception>
    public Meter(int beats, int beatUnit, params ReadOnlySpan<int> groups)
    {
        if (beats is < 1 or > 32) throw new ArgumentException("A meter has 1 to 32 beats.", nameof(beats));
        if (beatUnit is not (1 or 2 or 4 or 8 or 16)) throw new ArgumentException("A beat unit is 1, 2, 4, 8 or 16.", nameof(beatUnit));
        Beats = beats;
        BeatUnit = beatUnit;
        Groups = groups.IsEmpty ? UsualGroups(beats, beatUnit) : [.. groups];
        var sum = 0;
        foreach (var group in Groups)
        {
            if (group < 1) throw new ArgumentException("A group has at least one beat.", nameof(groups));
            sum += group;
        }
        if (sum != beats) throw new ArgumentException("The groups of a meter add up to its beats.", nameof(groups));
    }

    /// <summary>Length of a full measure in quarter notes.</summary>
    public Fraction MeasureLength => new(4L * Beats, BeatUnit);

    /// <summary>Length of one beat unit in quarter notes.</summary>
    public Fraction UnitLength => new(4, BeatUnit);

    /// <summary>Whether beats are felt in dotted values (6/8, 9/8, 12/8, 6/4).</summary>
    public bool IsCompound => BeatUnit >= 4 && Beats % 3 == 0 && Beats > 3 && Groups.All(g => g == 3);

    /// <summary>Starts of the felt groups (beats) within the measure, in quarter notes, the end of the measure last.</summary>
    public ImmutableArray<Fraction> BeatStarts
    {
        get
        {
            var starts = ImmutableArray.CreateBuilder<Fraction>(Groups.Length + 1);
            var at = 0;
            foreach (var group in Groups)
            {
                starts.Add(UnitLength * at);
                at += group;
            }
            starts.Add(MeasureLength);
            return starts.MoveToImmutable();
        }
    }

    /// <inheritdoc />
    public bool Equals(Meter? other) => other is not null && Beats == other.Beats && BeatUnit == other.BeatUnit && Groups.SequenceEqual(other.Groups);

    /// <inheritdoc />
    public override int GetHashCode() => HashCode.Combine(Beats, BeatUnit, Groups.Length);

    /// <summary>"4/4", "6/8".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Beats}/{BeatUnit}");

    // Common practice: eighths (and the quarters of 6/4, 9/4, 12/4) group in threes when they divide so; odd counts as threes then twos.
    private static ImmutableArray<int> UsualGroups(int beats, int unit)
    {
        if (unit == 4 && beats is 6 or 9 or 12) return [.. Enumerable.Repeat(3, beats / 3)];
        if (unit < 8) return beats == 5 ? [3, 2] : beats == 7 ? [4, 3] : [.. Enumerable.Repeat(1, beats)];
        if (beats % 3 == 0) return [.. Enumerable.Repeat(3, beats / 3)];
        if (beats == 7) return [2, 2, 3];
        if (beats % 2 == 0) return [.. Enumerable.Repeat(2, beats / 2)];
        return beats < 3 ? [beats] : [3, .. Enumerable.Repeat(2, (beats - 3) / 2)];
    }
}

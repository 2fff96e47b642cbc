using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>
/// The basic kinds of chord that interchange formats name, in the sense of the W3C MusicXML 4.0 type kind-value. A quality that none of
/// them covers is the nearest kind with <see cref="ChordQuality.KindChanges"/>.
/// </summary>
public enum ChordKind
{
    /// <summary>1 3 5.</summary>
    Major,
    /// <summary>1 b3 5.</summary>
    Minor,
    /// <summary>1 3 #5.</summary>
    Augmented,
    /// <summary>1 b3 b5.</summary>
    Diminished,
    /// <summary>1 3 5 b7.</summary>
    Dominant,
    /// <summary>1 3 5 7.</summary>
    MajorSeventh,
    /// <summary>1 b3 5 b7.</summary>
    MinorSeventh,
    /// <summary>1 b3 b5 bb7.</summary>
    DiminishedSeventh,
    /// <summary>1 3 #5 b7.</summary>
    AugmentedSeventh,
    /// <summary>1 b3 b5 b7.</summary>
    HalfDiminished,
    /// <summary>1 b3 5 7: a minor triad with a major seventh.</summary>
    MajorMinor,
    /// <summary>1 3 5 6.</summary>
    MajorSixth,
    /// <summary>1 b3 5 6.</summary>
    MinorSixth,
    /// <summary>1 3 5 b7 9.</summary>
    DominantNinth,
    /// <summary>1 3 5 7 9.</summary>
    MajorNinth,
    /// <summary>1 b3 5 b7 9.</summary>
    MinorNinth,
    /// <summary>1 3 5 b7 9 11.</summary>
    DominantEleventh,
    /// <summary>1 3 5 7 9 11.</summary>
    MajorEleventh,
    /// <summary>1 b3 5 b7 9 11.</summary>
    MinorEleventh,
    /// <summary>1 3 5 b7 9 13; the standard counts an 11th in, which players leave out.</summary>
    DominantThirteenth,
    /// <summary>1 3 5 7 9 13; the standard counts an 11th in, which players leave out.</summary>
    MajorThirteenth,
    /// <summary>1 b3 5 b7 9 11 13.</summary>
    MinorThirteenth,
    /// <summary>1 2 5.</summary>
    SuspendedSecond,
    /// <summary>1 4 5.</summary>
    SuspendedFourth,
    /// <summary>1 5.</summary>
    Power,
}

/// <summary>How a quality departs from its kind in one degree.</summary>
public enum KindChangeType
{
    /// <summary>The degree comes on top of the kind.</summary>
    Add,
    /// <summary>A degree of the kind is raised or lowered.</summary>
    Alter,
    /// <summary>A degree of the kind is left out.</summary>
    Subtract,
}

/// <summary>One departure of a quality from its kind, in the sense of the MusicXML 4.0 element degree.</summary>
/// <param name="Number">The number of the degree: 5, 9, 11.</param>
/// <param name="Alteration">
/// Half steps: for <see cref="KindChangeType.Add"/> against a dominant chord (major and perfect sizes, but a minor seventh), for the others
/// against the degree that the kind has.
/// </param>
/// <param name="Type">Added, altered or left out.</param>
public readonly record struct KindChange(int Number, int Alteration, KindChangeType Type);

internal static class ChordKinds
{
    /// <summary>The kind of a set of degrees, and its departures from it in order of number.</summary>
    internal static (ChordKind Kind, ImmutableArray<KindChange> Changes) Classify(ChordShape shape)
    {
        var kind = KindOf(shape);
        var template = Degrees(kind);
        var changes = ImmutableArray.CreateBuilder<KindChange>();
        foreach (var expected in template)
        {
            if (shape.Has(expected)) continue;
            if (shape.First(expected.Number) is { } other) changes.Add(new(other.Number, other.Alteration - expected.Alteration, KindChangeType.Alter));
            else changes.Add(new(expected.Number, 0, KindChangeType.Subtract));
        }
        foreach (var degree in shape.Degrees)
        {
            if (degree.Number == 1 || Array.IndexOf(template, degree) >= 0) continue;
            var replaces = Array.Exists(template, t => t.Number == degree.Number && !shape.Has(t)) && shape.First(degree.Number) == degree;
            if (!replaces) changes.Add(new(degree.Number, degree.Alteration + (degree.Number == 7 ? 1 : 0), KindChangeType.Add));
        }
        changes.Sort((a, b) => a.Number != b.Number ? a.Number - b.Number : a.Alteration - b.Alteration);
        return (kind, changes.ToImmutable());
    }

    private static ChordKind KindOf(ChordShape shape)
    {
        var seventh = shape.Seventh;
        if (shape.Third is null)
        {
            if (shape.IsSuspendedFourth) return ChordKind.SuspendedFourth;
            if (shape.IsSuspendedSecond) return ChordKind.SuspendedSecond;
            if (seventh is null) return ChordKind.Power;
        }
        var minor = shape.Third?.Alteration == -1;
        if (seventh is null)
        {
            if (shape.HasSixth) return minor ? ChordKind.MinorSixth : ChordKind.MajorSixth;
            if (minor) return shape.FifthIs(-1) ? ChordKind.Diminished : ChordKind.Minor;
            return shape.FifthIs(1) ? ChordKind.Augmented : ChordKind.Major;
        }
        if (minor && seventh.Value.Alteration == 0) return shape.FifthIs(-1) ? ChordKind.Diminished : ChordKind.MajorMinor;
        if (minor && shape.FifthIs(-1)) return seventh.Value.Alteration == -2 ? ChordKind.DiminishedSeventh : ChordKind.HalfDiminished;
        if (!minor && shape.FifthIs(1) && shape.Top == 7 && seventh.Value.Alteration == -1) return ChordKind.AugmentedSeventh;
        var family = minor ? 2 : seventh.Value.Alteration == 0 ? 1 : 0;
        return shape.Top switch
        {
            9 => ChordKind.DominantNinth + family,
            11 => ChordKind.DominantEleventh + family,
            13 => ChordKind.DominantThirteenth + family,
            _ => ChordKind.Dominant + family,
        };
    }

    // Degrees above the root; the players' 13th chords without the 11th over a major third.
    private static Degree[] Degrees(ChordKind kind) => kind switch
    {
        ChordKind.Major => [new(3), new(5)],
        ChordKind.Minor => [new(3, -1), new(5)],
        ChordKind.Augmented => [new(3), new(5, 1)],
        ChordKind.Diminished => [new(3, -1), new(5, -1)],
        ChordKind.Dominant => [new(3), new(5), new(7, -1)],
        ChordKind.MajorSeventh => [new(3), new(5), new(7)],
        ChordKind.MinorSeventh => [new(3, -1), new(5), new(7, -1)],
        ChordKind.DiminishedSeventh => [new(3, -1), new(5, -1), new(7, -2)],
        ChordKind.AugmentedSeventh => [new(3), new(5, 1), new(7, -1)],
        ChordKind.HalfDiminished => [new(3, -1), new(5, -1), new(7, -1)],
        ChordKind.MajorMinor => [new(3, -1), new(5), new(7)],
        ChordKind.MajorSixth => [new(3), new(5), new(6)],
        ChordKind.MinorSixth => [new(3, -1), new(5), new(6)],
        ChordKind.DominantNinth => [new(3), new(5), new(7, -1), new(9)],
        ChordKind.MajorNinth => [new(3), new(5), new(7), new(9)],
        ChordKind.MinorNinth => [new(3, -1), new(5), new(7, -1), new(9)],
        ChordKind.DominantEleventh => [new(3), new(5), new(7, -1), new(9), new(11)],
        ChordKind.MajorEleventh => [new(3), new(5), new(7), new(9), new(11)],
        ChordKind.MinorEleventh => [new(3, -1), new(5), new(7, -1), new(9), new(11)],
        ChordKind.DominantThirteenth => [new(3), new(5), new(7, -1), new(9), new(13)],
        ChordKind.MajorThirteenth => [new(3), new(5), new(7), new(9), new(13)],
        ChordKind.MinorThirteenth => [new(3, -1), new(5), new(7, -1), new(9), new(11), new(13)],
        ChordKind.SuspendedSecond => [new(2), new(5)],
        ChordKind.SuspendedFourth => [new(4), new(5)],
        _ => [new(5)],
    };
}

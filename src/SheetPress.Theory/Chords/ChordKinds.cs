using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>A kind and the departures from it, in order of number.</summary>
internal sealed record KindParts(ChordKind Kind, ImmutableArray<KindChange> Changes);

/// <summary>Finds the kind of a chord.</summary>
internal static class ChordKinds
{
    /// <summary>The nearest kind of a shape and its departures from it.</summary>
    internal static KindParts Classify(ChordShape shape)
    {
        var kind = KindOf(shape);
        var template = new ChordShape(Degrees(kind));
        var changes = new List<KindChange>();
        for (var number = 2; number <= 13; number++)
        {
            // A kind has at most one degree of a number; the chord can have two.
            var expected = template.First(number);
            var keeps = expected is { } e && shape.Has(e);
            foreach (var degree in shape.Degrees)
            {
                if (degree.Number != number || degree == expected) continue;
                if (expected is { } replaced && !keeps)
                {
                    changes.Add(new(number, degree.Alteration - replaced.Alteration, KindChangeType.Alter));
                    keeps = true;
                }
                else
                {
                    changes.Add(new(number, degree.Alteration + (number == 7 ? 1 : 0), KindChangeType.Add));
                }
            }
            if (expected is not null && !keeps) changes.Add(new(number, 0, KindChangeType.Subtract));
        }
        return new(kind, [.. changes]);
    }

    private static ChordKind KindOf(ChordShape shape)
    {
        var seventh = shape.Seventh;
        if (shape.Third is null)
        {
            // With both, the fourth is added, as in sus2(4).
            if (shape.IsSuspendedSecond) return ChordKind.SuspendedSecond;
            if (shape.IsSuspendedFourth) return ChordKind.SuspendedFourth;
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

    // The players' 13th chords, without the 11th over a major third.
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

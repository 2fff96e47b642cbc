using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>A measure at its place in a system.</summary>
internal sealed record PlacedMeasure
{
    /// <summary>The measure.</summary>
    public required MeasurePlan Plan { get; init; }

    /// <summary>Onsets of its columns and their x.</summary>
    public required ImmutableArray<(Fraction Onset, double X)> Columns { get; init; }

    /// <summary>x of the boundary before it.</summary>
    public required double Start { get; init; }

    /// <summary>Right edge of the ink of the boundary before it.</summary>
    public required double InnerLeft { get; init; }

    /// <summary>Left edge of the ink of the boundary after it.</summary>
    public required double InnerRight { get; init; }

    /// <summary>x of the boundary after it.</summary>
    public required double End { get; init; }

    /// <summary>Events of each voice.</summary>
    public ImmutableArray<ImmutableArray<PlacedEvent>> Voices { get; init; } = [];

    /// <summary>x of the first column.</summary>
    public double FirstX => Columns[0].X;

    /// <summary>x of a moment; between columns in proportion to time.</summary>
    public double XAt(Fraction offset)
    {
        for (var i = 0; i < Columns.Length; i++)
        {
            if (Columns[i].Onset == offset) return Columns[i].X;
            if (Columns[i].Onset < offset) continue;
            var (before, after) = (Columns[Math.Max(0, i - 1)], Columns[i]);
            if (i == 0) return after.X;
            return Between(before.Onset, before.X, after.Onset, after.X, offset);
        }
        var last = Columns[^1];
        return offset >= Plan.Length ? End : Between(last.Onset, last.X, Plan.Length, End, offset);
    }

    private static double Between(Fraction from, double fromX, Fraction to, double toX, Fraction at) =>
        fromX + ((toX - fromX) * ((at - from) / (to - from)).ToDouble());
}

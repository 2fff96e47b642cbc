using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>A measure at its place in a system. Its events point back to it.</summary>
internal sealed class PlacedMeasure
{
    /// <summary>Places a measure and its events.</summary>
    /// <param name="plan">The measure.</param>
    /// <param name="columns">Onsets of its columns and their x.</param>
    /// <param name="start">x of the boundary before it.</param>
    /// <param name="innerLeft">Right edge of the ink of that boundary.</param>
    /// <param name="innerRight">Left edge of the ink of the boundary after it.</param>
    /// <param name="end">x of the boundary after it.</param>
    public PlacedMeasure(MeasurePlan plan, ImmutableArray<(Fraction Onset, double X)> columns, double start, double innerLeft, double innerRight, double end)
    {
        (Plan, Columns, Start, InnerLeft, InnerRight, End) = (plan, columns, start, innerLeft, innerRight, end);
        Voices = [.. plan.Voices.Select(v => v.Events.Select(Place).ToImmutableArray())];
    }

    /// <summary>The measure.</summary>
    public MeasurePlan Plan { get; }

    /// <summary>Onsets of its columns and their x.</summary>
    public ImmutableArray<(Fraction Onset, double X)> Columns { get; }

    /// <summary>x of the boundary before it.</summary>
    public double Start { get; }

    /// <summary>Right edge of the ink of the boundary before it.</summary>
    public double InnerLeft { get; }

    /// <summary>Left edge of the ink of the boundary after it.</summary>
    public double InnerRight { get; }

    /// <summary>x of the boundary after it.</summary>
    public double End { get; }

    /// <summary>Events of each voice.</summary>
    public ImmutableArray<ImmutableArray<PlacedEvent>> Voices { get; }

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

    private PlacedEvent Place(EventPlan e) => new(e, this, e.IsCentred ? ((InnerLeft + InnerRight) / 2) - e.Centre : XAt(e.Event.Onset));

    private static double Between(Fraction from, double fromX, Fraction to, double toX, Fraction at) =>
        fromX + ((toX - fromX) * ((at - from) / (to - from)).ToDouble());
}

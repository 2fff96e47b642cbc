using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Everything that starts at one moment of a measure; x = 0 is the left edge of its undisplaced noteheads.</summary>
/// <param name="Onset">Quarter notes from the start of the measure.</param>
/// <param name="Shortest">Length in quarter notes of the shortest event that sounds (or rests) at the moment.</param>
/// <param name="Boxes">Its ink by lane.</param>
internal sealed record Column(Fraction Onset, Fraction Shortest, ImmutableArray<LaneBox> Boxes)
{
    /// <summary>How far its ink reaches to the left (positive).</summary>
    public double ReachLeft { get; } = Boxes.IsEmpty ? 0 : Math.Max(0, -Boxes.Min(b => b.Box.Left));

    /// <summary>How far its ink reaches to the right.</summary>
    public double ReachRight { get; } = Boxes.IsEmpty ? 0 : Math.Max(0, Boxes.Max(b => b.Box.Right));
}

/// <summary>The columns of a measure.</summary>
/// <param name="Plan">The measure.</param>
/// <param name="Columns">Its columns from left to right; at least one.</param>
/// <param name="LeastWidth">Width that a sign in the middle of the measure needs between the barlines; 0 when there is none.</param>
internal sealed record MeasureColumns(MeasurePlan Plan, ImmutableArray<Column> Columns, double LeastWidth);

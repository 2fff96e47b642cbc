using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>One step of an outline: from <paramref name="Left"/> to the left end of the next step (or the end) the outline is at <paramref name="Y"/>.</summary>
/// <param name="Left">Left end.</param>
/// <param name="Right">Right end.</param>
/// <param name="Y">Height of the outline, y downward.</param>
public readonly record struct SkylineStep(double Left, double Right, double Y);

/// <summary>
/// The upper or lower outline of a set of ink as steps from left to right; where there is no ink there is no step.
/// </summary>
/// <param name="IsUpper">True for the upper outline (smallest y), false for the lower one (largest y).</param>
/// <param name="Steps">Steps in order of x that do not overlap.</param>
public sealed record Skyline(bool IsUpper, ImmutableArray<SkylineStep> Steps)
{
    /// <summary>The furthest y between two places, or null where there is no ink.</summary>
    public double? Reach(double left, double right)
    {
        double? reach = null;
        foreach (var step in Steps)
        {
            if (step.Right <= left) continue;
            if (step.Left >= right) break;
            if (reach is not { } y || (IsUpper ? step.Y < y : step.Y > y)) reach = step.Y;
        }
        return reach;
    }

    /// <summary>
    /// How far below this lower outline's axis the axis of an upper outline has to lie so that no ink comes nearer than a gap.
    /// Only ink that shares x counts; with none shared the result is negative infinity.
    /// </summary>
    /// <param name="below">The upper outline of what lies below.</param>
    /// <param name="gap">Least white between the outlines.</param>
    /// <param name="padding">Ink counts as sharing x when it is at most this far beside.</param>
    /// <exception cref="InvalidOperationException">This is no lower outline or the other no upper one.</exception>
    public double DistanceTo(Skyline below, double gap, double padding = 0)
    {
        if (IsUpper || !below.IsUpper) throw new InvalidOperationException("Distance is from a lower outline to an upper one.");
        var distance = double.NegativeInfinity;
        var first = 0;
        foreach (var step in Steps)
        {
            while (first < below.Steps.Length && below.Steps[first].Right <= step.Left - padding) first++;
            for (var j = first; j < below.Steps.Length && below.Steps[j].Left < step.Right + padding; j++)
            {
                distance = Math.Max(distance, step.Y - below.Steps[j].Y + gap);
            }
        }
        return distance;
    }
}

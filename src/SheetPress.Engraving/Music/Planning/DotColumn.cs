using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Augmentation dots: in a space, up from a line (down in a lower voice), aligned for a chord.</summary>
internal static class DotColumn
{
    /// <summary>White between a head and its first dot.</summary>
    public const double HeadGap = 0.35;

    /// <summary>From one dot to the next.</summary>
    public const double Pitch = 0.65;

    /// <summary>Steps (always spaces) at which the dots of heads stand.</summary>
    /// <param name="steps">Steps of the heads, low to high.</param>
    /// <param name="downFromLine">Whether the dot of a head on a line goes to the space below.</param>
    /// <param name="dotted">Spaces with dots of the other voice: those of this one go to the space below.</param>
    public static ImmutableArray<int> Steps(ImmutableArray<int> steps, bool downFromLine, IReadOnlySet<int> dotted)
    {
        var taken = new SortedSet<int>();
        // Heads in spaces keep theirs; heads on lines take the free neighbour.
        foreach (var step in steps.Where(s => !StaffSteps.IsLine(s))) taken.Add(step);
        var lines = steps.Where(StaffSteps.IsLine).ToList();
        if (!downFromLine) lines.Reverse();
        foreach (var step in lines)
        {
            var (first, second) = downFromLine ? (step - 1, step + 1) : (step + 1, step - 1);
            if (!taken.Add(first)) taken.Add(second);
        }
        foreach (var step in taken.Where(dotted.Contains).ToList())
        {
            taken.Remove(step);
            if (!dotted.Contains(step - 2)) taken.Add(step - 2);
        }
        return [.. taken];
    }
}

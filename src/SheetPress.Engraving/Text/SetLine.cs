using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A set line of text: marks about the left end of its baseline.</summary>
/// <param name="Marks">The marks.</param>
/// <param name="Width">Width of the words and spaces.</param>
/// <param name="Ascent">Height of the tallest piece above the baseline.</param>
/// <param name="Descent">Depth of the deepest piece below the baseline.</param>
public sealed record SetLine(ImmutableArray<Mark> Marks, double Width, double Ascent, double Descent)
{
    /// <summary>The same line with its marks in a role.</summary>
    public SetLine As(MarkRole role) => this with { Marks = [.. Marks.Select(m => m with { Role = role })] };
}

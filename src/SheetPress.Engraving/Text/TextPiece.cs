using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A stretch of set text that is never broken: marks about x = 0 on the baseline y = 0, in millimetres, y downward.</summary>
/// <param name="Marks">The marks.</param>
/// <param name="Width">Width it takes in a line.</param>
/// <param name="Ascent">Height it takes above the baseline.</param>
/// <param name="Descent">Depth it takes below the baseline.</param>
public sealed record TextPiece(ImmutableArray<Mark> Marks, double Width, double Ascent, double Descent)
{
    /// <summary>A piece of nothing.</summary>
    public static TextPiece Nothing { get; } = new([], 0, 0, 0);

    /// <summary>Adds the marks, moved so that the start of the baseline is at a point.</summary>
    public void PlaceAt(ImmutableArray<Mark>.Builder marks, double x, double y)
    {
        foreach (var mark in Marks) marks.Add(mark.Transform(1, x, y));
    }
}

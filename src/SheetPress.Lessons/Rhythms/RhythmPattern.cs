using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>One stroke or rest of a rhythm.</summary>
public sealed record RhythmCell
{
    /// <summary>Start in quarter notes from the start of the pattern.</summary>
    public required Fraction Start { get; init; }
    /// <summary>Length in quarter notes, above zero.</summary>
    public required Fraction Duration { get; init; }
    /// <summary>Whether it is silent.</summary>
    public bool IsRest { get; init; }
    /// <summary>Counting syllable, when the rhythm was given by counting; that of a rest too, without the brackets it is printed in.</summary>
    public string? Count { get; init; }
    /// <summary>Marks of the stroke.</summary>
    public StrokeMarks Marks { get; init; }
    /// <summary>End in quarter notes from the start of the pattern.</summary>
    public Fraction End => Start + Duration;

    /// <summary>The cell with marks added to the ones it has; a rest stays as it is.</summary>
    public RhythmCell With(StrokeMarks marks) => IsRest ? this : this with { Marks = Marks.With(marks) };
}

/// <summary>A rhythm that repeats: cells in order that fill its length.</summary>
/// <param name="Cells">Cells, rests included, without gaps.</param>
/// <param name="Length">Length in quarter notes after which it starts again.</param>
public sealed record RhythmPattern(ImmutableArray<RhythmCell> Cells, Fraction Length)
{
    /// <summary>
    /// The rhythm with marks laid on its strokes in turn, rests left out, over again when the marks run out. When the numbers of strokes
    /// and marks do not divide, the pattern grows until both start together again.
    /// </summary>
    public RhythmPattern WithMarks(ImmutableArray<StrokeMarks> marks)
    {
        var strokes = Cells.Count(c => !c.IsRest);
        if (marks.IsEmpty || strokes == 0) return this;
        var rounds = marks.Length / GreatestCommonDivisor(marks.Length, strokes);
        var cells = ImmutableArray.CreateBuilder<RhythmCell>(Cells.Length * rounds);
        var at = 0;
        for (var round = 0; round < rounds; round++)
        {
            foreach (var cell in Cells)
            {
                var moved = cell with { Start = cell.Start + (Length * round) };
                cells.Add(cell.IsRest ? moved : moved.With(marks[at++ % marks.Length]));
            }
        }
        return new RhythmPattern(cells.MoveToImmutable(), Length * rounds);
    }

    private static int GreatestCommonDivisor(int a, int b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}

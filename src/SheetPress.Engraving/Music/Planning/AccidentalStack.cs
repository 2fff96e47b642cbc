using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Places the accidentals of a chord so that none touch: from the outside in, each as far right as it goes.</summary>
internal static class AccidentalStack
{
    /// <summary>White between an accidental and the head or ledger line beside it.</summary>
    public const double HeadGap = 0.25;

    // White between two accidentals, a little above the least distance that ink may have.
    private const double Gap = 0.2;

    // How far the right edges of signs in one column may differ at first.
    private const double ColumnReach = 0.35;

    /// <summary>Places accidentals.</summary>
    /// <param name="accidentals">Step and SMuFL name, in any order.</param>
    /// <param name="obstacles">Ink of heads and ledger lines about the column.</param>
    /// <param name="origin">Origin of the marks.</param>
    public static ImmutableArray<GlyphMark> Place(IReadOnlyList<(int Step, string Name)> accidentals, IEnumerable<Box> obstacles, MarkOrigin origin)
    {
        if (accidentals.Count == 0) return [];
        var taken = obstacles.Select(b => b.Inflate(HeadGap - Gap)).ToList();
        var placed = ImmutableArray.CreateBuilder<GlyphMark>(accidentals.Count);
        foreach (var (step, name) in OutsideIn(accidentals))
        {
            var mark = Ink.At(name, 0, StaffSteps.Y(step), MarkRole.Accidental, origin);
            var x = Rightmost(mark, taken);
            mark = mark with { Position = mark.Position.Offset(x, 0) };
            taken.AddRange(InkCover.Of(mark));
            placed.Add(mark);
        }
        return InColumns(placed.MoveToImmutable());
    }

    // Signs far above each other that miss one column by a little, because of a ledger line beside one of them, stand in it.
    private static ImmutableArray<GlyphMark> InColumns(ImmutableArray<GlyphMark> placed)
    {
        GlyphMark Aligned(GlyphMark mark)
        {
            var right = placed.Select(p => p.Bounds.Right).Where(r => r < mark.Bounds.Right && r > mark.Bounds.Right - ColumnReach).DefaultIfEmpty(mark.Bounds.Right).Min();
            var moved = mark with { Position = mark.Position.Offset(right - mark.Bounds.Right, 0) };
            var room = moved.Bounds.Inflate(Gap);
            return placed.Any(p => p != mark && p.Bounds.Overlaps(room)) ? mark : moved;
        }
        return placed.Length == 1 ? placed : [.. placed.Select(Aligned)];
    }

    private static IEnumerable<(int Step, string Name)> OutsideIn(IReadOnlyList<(int Step, string Name)> accidentals)
    {
        var sorted = accidentals.OrderByDescending(a => a.Step).ToList();
        var (top, bottom) = (0, sorted.Count - 1);
        while (top <= bottom)
        {
            yield return sorted[top++];
            if (top <= bottom) yield return sorted[bottom--];
        }
    }

    private static double Rightmost(GlyphMark mark, List<Box> taken)
    {
        // Left of the column even where no head stands in the way, so that accidentals never sink into a chord.
        var x = -HeadGap - mark.Bounds.Right;
        var boxes = InkCover.Of(mark).ToList();
        for (var moved = true; moved;)
        {
            moved = false;
            foreach (var box in boxes)
            {
                foreach (var other in taken)
                {
                    if (box.Top >= other.Bottom + Gap || box.Bottom <= other.Top - Gap) continue;
                    if (box.Left + x >= other.Right + Gap || box.Right + x <= other.Left - Gap) continue;
                    x = other.Left - Gap - box.Right - 1e-9;
                    moved = true;
                }
            }
        }
        return x;
    }
}

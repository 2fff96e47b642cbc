namespace SheetPress.Engraving;

/// <summary>Finds ink of unrelated things that overlaps or comes too close.</summary>
internal static class InkLint
{
    /// <summary>Unrelated ink keeps this distance (sp).</summary>
    public const double LeastDistance = 0.15;

    private const double Tolerance = 1e-6;

    /// <summary>Checks marks.</summary>
    /// <param name="marks">All marks of a page or system.</param>
    /// <param name="unit">Length of a staff space.</param>
    public static IEnumerable<LintFinding> Check(IReadOnlyList<Mark> marks, double unit)
    {
        var inked = marks.Where(m => !m.Bounds.IsEmpty && m.Ink > 0).Select(m => (Mark: m, m.Bounds)).OrderBy(m => m.Bounds.Left).ToList();
        var covers = new Dictionary<Mark, List<Box>>(ReferenceEqualityComparer.Instance);
        List<Box> Cover(Mark mark)
        {
            if (!covers.TryGetValue(mark, out var boxes)) covers[mark] = boxes = [.. InkCover.Of(mark, unit, InkCover.Fine)];
            return boxes;
        }
        var least = LeastDistance * unit;
        var active = new List<(Mark Mark, Box Bounds)>();
        foreach (var item in inked)
        {
            active.RemoveAll(a => a.Bounds.Right + least < item.Bounds.Left);
            foreach (var other in active)
            {
                if (other.Bounds.Bottom + least <= item.Bounds.Top || item.Bounds.Bottom + least <= other.Bounds.Top) continue;
                if (InkRelations.MayTouch(other.Mark, item.Mark, unit)) continue;
                var distance = Distance(Cover(other.Mark), Cover(item.Mark));
                if (distance < least - (Tolerance * unit)) yield return Finding(other.Mark, item.Mark, distance / unit);
            }
            active.Add(item);
        }
    }

    private static LintFinding Finding(Mark a, Mark b, double distance)
    {
        var how = distance <= 0 ? "touches" : FormattableString.Invariant($"is only {distance:0.00} spaces from");
        return new LintFinding(LintRule.Ink, a.Origin, b.Bounds, $"{Name(a)} {how} {Name(b)}");
    }

    internal static string Name(Mark mark) => mark switch
    {
        TextMark text => $"{mark.Role} \"{text.Run.Text}\"",
        GlyphMark glyph => $"{mark.Role} {glyph.Glyph.Name}",
        _ => mark.Role.ToString(),
    };

    private static double Distance(List<Box> a, List<Box> b)
    {
        var least = double.PositiveInfinity;
        foreach (var p in a)
        {
            foreach (var q in b)
            {
                var dx = Math.Max(0, Math.Max(q.Left - p.Right, p.Left - q.Right));
                var dy = Math.Max(0, Math.Max(q.Top - p.Bottom, p.Top - q.Bottom));
                least = Math.Min(least, Math.Sqrt((dx * dx) + (dy * dy)));
            }
        }
        return least;
    }
}

namespace SheetPress.Engraving;

/// <summary>Ink of a staff that something new has to keep clear of.</summary>
/// <param name="canvas">The staff.</param>
/// <param name="left">Left end of the place that is looked at.</param>
/// <param name="right">Its right end.</param>
/// <param name="counts">Which marks count.</param>
internal sealed class InkRoom(StaffCanvas canvas, double left, double right, Func<Mark, bool> counts)
{
    private readonly List<Box> _taken = [.. canvas.Marks.Where(m => counts(m) && m.Bounds.Right > left && m.Bounds.Left < right).SelectMany(m => InkCover.Of(m))];

    /// <summary>The furthest edge of the ink between two places on the outer side of an edge, or that edge where there is none.</summary>
    /// <param name="from">Left end.</param>
    /// <param name="to">Right end.</param>
    /// <param name="edge">The edge, y downward.</param>
    /// <param name="above">Whether the outer side is above.</param>
    public double Beyond(double from, double to, double edge, bool above)
    {
        var furthest = edge;
        foreach (var box in _taken)
        {
            if (box.Right <= from || box.Left >= to || (above ? box.Top >= edge : box.Bottom <= edge)) continue;
            furthest = above ? Math.Min(furthest, box.Top) : Math.Max(furthest, box.Bottom);
        }
        return furthest;
    }

    /// <summary>Whether a mark has this much white on all sides.</summary>
    public bool IsFree(Mark mark, double gap)
    {
        if (_taken.Count == 0) return true;
        var around = mark.Bounds.Inflate(gap);
        var near = _taken.FindAll(b => b.Overlaps(around));
        return near.Count == 0 || !InkCover.Of(mark, 1, InkCover.Fine).Any(part => near.Exists(b => b.Overlaps(part.Inflate(gap))));
    }
}

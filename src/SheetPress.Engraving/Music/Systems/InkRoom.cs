namespace SheetPress.Engraving;

/// <summary>Ink of a staff that something new has to keep clear of.</summary>
/// <param name="canvas">The staff.</param>
/// <param name="left">Left end of the place that is looked at.</param>
/// <param name="right">Its right end.</param>
/// <param name="counts">Which marks count.</param>
internal sealed class InkRoom(StaffCanvas canvas, double left, double right, Func<Mark, bool> counts)
{
    private readonly List<Box> _taken = [.. canvas.Marks.Where(m => counts(m) && m.Bounds.Right > left && m.Bounds.Left < right).SelectMany(m => InkCover.Of(m))];

    /// <summary>Whether a mark has this much white on all sides.</summary>
    public bool IsFree(Mark mark, double gap)
    {
        if (_taken.Count == 0) return true;
        var around = mark.Bounds.Inflate(gap);
        var near = _taken.FindAll(b => b.Overlaps(around));
        return near.Count == 0 || !InkCover.Of(mark, 1, InkCover.Fine).Any(part => near.Exists(b => b.Overlaps(part.Inflate(gap))));
    }
}

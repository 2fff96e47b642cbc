namespace SheetPress.Engraving;

/// <summary>Gathers ink into an outline and finds where the next thing can stand. Upper outlines keep the smallest y, lower ones the largest.</summary>
/// <param name="isUpper">True to build an upper outline.</param>
internal sealed class SkylineBuilder(bool isUpper)
{
    private readonly List<SkylineStep> _steps = [];

    /// <summary>True for an upper outline.</summary>
    public bool IsUpper { get; } = isUpper;

    /// <summary>Adds all ink of a mark.</summary>
    public void Add(Mark mark)
    {
        foreach (var box in InkCover.Of(mark)) Add(box);
    }

    /// <summary>Adds a box of ink.</summary>
    public void Add(Box box)
    {
        if (!box.IsEmpty) Add(box.Left, box.Right, IsUpper ? box.Top : box.Bottom);
    }

    /// <summary>Adds a horizontal edge.</summary>
    public void Add(double left, double right, double y)
    {
        if (right <= left) return;
        var at = FirstEndingAfter(left);
        var fresh = new List<SkylineStep>(4);
        var x = left;
        var end = at;
        for (; end < _steps.Count && _steps[end].Left < right; end++)
        {
            var step = _steps[end];
            if (step.Left < left) fresh.Add(step with { Right = left });
            if (step.Left > x) fresh.Add(new SkylineStep(x, step.Left, y));
            var (from, to) = (Math.Max(step.Left, left), Math.Min(step.Right, right));
            fresh.Add(new SkylineStep(from, to, Further(step.Y, y)));
            if (step.Right > right) fresh.Add(step with { Left = right });
            x = Math.Max(x, step.Right);
        }
        if (x < right) fresh.Add(new SkylineStep(x, right, y));
        _steps.RemoveRange(at, end - at);
        _steps.InsertRange(at, fresh);
        Merge(at, fresh.Count);
    }

    /// <summary>The furthest y between two places, or null where there is no ink.</summary>
    public double? Reach(double left, double right)
    {
        double? reach = null;
        for (var i = FirstEndingAfter(left); i < _steps.Count && _steps[i].Left < right; i++)
        {
            reach = reach is { } y ? Further(y, _steps[i].Y) : _steps[i].Y;
        }
        return reach;
    }

    /// <summary>
    /// How far a shape has to be moved vertically so that it clears the outline by a gap (sideways by a padding); the shape is
    /// given by its boxes where they would lie without any move. The result never moves the shape towards the outline's inside
    /// beyond where it was given: it is at most 0 for an upper outline and at least 0 for a lower one.
    /// </summary>
    public double Clearance(IEnumerable<Box> shape, double gap, double padding)
    {
        var move = 0.0;
        foreach (var box in shape)
        {
            if (box.IsEmpty || Reach(box.Left - padding, box.Right + padding) is not { } y) continue;
            move = IsUpper ? Math.Min(move, y - gap - box.Bottom) : Math.Max(move, y + gap - box.Top);
        }
        return move;
    }

    /// <summary>The outline as it stands.</summary>
    public Skyline ToSkyline() => new(IsUpper, [.. _steps]);

    private double Further(double a, double b) => IsUpper ? Math.Min(a, b) : Math.Max(a, b);

    private int FirstEndingAfter(double x)
    {
        var (low, high) = (0, _steps.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_steps[middle].Right <= x) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    private void Merge(int at, int count)
    {
        for (var i = Math.Min(at + count, _steps.Count - 1); i > 0 && i >= at; i--)
        {
            var (before, step) = (_steps[i - 1], _steps[i]);
            if (before.Y != step.Y || before.Right != step.Left) continue;
            _steps[i - 1] = before with { Right = step.Right };
            _steps.RemoveAt(i);
        }
    }
}

using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Places the pieces of one line: underlines run on between the words they join, and words of scripts that run to the left change places.</summary>
/// <param name="size">Em of the text in millimetres.</param>
internal sealed class LineRow(double size)
{
    private readonly List<(LineItem Item, double X, double Space)> _placed = [];

    /// <summary>Adds a piece at a place, with the space after it.</summary>
    internal void Add(LineItem item, double x, double space) => _placed.Add((item, x, space));

    /// <summary>The line.</summary>
    /// <param name="width">Its width.</param>
    internal SetLine Finish(double width)
    {
        for (var i = 0; i < _placed.Count; i++) if (_placed[i].Item.IsRightToLeft) i = TurnRun(i);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var (ascent, descent) = (0.0, 0.0);
        foreach (var (item, x, _) in _placed)
        {
            var first = marks.Count;
            item.Piece.PlaceAt(marks, x, 0);
            if (first > 0 && marks.Count > first && marks[first - 1] is TextMark before && marks[first] is TextMark next && TextRuns.Join(before, next) is { } joined)
            {
                marks[first - 1] = joined;
                marks.RemoveAt(first);
            }
            ascent = Math.Max(ascent, item.Piece.Ascent);
            descent = Math.Max(descent, item.Piece.Descent);
        }
        for (var i = 0; i < _placed.Count; i++) if (_placed[i].Item.Underline is { } inline) i = AddUnderline(marks, i, inline);
        return new SetLine(marks.DrainToImmutable(), width, ascent, descent);
    }

    // Sets the pieces of a run of right-to-left words in the opposite order over the same stretch of the line.
    private int TurnRun(int first)
    {
        var last = first;
        while (last + 1 < _placed.Count && _placed[last + 1].Item.IsRightToLeft) last++;
        var x = _placed[last].X + _placed[last].Item.Piece.Width;
        for (var i = first; i <= last; i++)
        {
            var (item, _, space) = _placed[i];
            x -= item.Piece.Width;
            _placed[i] = (item, x, space);
            x -= space;
        }
        return last;
    }

    private int AddUnderline(ImmutableArray<Mark>.Builder marks, int first, Inline inline)
    {
        var last = first;
        while (last + 1 < _placed.Count && ReferenceEquals(_placed[last + 1].Item.Underline, inline)) last++;
        var y = 0.14 * size;
        var (left, right) = (_placed[first].X, _placed[last].X + _placed[last].Item.Piece.Width);
        marks.Add(new LineMark(new Point(left, y), new Point(right, y), 0.04 * size) { Role = MarkRole.BodyText });
        return last;
    }
}

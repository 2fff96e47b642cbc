using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Places the pieces of one line: underlines run on between the words they join, and what is written to the left changes places.</summary>
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
        Order();
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

    // Pieces and spaces of a line with words written to the left, in the order in which they stand.
    private void Order()
    {
        if (!_placed.Exists(p => p.Item.Level > 0 || p.Item.SpaceLevel > 0)) return;
        var parts = new List<(int Piece, bool IsSpace)>(2 * _placed.Count);
        var levels = new List<byte>(2 * _placed.Count);
        for (var i = 0; i < _placed.Count; i++)
        {
            parts.Add((i, false));
            levels.Add(_placed[i].Item.Level);
            if (_placed[i].Space <= 0) continue;
            parts.Add((i, true));
            levels.Add(_placed[i].Item.SpaceLevel);
        }
        var x = _placed[0].X;
        var ordered = new List<(LineItem, double, double)>(_placed.Count);
        foreach (var at in BidiLevels.VisualOrder([.. levels]))
        {
            var (item, _, space) = _placed[parts[at].Piece];
            if (!parts[at].IsSpace) ordered.Add((item, x, space));
            x += parts[at].IsSpace ? space : item.Piece.Width;
        }
        _placed.Clear();
        _placed.AddRange(ordered);
    }

    private int AddUnderline(ImmutableArray<Mark>.Builder marks, int first, Inline inline)
    {
        var last = first;
        while (last + 1 < _placed.Count && ReferenceEquals(_placed[last + 1].Item.Underline, inline)) last++;
        marks.Add(Underline.Of(_placed[first].X, _placed[last].X + _placed[last].Item.Piece.Width, size));
        return last;
    }
}

using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Rods between texts of the rows across barlines; within a measure its own springs hold them.</summary>
internal sealed class RowRods
{
    private readonly (Column Column, int Node)?[] _last = new (Column, int)?[InkDistance.Rows.Length];

    /// <summary>Holds the last texts within the system.</summary>
    /// <param name="endNode">Node of the last boundary.</param>
    /// <param name="endRight">How far the staff goes on beyond that node.</param>
    /// <param name="rods">Where to.</param>
    public void End(int endNode, double endRight, List<Rod> rods)
    {
        for (var r = 0; r < _last.Length; r++)
        {
            if (_last[r] is not { } last) continue;
            var reach = InkDistance.ReachRight(last.Column, InkDistance.Rows[r]);
            rods.Add(new Rod(last.Node, endNode, reach - endRight));
        }
    }

    /// <summary>Adds the columns of the next measure.</summary>
    public void Add(ImmutableArray<Column> columns, int firstNode, List<Rod> rods)
    {
        for (var r = 0; r < _last.Length; r++)
        {
            var lane = InkDistance.Rows[r];
            var isFirst = true;
            for (var i = 0; i < columns.Length; i++)
            {
                if (!InkDistance.Has(columns[i], lane)) continue;
                if (isFirst && _last[r] is { } last && InkDistance.InRow(last.Column, columns[i], lane) is var distance and > 0) rods.Add(new Rod(last.Node, firstNode + i, distance));
                isFirst = false;
                _last[r] = (columns[i], firstNode + i);
            }
        }
    }
}

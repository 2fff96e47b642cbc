using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Sets tables: a header row, thin rules, rows that are kept whole, the lines of a row's cells on common baselines.</summary>
public static class TableSetter
{
    private const double ColumnGap = 4.5;
    private const double Padding = 1.15;
    private const double StrongRule = 0.3;
    private const double ThinRule = 0.15;

    /// <summary>A table that has been set.</summary>
    /// <param name="Header">The header row; null when there is none.</param>
    /// <param name="Rows">The other rows.</param>
    /// <param name="Width">Width in millimetres.</param>
    public sealed record SetTable(SetRow? Header, ImmutableArray<SetRow> Rows, double Width);

    /// <summary>A row that has been set.</summary>
    /// <param name="Drawing">Marks from its top left corner, its lower rule among them.</param>
    /// <param name="Height">Height in millimetres.</param>
    public sealed record SetRow(Drawing Drawing, double Height);

    /// <summary>Width that the table cannot well go below.</summary>
    public static double LeastWidth(TableSpec table) => Widths(table, p => p.LeastWidth).Sum() + (ColumnGap * (table.Columns.Length - 1));

    /// <summary>Sets a table.</summary>
    /// <param name="table">The table.</param>
    /// <param name="width">Width of the text area in millimetres.</param>
    public static SetTable Set(TableSpec table, double width)
    {
        var gaps = ColumnGap * (table.Columns.Length - 1);
        var (least, natural) = (Widths(table, p => p.LeastWidth), Widths(table, p => p.NaturalWidth));
        if (natural.Sum() > width - gaps)
        {
            for (var c = 0; c < natural.Length; c++) if (table.Columns[c].IsTight) natural[c] = least[c];
        }
        var widths = ColumnWidths.Share(least, natural, width - gaps, table.FillWidth);
        var whole = widths.Sum() + gaps;
        var rows = ImmutableArray.CreateBuilder<SetRow>(table.Rows.Length);
        for (var i = 0; i < table.Rows.Length; i++)
        {
            var isStrong = i == table.Rows.Length - 1 || (table.LastRowIsTotal && i == table.Rows.Length - 2);
            rows.Add(SetCells(table.Rows[i], table.Columns, widths, whole, isStrong ? StrongRule : ThinRule));
        }
        var hasHeader = table.Columns.Any(c => !c.Header.Parts.IsEmpty);
        var header = hasHeader ? SetCells([.. table.Columns.Select(c => c.Header)], table.Columns, widths, whole, StrongRule) : null;
        return new SetTable(header, rows.MoveToImmutable(), whole);
    }

    private static double[] Widths(TableSpec table, Func<CellPart, double> measure)
    {
        var widths = new double[table.Columns.Length];
        for (var c = 0; c < widths.Length; c++)
        {
            widths[c] = Widest(table.Columns[c].Header, measure);
            foreach (var row in table.Rows) widths[c] = Math.Max(widths[c], Widest(row[c], measure));
        }
        return widths;
    }

    private static double Widest(TableCell cell, Func<CellPart, double> measure)
    {
        var widest = 0.0;
        foreach (var part in cell.Parts) widest = Math.Max(widest, measure(part));
        return widest;
    }

    private static SetRow SetCells(ImmutableArray<TableCell> cells, ImmutableArray<TableColumn> columns, ImmutableArray<double> widths, double whole, double rule)
    {
        var set = cells.Select((cell, c) => cell.Parts.SelectMany(part => part.Set(widths[c], columns[c].Alignment)).ToImmutableArray()).ToImmutableArray();
        var baselines = Baselines(set);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var (x, bottom) = (0.0, Padding);
        for (var c = 0; c < set.Length; c++)
        {
            for (var i = 0; i < set[c].Length; i++)
            {
                foreach (var mark in set[c][i].Marks) marks.Add(mark.Transform(1, x, baselines[i]));
                bottom = Math.Max(bottom, baselines[i] + set[c][i].Below);
            }
            x += widths[c] + ColumnGap;
        }
        var height = bottom + Padding;
        marks.Add(new LineMark(new Point(0, height), new Point(whole, height), rule) { Role = MarkRole.TableRule });
        return new SetRow(new Drawing(marks.DrainToImmutable()), height);
    }

    // One baseline for the first lines of all cells, one for the second ones and so on, as far apart as the one that needs most asks.
    private static double[] Baselines(ImmutableArray<ImmutableArray<CellLine>> cells)
    {
        var baselines = new double[cells.Max(c => c.Length)];
        for (var i = 0; i < baselines.Length; i++)
        {
            foreach (var cell in cells)
            {
                if (i >= cell.Length) continue;
                var above = i == 0 ? Padding : baselines[i - 1] + cell[i - 1].Below;
                baselines[i] = Math.Max(baselines[i], above + cell[i].Above);
            }
        }
        return baselines;
    }
}

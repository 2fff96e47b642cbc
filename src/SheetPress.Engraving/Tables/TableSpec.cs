using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A table: columns and rows of cells.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows, each with as many cells as there are columns.</param>
public sealed record TableSpec(ImmutableArray<TableColumn> Columns, ImmutableArray<ImmutableArray<TableCell>> Rows)
{
    /// <summary>Whether the last row is a sum, parted by a stronger rule and never left alone.</summary>
    public bool LastRowIsTotal { get; init; }

    /// <summary>Whether columns are spread over the whole width.</summary>
    public bool FillWidth { get; init; } = true;
}

/// <summary>A column of a table.</summary>
/// <param name="Header">Cell of the header row; when all are empty there is no header.</param>
/// <param name="Alignment">Alignment of its cells.</param>
public sealed record TableColumn(TableCell Header, ColumnAlignment Alignment = ColumnAlignment.Left)
{
    /// <summary>Whether it has no more than its least width where the table is too wide.</summary>
    public bool IsTight { get; init; }
}

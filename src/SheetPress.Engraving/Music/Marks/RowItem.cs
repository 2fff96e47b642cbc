namespace SheetPress.Engraving;

/// <summary>A text or sign of a row.</summary>
/// <param name="Layout">The sign.</param>
/// <param name="X">Its left end.</param>
/// <param name="Origin">Origin of its marks.</param>
/// <param name="Drop">How far below the baseline of the row it stands, for rows of several lines.</param>
internal readonly record struct RowItem(SymbolLayout Layout, double X, MarkOrigin Origin, double Drop = 0)
{
    /// <summary>A sign centred on an x by its ink.</summary>
    public static RowItem Centred(SymbolLayout layout, double x, MarkOrigin origin, double drop = 0) =>
        new(layout, x - ((layout.Bounds.Left + layout.Bounds.Right) / 2), origin, drop);

    /// <summary>Its marks on a baseline.</summary>
    public IEnumerable<Mark> MarksAt(double baseline)
    {
        var origin = Origin;
        return Layout.At(X, baseline + Drop).Marks.Select(m => m with { Origin = origin });
    }
}

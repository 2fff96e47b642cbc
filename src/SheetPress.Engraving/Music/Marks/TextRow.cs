namespace SheetPress.Engraving;

/// <summary>Sets signs on one baseline above or below a staff, as near as its outline allows.</summary>
internal static class TextRow
{
    /// <summary>Places a row.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="items">Its signs; none is fine.</param>
    /// <param name="above">Whether it stands above.</param>
    /// <param name="baseline">The baseline nearest to the staff that it may have.</param>
    /// <param name="gap">White to what is nearer to the staff.</param>
    /// <param name="padding">White to what stands beside it; what is nearer than that goes between the row and the staff.</param>
    /// <returns>The baseline.</returns>
    public static double Place(StaffCanvas canvas, IReadOnlyList<RowItem> items, bool above, double baseline, double gap, double padding = 0.2)
    {
        if (items.Count == 0) return baseline;
        var marks = items.SelectMany(i => i.MarksAt(baseline)).ToList();
        return baseline + canvas.Place(marks, above, gap, padding);
    }

    /// <summary>Places a row, further off the marks that it would be read with.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="items">Its signs; none is fine.</param>
    /// <param name="above">Whether it stands above.</param>
    /// <param name="baseline">The baseline nearest to the staff that it may have.</param>
    /// <param name="gap">White to what is nearer to the staff.</param>
    /// <param name="padding">White to what stands beside it.</param>
    /// <param name="isRead">The marks that it would be read with.</param>
    /// <param name="readGap">White to these.</param>
    /// <param name="readBeside">White to these beside it; null for that to all.</param>
    /// <returns>The baseline.</returns>
    public static double Place(StaffCanvas canvas, IReadOnlyList<RowItem> items, bool above, double baseline, double gap, double padding, Func<Mark, bool> isRead, double readGap, double? readBeside = null)
    {
        if (items.Count == 0) return baseline;
        var marks = items.SelectMany(i => i.MarksAt(baseline)).ToList();
        return baseline + canvas.Place(marks, above, gap, padding, isRead, readGap, readBeside);
    }
}

namespace SheetPress.Publishing;

/// <summary>What a PDF says about itself beside its pages.</summary>
public sealed record PdfOptions
{
    /// <summary>Date of making written into the file; null writes none, so that the same pages give the same bytes on any day.</summary>
    public DateTimeOffset? CreationDate { get; init; }

    /// <summary>Number that a viewer shows for the first page.</summary>
    public int FirstPageNumber { get; init; } = 1;
}

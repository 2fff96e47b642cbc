using SheetPress.Engraving;

namespace SheetPress.Publishing;

/// <summary>What to write for a lesson, and where.</summary>
public sealed record PublishOptions
{
    /// <summary>Folder that gets one folder a lesson.</summary>
    public required string OutputFolder { get; init; }

    /// <summary>The paper.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>Whether every page is also written as PNG and SVG.</summary>
    public bool Images { get; init; }

    /// <summary>Resolution of PNG pages, in dots an inch.</summary>
    public double ImageResolution { get; init; } = 200;

    /// <summary>Name and version written into files as their maker.</summary>
    public string Software { get; init; } = "SheetPress";
}

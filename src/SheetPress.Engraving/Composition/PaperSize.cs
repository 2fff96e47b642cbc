namespace SheetPress.Engraving;

/// <summary>A sheet of paper, upright, in millimetres.</summary>
/// <param name="Name">Name as the command line says it: "a4", "letter".</param>
/// <param name="Width">Width in millimetres.</param>
/// <param name="Height">Height in millimetres.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>ISO 216 A4, 210 x 297 mm.</summary>
    public static PaperSize A4 { get; } = new("a4", 210, 297);

    /// <summary>ISO 216 A5, 148 x 210 mm.</summary>
    public static PaperSize A5 { get; } = new("a5", 148, 210);

    /// <summary>US Letter, 8.5 x 11 inches.</summary>
    public static PaperSize Letter { get; } = new("letter", 215.9, 279.4);
}

namespace SheetPress.Engraving;

/// <summary>Heights of a text face in em: ascender and descender from the tables of the file, the others measured on its letters.</summary>
/// <param name="Ascender">How far the face reaches above the baseline (positive).</param>
/// <param name="Descender">How far it reaches below the baseline (positive).</param>
/// <param name="CapHeight">Height of a flat capital such as H.</param>
/// <param name="XHeight">Height of a flat small letter such as x.</param>
public sealed record TextMetrics(double Ascender, double Descender, double CapHeight, double XHeight)
{
    /// <summary>The metrics of a face.</summary>
    public static TextMetrics Of(TextFont font) => TextFace.Of(font).Metrics;
}

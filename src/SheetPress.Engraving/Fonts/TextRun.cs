using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A glyph of shaped text.</summary>
/// <param name="GlyphId">Index of the glyph in its font file.</param>
/// <param name="X">Pen position in em from the start of the run.</param>
/// <param name="Y">Rise (negative) or drop in em from the baseline.</param>
/// <param name="Cluster">Index into the text of the first character it stands for.</param>
public readonly record struct TextGlyph(ushort GlyphId, double X, double Y, int Cluster);

/// <summary>Text shaped in one font at size 1 em; scale it by a size to place it.</summary>
/// <param name="Text">The characters.</param>
/// <param name="Font">The font; ignored when <paramref name="FallbackFamily"/> names a system font.</param>
/// <param name="Glyphs">Shaped glyphs in drawing order.</param>
/// <param name="Advance">Width in em.</param>
/// <param name="Bounds">Ink box in em about the start of the baseline, y downward.</param>
/// <param name="FallbackFamily">File or family of a system font, for characters that the shipped fonts lack; null otherwise.</param>
public sealed record TextRun(string Text, TextFont Font, ImmutableArray<TextGlyph> Glyphs, double Advance, Box Bounds, string? FallbackFamily = null);

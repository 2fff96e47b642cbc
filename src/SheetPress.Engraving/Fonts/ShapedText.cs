using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>What shaping gives for a text in one face.</summary>
/// <param name="Glyphs">Glyphs in drawing order.</param>
/// <param name="Advance">Width in em.</param>
/// <param name="Ink">Ink box in em, y downward.</param>
internal readonly record struct ShapedText(ImmutableArray<TextGlyph> Glyphs, double Advance, Box Ink);

using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Joins set words into longer runs: fewer marks, and text that reads on when it is copied out of a document.</summary>
internal static class TextRuns
{
    /// <summary>Two marks in one, every glyph where it was; null when they differ in anything but their words.</summary>
    /// <param name="left">The mark that comes first.</param>
    /// <param name="right">The mark that follows on the same baseline.</param>
    internal static TextMark? Join(TextMark left, TextMark right)
    {
        var (a, b) = (left.Run, right.Run);
        var alike = a.Font == b.Font && left.Size == right.Size && left.Position.Y == right.Position.Y && left.Role == right.Role
            && left.Ink == right.Ink && left.Link == right.Link && a.FallbackFamily is null && b.FallbackFamily is null && right.Position.X >= left.Position.X;
        if (!alike) return null;
        var shift = (right.Position.X - left.Position.X) / left.Size;
        var glyphs = ImmutableArray.CreateBuilder<TextGlyph>(a.Glyphs.Length + b.Glyphs.Length);
        glyphs.AddRange(a.Glyphs);
        foreach (var glyph in b.Glyphs) glyphs.Add(glyph with { X = glyph.X + shift, Cluster = glyph.Cluster + a.Text.Length });
        var run = new TextRun(a.Text + b.Text, a.Font, glyphs.MoveToImmutable(), shift + b.Advance, a.Bounds.Union(b.Bounds.Transform(1, shift, 0)));
        return left with { Run = run };
    }
}

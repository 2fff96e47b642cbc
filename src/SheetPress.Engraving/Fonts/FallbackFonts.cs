using System.Globalization;
using System.Text;

namespace SheetPress.Engraving;

/// <summary>
/// Finds fonts of the system for characters that the shipped fonts lack, by looking through the usual font folders.
/// Nothing is read before such a character turns up.
/// </summary>
internal static class FallbackFonts
{
    private static readonly Lazy<SystemFonts> Installed = new(() => new SystemFonts(SystemFonts.StandardFolders()));

    /// <summary>Splits a text into parts that one font can set; a null font is the wanted one.</summary>
    internal static List<(string Part, FallbackFont? Fallback)> Split(string text, TextFont font)
    {
        var face = TextFace.Of(font);
        var parts = new List<(string, FallbackFont?)>();
        var start = 0;
        FallbackFont? current = null;
        var at = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            // Spaces and marks stay with what stands before them.
            var wanted = at > 0 && KeepsFont(rune) && (current is null || current.Face.Has(rune.Value)) ? current : FontFor(rune, face);
            if (wanted != current && at > start)
            {
                parts.Add((text[start..at], current));
                start = at;
            }
            current = wanted;
            at += rune.Utf16SequenceLength;
        }
        parts.Add((text[start..], current));
        return parts;
    }

    private static FallbackFont? FontFor(Rune rune, TextFace face) =>
        rune.Value < 0x7F || face.Has(rune.Value) || IsInvisible(rune) ? null : Installed.Value.For(rune.Value);

    private static bool KeepsFont(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.SpaceSeparator or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.SpacingCombiningMark
        || IsInvisible(rune);

    /// <summary>Characters that HarfBuzz sets without a glyph of their own: spaces, soft hyphens, joiners, variation selectors, and the hyphen that does not break.</summary>
    private static bool IsInvisible(Rune rune) =>
        rune.Value is 0x2011 or (>= 0xFE00 and <= 0xFE0F)
        || Rune.GetUnicodeCategory(rune) is UnicodeCategory.SpaceSeparator or UnicodeCategory.Format or UnicodeCategory.Control;
}

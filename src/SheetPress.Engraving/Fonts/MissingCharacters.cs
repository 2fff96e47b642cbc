using System.Text;

namespace SheetPress.Engraving;

/// <summary>Finds the characters of a document that no font has, which are drawn as empty boxes.</summary>
public static class MissingCharacters
{
    /// <summary>Each such character once, in the order in which they appear.</summary>
    public static IReadOnlyList<Rune> In(SheetDocument document)
    {
        var found = new List<Rune>();
        foreach (var page in document.Pages)
        {
            foreach (var mark in page.Drawing.Marks)
            {
                if (mark is TextMark text)
                {
                    Collect(text.Run, found);
                }
            }
        }
        return found;
    }

    private static void Collect(TextRun run, List<Rune> found)
    {
        foreach (var glyph in run.Glyphs)
        {
            if (glyph.GlyphId == 0 && Rune.TryGetRuneAt(run.Text, glyph.Cluster, out var rune) && !found.Contains(rune))
            {
                found.Add(rune);
            }
        }
    }
}

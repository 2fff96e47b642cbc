using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>
/// Reads Markdown that has no markup in it: paragraphs parted by empty lines. Most theory notes and many teachers' notes are no more
/// than that, and loading the full parser would be a good part of the time a single lesson takes.
/// </summary>
internal static class PlainParagraphs
{
    /// <summary>The paragraphs, or null when anything in the source might be markup; what it returns is what the full parser would.</summary>
    /// <param name="source">The source.</param>
    internal static ImmutableArray<TextBlock>? Read(string source)
    {
        if (HasSigns(source) || source.Contains("](", StringComparison.Ordinal) || source.Contains("]:", StringComparison.Ordinal) || source.Contains("][", StringComparison.Ordinal)) return null;
        var blocks = ImmutableArray.CreateBuilder<TextBlock>();
        var paragraph = "";
        foreach (var line in source.Split('\n'))
        {
            var words = line.Trim(' ');
            if (words.Length == 0)
            {
                Close();
                continue;
            }
            if (MayBeMarkup(line, words)) return null;
            paragraph += paragraph.Length > 0 && !WideScripts.JoinLines(paragraph[^1], words[0]) ? " " + words : words;
        }
        Close();
        return blocks.DrainToImmutable();

        void Close()
        {
            if (paragraph.Length > 0) blocks.Add(new ParagraphBlock(MusicMarkup.Read(paragraph)));
            paragraph = "";
        }
    }

    private static bool HasSigns(string source)
    {
        foreach (var c in source) if (c is '*' or '_' or '`' or '<' or '>' or '&' or '\\' or (< ' ' and not '\n')) return true;
        return false;
    }

    // Indented code, lists, headings, rules, tables, fences, hard line ends.
    private static bool MayBeMarkup(string line, string words) =>
        words[0] is '-' or '+' or '=' or '#' or '|' or ':' or '~' or (>= '0' and <= '9') or '!'
        || line.StartsWith("    ", StringComparison.Ordinal) || line.EndsWith("  ", StringComparison.Ordinal);
}

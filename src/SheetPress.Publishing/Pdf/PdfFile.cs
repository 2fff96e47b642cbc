using System.Buffers.Text;
using System.Text;

namespace SheetPress.Publishing;

/// <summary>
/// Reads just enough of a PDF that Skia wrote to add to it: its table of objects and the text of single dictionaries.
/// Source: ISO 32000-1, 7.5 (file structure); one table of plain entries, as Skia writes it.
/// </summary>
internal sealed class PdfFile
{
    private const int EntryLength = 20;
    private readonly byte[] _bytes;
    private readonly int _entries;

    internal PdfFile(byte[] bytes)
    {
        _bytes = bytes;
        var all = bytes.AsSpan();
        TableOffset = NumberAfter(all[all.LastIndexOf("startxref"u8)..], "startxref\n"u8);
        var table = all[TableOffset..];
        ObjectCount = NumberAfter(table, "xref\n0 "u8);
        _entries = TableOffset + "xref\n".Length + table["xref\n".Length..].IndexOf((byte)'\n') + 1;
        var trailer = Encoding.Latin1.GetString(all[(_entries + (ObjectCount * EntryLength))..]);
        Root = Reference(trailer, "/Root");
        Info = Reference(trailer, "/Info");
    }

    /// <summary>Where the table of objects starts.</summary>
    internal int TableOffset { get; }
    /// <summary>Objects in the file, number 0 included.</summary>
    internal int ObjectCount { get; }
    /// <summary>Number of the catalog.</summary>
    internal int Root { get; }
    /// <summary>Number of the document information.</summary>
    internal int Info { get; }

    /// <summary>The text of an object that is a dictionary, with its angle brackets.</summary>
    internal string Dictionary(int number)
    {
        var offset = NumberAfter(_bytes.AsSpan(_entries + (number * EntryLength)), default);
        var text = _bytes.AsSpan(offset);
        var (start, end) = (text.IndexOf("<<"u8), text.IndexOf("endobj"u8));
        return Encoding.Latin1.GetString(text[start..end]).TrimEnd();
    }

    /// <summary>Numbers of the page objects in order of pages.</summary>
    internal List<int> Pages()
    {
        var pages = new List<int>();
        AddPages(Reference(Dictionary(Root), "/Pages"), pages);
        return pages;
    }

    private void AddPages(int node, List<int> pages)
    {
        var dictionary = Dictionary(node);
        var kids = dictionary.IndexOf("/Kids", StringComparison.Ordinal);
        if (kids < 0)
        {
            pages.Add(node);
            return;
        }
        var rest = dictionary.AsSpan(dictionary.IndexOf('[', kids) + 1);
        rest = rest[..rest.IndexOf(']')];
        for (var end = rest.IndexOf('R'); end >= 0; end = rest.IndexOf('R'))
        {
            AddPages(Number(rest.TrimStart()), pages);
            rest = rest[(end + 1)..];
        }
    }

    private static int Reference(string dictionary, string key)
    {
        var at = dictionary.IndexOf(key + " ", StringComparison.Ordinal);
        return at < 0 ? throw new InvalidDataException($"The PDF lacks {key}.") : Number(dictionary.AsSpan(at + key.Length + 1));
    }

    private static int Number(ReadOnlySpan<char> text)
    {
        var value = 0;
        foreach (var digit in text)
        {
            if (!char.IsAsciiDigit(digit))
            {
                break;
            }
            value = (value * 10) + (digit - '0');
        }
        return value;
    }

    private static int NumberAfter(ReadOnlySpan<byte> text, ReadOnlySpan<byte> prefix) =>
        text.StartsWith(prefix) && Utf8Parser.TryParse(text[prefix.Length..], out int value, out _)
            ? value
            : throw new InvalidDataException("The PDF has no plain table of objects.");
}

using System.Globalization;
using System.Text;
using SheetPress.Engraving;

namespace SheetPress.Publishing;

/// <summary>
/// Adds what Skia cannot write: bookmarks, page labels and the language. It goes behind the
/// file as an incremental update: a new catalog, the objects it needs and a table of them. Source: ISO 32000-1, 7.5.6
/// (incremental updates), 7.7.2 (catalog), 12.3.3 (outline), 12.4.2 (page labels), 14.9.2 (language).
/// </summary>
internal static class PdfNavigation
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>The bytes to write behind the file.</summary>
    internal static byte[] Update(byte[] pdf, SheetDocument document, int firstPageNumber)
    {
        var file = new PdfFile(pdf);
        var update = new PdfUpdate(file, pdf.Length);
        var outline = document.Bookmarks.IsDefaultOrEmpty ? 0 : AddOutline(update, file.Pages(), document);

        var catalog = new StringBuilder(file.Dictionary(file.Root));
        catalog.Length -= ">>".Length;
        catalog.Append(CultureInfo.InvariantCulture, $"\n/Lang {TextString(document.Language)}");
        catalog.Append(CultureInfo.InvariantCulture, $"\n/PageLabels <</Nums [0 <</S /D /St {firstPageNumber}>>]>>");
        if (outline > 0)
        {
            catalog.Append(CultureInfo.InvariantCulture, $"\n/Outlines {outline} 0 R");
        }
        catalog.Append(">>");
        update.ReplaceCatalog(catalog.ToString());
        return update.Finish();
    }

    private static int AddOutline(PdfUpdate update, List<int> pages, SheetDocument document)
    {
        var top = new OutlineNode(null, update.Reserve());
        var path = new List<OutlineNode> { top };
        foreach (var bookmark in document.Bookmarks)
        {
            // A level that skips one hangs below the last bookmark there is.
            var depth = Math.Clamp(bookmark.Level, 0, path.Count - 1);
            path.RemoveRange(depth + 1, path.Count - depth - 1);
            var node = new OutlineNode(bookmark, update.Reserve());
            path[depth].Children.Add(node);
            path.Add(node);
        }
        Write(top, 0);
        return top.Number;

        void Write(OutlineNode node, int parent)
        {
            var text = new StringBuilder("<<");
            if (node.Bookmark is { } bookmark)
            {
                var y = (document.Pages[bookmark.PageIndex].Height - bookmark.Top) * PointsPerMillimetre;
                text.Append(CultureInfo.InvariantCulture, $"/Title {TextString(bookmark.Title)} /Parent {parent} 0 R");
                text.Append(CultureInfo.InvariantCulture, $" /Dest [{pages[bookmark.PageIndex]} 0 R /XYZ null {y:0.##} null]");
                text.Append(node.Siblings);
            }
            else
            {
                text.Append("/Type /Outlines");
            }
            if (node.Children.Count > 0)
            {
                text.Append(CultureInfo.InvariantCulture, $" /First {node.Children[0].Number} 0 R /Last {node.Children[^1].Number} 0 R /Count {node.Descendants}");
            }
            text.Append(">>");
            update.Add(node.Number, text.ToString());
            for (var i = 0; i < node.Children.Count; i++)
            {
                var previous = i > 0 ? string.Create(CultureInfo.InvariantCulture, $" /Prev {node.Children[i - 1].Number} 0 R") : "";
                var next = i + 1 < node.Children.Count ? string.Create(CultureInfo.InvariantCulture, $" /Next {node.Children[i + 1].Number} 0 R") : "";
                node.Children[i].Siblings = previous + next;
                Write(node.Children[i], node.Number);
            }
        }
    }

    /// <summary>A text string in UTF-16 with its mark, as hexadecimal digits. Source: ISO 32000-1, 7.9.2.2.</summary>
    private static string TextString(string text) => $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    private sealed class OutlineNode(Bookmark? bookmark, int number)
    {
        internal Bookmark? Bookmark { get; } = bookmark;
        internal int Number { get; } = number;
        internal List<OutlineNode> Children { get; } = [];
        internal string Siblings { get; set; } = "";
        internal int Descendants => Children.Sum(c => 1 + c.Descendants);
    }
}

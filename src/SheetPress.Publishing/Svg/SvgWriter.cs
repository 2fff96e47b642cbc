using System.Globalization;
using System.Text;
using SheetPress.Engraving;

namespace SheetPress.Publishing;

/// <summary>Writes a page as SVG in millimetres.</summary>
/// <remarks>
/// Music and text are drawn as outlines, each defined once, so that the page looks the same where the fonts are not
/// installed. Over each text lies the text itself without any ink, stretched to the width of the outlines: it can be
/// selected, searched and read aloud. Numbers have at most three decimals; the same page gives the same bytes.
/// Source: SVG 1.1 (second edition), which all viewers read; hence xlink:href.
/// </remarks>
public static class SvgWriter
{
    /// <summary>Writes a page as UTF-8 without a byte-order mark.</summary>
    /// <param name="page">The page.</param>
    /// <param name="stream">Where to write; it stays open.</param>
    /// <param name="title">Name of the picture for those who cannot see it; none when empty.</param>
    public static void Write(Page page, Stream stream, string title = "")
    {
        var body = new SvgBody();
        body.Draw(page.Drawing);

        var head = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" version=\"1.1\" width=\"");
        head.AppendLength(page.Width).Append("mm\" height=\"").AppendLength(page.Height).Append("mm\" viewBox=\"0 0 ");
        head.AppendLength(page.Width).Append(' ').AppendLength(page.Height).Append("\">\n");
        if (title.Length > 0)
        {
            head.Append(CultureInfo.InvariantCulture, $"<title>{SvgBody.Escaped(title)}</title>\n");
        }
        head.Append("<defs>\n").Append(body.Definitions.Text).Append("</defs>\n<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");

        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        writer.Write(head);
        writer.Write(body.Text);
        writer.Write("</svg>\n");
    }
}

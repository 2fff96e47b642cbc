using SheetPress.Engraving;
using SkiaSharp;

namespace SheetPress.Publishing;

/// <summary>
/// Writes a document as PDF: text stays text (selectable, searchable, in fonts cut down to what is used), music is drawn
/// as outlines, with bookmarks, page numbers, language and title. The same document gives the same bytes.
/// </summary>
public static class PdfWriter
{
    private const double PointsPerMillimetre = 72 / 25.4;
    private const string Program = "SheetPress";

    /// <summary>Writes a document.</summary>
    /// <param name="document">The document; it has one page at least.</param>
    /// <param name="stream">Where to write, forward only; it stays open.</param>
    /// <param name="options">Dates and numbering; the defaults when null.</param>
    public static void Write(SheetDocument document, Stream stream, PdfOptions? options = null)
    {
        if (document.Pages.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A document without pages cannot be a PDF.", nameof(document));
        }
        options ??= new PdfOptions();
        var pages = DrawPages(document, options);
        stream.Write(pages);
        stream.Write(PdfNavigation.Update(pages, document, options.FirstPageNumber));
    }

    private static byte[] DrawPages(SheetDocument document, PdfOptions options)
    {
        var metadata = SKDocumentPdfMetadata.Default with
        {
            Title = document.Title,
            Author = document.Author,
            Creator = Program,
            Producer = Program,
            Creation = options.CreationDate?.UtcDateTime,
            Modified = options.CreationDate?.UtcDateTime,
        };
        using var fonts = new PdfFonts(document);
        using var memory = new SKDynamicMemoryWStream();
        using (var pdf = SKDocument.CreatePdf(memory, metadata))
        {
            foreach (var page in document.Pages)
            {
                var canvas = pdf.BeginPage((float)(page.Width * PointsPerMillimetre), (float)(page.Height * PointsPerMillimetre));
                using var painter = new CanvasPainter(canvas, PointsPerMillimetre, fonts.Of);
                painter.Draw(page.Drawing);
                pdf.EndPage();
            }
            pdf.Close();
        }
        using var data = memory.DetachAsData();
        return data.ToArray();
    }
}

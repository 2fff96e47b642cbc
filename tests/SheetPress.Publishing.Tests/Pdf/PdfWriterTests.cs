using System.Globalization;
using SheetPress.Engraving;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Annotations;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace SheetPress.Publishing.Tests.Pdf;

/// <summary>The file is read back with PdfPig, which shares no code with the writer.</summary>
public class PdfWriterTests
{
    private const double PointsPerMillimetre = 72 / 25.4;
    private static readonly Lazy<byte[]> Written = new(() => Write(SamplePages.Document()));

    private static byte[] Write(SheetDocument document, PdfOptions? options = null)
    {
        using var stream = new MemoryStream();
        PdfWriter.Write(document, stream, options);
        return stream.ToArray();
    }

    private static SheetDocument OnePage(params Mark[] marks) => new() { Title = "One", Pages = [new Page(210, 297, new Drawing([.. marks]))] };

    [Fact]
    public void The_words_come_back_with_their_accents()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        var words = pdf.GetPage(1).GetWords().Select(w => w.Text).ToArray();
        foreach (var word in SamplePages.Headline.Split(' '))
        {
            words.ShouldContain(word);
        }
        words.Count(w => w == "office").ShouldBe(Enum.GetValues<TextFont>().Length); // One line in each face, no ligature lost.
        words.Count(w => w == "0123456789").ShouldBe(Enum.GetValues<TextFont>().Length);
        words.Count(w => w == "“quoted”").ShouldBe(Enum.GetValues<TextFont>().Length);
        words.Count(w => w == "Ω").ShouldBe(Enum.GetValues<TextFont>().Length);
        pdf.GetPage(2).Text.ShouldBe("This is page 2.");
    }

    [Fact]
    public void Text_is_where_the_mark_is()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        var page = pdf.GetPage(1);
        var letter = page.Letters[0];
        letter.Value.ShouldBe("C");
        letter.StartBaseLine.X.ShouldBe(SamplePages.Left * PointsPerMillimetre, 0.1);
        (page.Height - letter.StartBaseLine.Y).ShouldBe(25 * PointsPerMillimetre, 0.2);
        letter.PointSize.ShouldBe(6 * PointsPerMillimetre, 0.1);
    }

    [Fact]
    public void Music_does_not_turn_up_among_the_text()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        pdf.GetPages().SelectMany(p => p.Letters).ShouldAllBe(l => l.Value.All(c => c < 0xE000 || c > 0xF8FF));
        pdf.GetPage(1).Paths.Count.ShouldBeGreaterThan(40); // It is there as outlines.
    }

    [Fact]
    public void All_fonts_are_embedded_and_small()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        var fonts = pdf.GetPages().SelectMany(p => p.Letters).Select(l => l.FontName!).Distinct().ToArray();
        fonts.Length.ShouldBe(Enum.GetValues<TextFont>().Length);
        fonts.ShouldAllBe(f => f.Contains('+', StringComparison.Ordinal)); // ISO 32000-1, 9.6.4: the tag of a subset.
        Written.Value.Length.ShouldBeLessThan(90_000); // Each whole face is 200 to 380 KB.
    }

    [Fact]
    public void A_text_of_one_face_makes_a_small_file() =>
        Write(OnePage(SamplePages.Text("Hello", TextFont.Sans, 20, 20, 4))).Length.ShouldBeLessThan(12_000);

    [Fact]
    public void The_same_document_gives_the_same_bytes_on_any_number_of_threads()
    {
        var files = new byte[8][];
        Parallel.For(0, files.Length, i => files[i] = Write(SamplePages.Document()));
        files.ShouldAllBe(f => f.SequenceEqual(Written.Value));
    }

    [Fact]
    public void The_culture_of_the_machine_does_not_matter()
    {
        var culture = CultureInfo.CurrentCulture;
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = comma;
            Write(SamplePages.Document()).AsSpan().SequenceEqual(Written.Value).ShouldBeTrue();
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    [Fact]
    public void Title_author_and_language_are_written()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        pdf.Information.Title.ShouldBe("Étude in F");
        pdf.Information.Author.ShouldBe("Ana Testová");
        pdf.Information.Producer.ShouldBe("SheetPress");
        var catalog = pdf.Structure.Catalog.CatalogDictionary;
        Text(catalog, "Lang").ShouldBe("en-GB");
        var viewer = (DictionaryToken)catalog.Data["ViewerPreferences"];
        viewer.Data["DisplayDocTitle"].ShouldBe(BooleanToken.True);
    }

    [Fact]
    public void No_date_is_written_unless_one_is_given()
    {
        using (var pdf = PdfDocument.Open(Written.Value))
        {
            pdf.Information.CreationDate.ShouldBeNull();
        }
        var dated = Write(SamplePages.Document(), new PdfOptions { CreationDate = new DateTimeOffset(2020, 2, 29, 12, 30, 0, TimeSpan.FromHours(2)) });
        using (var pdf = PdfDocument.Open(dated))
        {
            pdf.Information.CreationDate.ShouldNotBeNull().ShouldStartWith("D:20200229103000");
        }
    }

    [Fact]
    public void Bookmarks_lead_to_their_pages_in_levels()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        pdf.TryGetBookmarks(out var bookmarks).ShouldBeTrue();
        bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(n => (n.Title, n.Level, n.PageNumber))
            .ShouldBe([("Harmonie – Überblick", 0, 1), ("Exercises", 0, 2), ("1. Scale", 1, 2), ("2. Arpeggio", 1, 3), ("Plan", 0, 3)]);
        var plan = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Single(n => n.Title == "Plan");
        plan.Destination.Coordinates.Top.ShouldNotBeNull().ShouldBe((297 - 200) * PointsPerMillimetre, 0.1);
    }

    [Fact]
    public void A_bookmark_that_skips_a_level_hangs_below_the_last_one()
    {
        var document = SamplePages.Document() with { Bookmarks = [new Bookmark("Deep", 0, 0, 3), new Bookmark("Deeper", 1, 0, 7)] };
        using var pdf = PdfDocument.Open(Write(document));
        pdf.TryGetBookmarks(out var bookmarks).ShouldBeTrue();
        bookmarks.GetNodes().Select(n => (n.Title, n.Level)).ShouldBe([("Deep", 0), ("Deeper", 1)]);
    }

    [Fact]
    public void Pages_of_a_long_document_stay_in_order()
    {
        // Skia keeps many pages in a tree of several levels.
        var document = SamplePages.Document(70) with { Bookmarks = [.. Enumerable.Range(0, 70).Select(i => new Bookmark($"Page {i + 1}", i, 10))] };
        using var pdf = PdfDocument.Open(Write(document));
        pdf.NumberOfPages.ShouldBe(70);
        pdf.TryGetBookmarks(out var bookmarks).ShouldBeTrue();
        bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(n => n.PageNumber).ShouldBe(Enumerable.Range(1, 70));
        pdf.GetPage(67).Text.ShouldBe("This is page 67.");
    }

    [Fact]
    public void Page_labels_start_at_the_number_asked_for()
    {
        using var pdf = PdfDocument.Open(Write(SamplePages.Document(), new PdfOptions { FirstPageNumber = 41 }));
        var labels = (DictionaryToken)pdf.Structure.Catalog.CatalogDictionary.Data["PageLabels"];
        var numbers = (ArrayToken)labels.Data["Nums"];
        ((NumericToken)numbers[0]).Int.ShouldBe(0);
        ((NumericToken)((DictionaryToken)numbers[1]).Data["St"]).Int.ShouldBe(41);
    }

    [Fact]
    public void A_link_covers_its_text()
    {
        using var pdf = PdfDocument.Open(Written.Value);
        var page = pdf.GetPage(1);
        var link = page.GetAnnotations().ShouldHaveSingleItem();
        link.Type.ShouldBe(AnnotationType.Link);
        ((UglyToad.PdfPig.Actions.UriAction)link.Action!).Uri.ShouldBe("https://example.org/scales?key=F#bass");
        link.Rectangle.Left.ShouldBe(SamplePages.Left * PointsPerMillimetre, 0.1);
        link.Rectangle.Top.ShouldBeGreaterThan(page.Height - (210 * PointsPerMillimetre));
        link.Rectangle.Bottom.ShouldBeLessThan(page.Height - (210 * PointsPerMillimetre));
    }

    [Fact]
    public void The_address_of_a_link_is_ASCII()
    {
        var mark = SamplePages.Text("Übung", TextFont.Sans, 20, 40, 4) with { Link = "https://example.org/Übung 1" };
        using var pdf = PdfDocument.Open(Write(OnePage(mark)));
        var action = pdf.GetPage(1).GetAnnotations().Single().Action;
        ((UglyToad.PdfPig.Actions.UriAction)action!).Uri.ShouldBe("https://example.org/%C3%9Cbung%201");
    }

    [Fact]
    public void The_page_is_as_large_as_asked_for()
    {
        var letter = new SheetDocument { Title = "Letter", Pages = [new Page(215.9, 279.4, Drawing.Nothing)] };
        using var pdf = PdfDocument.Open(Write(letter));
        (pdf.GetPage(1).Width, pdf.GetPage(1).Height).ShouldBe((612.0, 792.0)); // US Letter: 8.5 by 11 inches.
        using var a4 = PdfDocument.Open(Written.Value);
        a4.GetPage(1).Width.ShouldBe(210 * PointsPerMillimetre, 0.5); // ISO 216; Skia rounds to whole points.
        a4.GetPage(1).Height.ShouldBe(297 * PointsPerMillimetre, 0.5);
    }

    [Fact]
    public void A_dense_page_of_music_stays_small()
    {
        string[] names = ["noteheadBlack", "noteheadHalf", "accidentalFlat", "accidentalSharp", "restQuarter", "flag8thUp", "rest8th", "articAccentAbove"];
        var marks = new List<Mark>();
        for (var i = 0; i < 400; i++)
        {
            marks.Add(new GlyphMark(MusicFont.Shipped[names[i % names.Length]], new Point(20 + (i % 40 * 4.31), 30 + (i / 40 * 24.7) + (i * 7 % 9 * 0.875)), 1.75));
            marks.Add(SamplePages.Text((i % 24).ToString(CultureInfo.InvariantCulture), TextFont.SansSemiBold, 20 + (i % 40 * 4.31), 42 + (i / 40 * 24.7), 3));
        }
        Write(OnePage([.. marks])).Length.ShouldBeLessThan(60_000);
    }

    [Fact]
    public void Characters_without_a_font_do_not_stop_the_writer()
    {
        var marks = TextShaper.Shape("a \U0010FFF0 z", TextFont.Serif).Select(r => (Mark)new TextMark(r, new Point(20, 20), 4)).ToArray();
        using var pdf = PdfDocument.Open(Write(OnePage(marks)));
        pdf.GetPage(1).Text.ShouldContain("z");
    }

    [Fact]
    public void A_document_without_pages_is_refused() =>
        Should.Throw<ArgumentException>(() => Write(new SheetDocument { Title = "None", Pages = [] }));

    private static string Text(DictionaryToken dictionary, string key) => dictionary.Data[key] switch
    {
        HexToken hex => hex.Data,
        StringToken text => text.Data,
        var other => other.ToString()!,
    };
}

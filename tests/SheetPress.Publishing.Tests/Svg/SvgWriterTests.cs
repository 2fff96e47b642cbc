using System.Globalization;
using System.Xml.Linq;
using SheetPress.Engraving;

namespace SheetPress.Publishing.Tests.Svg;

public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly XNamespace Link = "http://www.w3.org/1999/xlink";

    private static byte[] Write(Page page, string title = "")
    {
        using var stream = new MemoryStream();
        SvgWriter.Write(page, stream, title);
        return stream.ToArray();
    }

    private static XElement Read(Page page, string title = "")
    {
        using var stream = new MemoryStream(Write(page, title));
        return XDocument.Load(stream).Root!;
    }

    private static Page With(params Mark[] marks) => new(100, 80, new Drawing([.. marks]));

    private static double Number(XElement element, string attribute) => double.Parse(element.Attribute(attribute)!.Value, CultureInfo.InvariantCulture);

    [Fact]
    public void It_is_well_formed_and_as_large_as_the_page()
    {
        var svg = Read(SamplePages.AllMarks(), "Page <1> & \"more\"");
        svg.Name.ShouldBe(Svg + "svg");
        svg.Attribute("width")!.Value.ShouldBe("210mm");
        svg.Attribute("height")!.Value.ShouldBe("297mm");
        svg.Attribute("viewBox")!.Value.ShouldBe("0 0 210 297");
        svg.Element(Svg + "title")!.Value.ShouldBe("Page <1> & \"more\"");
    }

    [Fact]
    public void Every_outline_that_is_used_is_defined_once()
    {
        var svg = Read(SamplePages.AllMarks());
        var defined = svg.Element(Svg + "defs")!.Elements(Svg + "path").Select(p => p.Attribute("id")!.Value).ToArray();
        defined.ShouldBeUnique();
        var used = svg.Descendants(Svg + "use").Select(u => u.Attribute(Link + "href")!.Value[1..]).ToHashSet();
        used.ShouldBe(defined.ToHashSet(), ignoreOrder: true);
    }

    [Fact]
    public void A_glyph_stands_at_its_position_in_its_size()
    {
        var use = Read(With(new GlyphMark(MusicFont.Shipped["noteheadBlack"], new Point(12.3456, 7), 1.75))).Elements(Svg + "use").Single();
        // 1000 font units are four staff spaces of 1.75 mm.
        use.Attribute("transform")!.Value.ShouldBe("translate(12.346 7) scale(0.007)");
    }

    [Fact]
    public void Text_can_be_found_and_read_but_is_drawn_as_outlines()
    {
        var svg = Read(With(SamplePages.Text("Fügen & <b>", TextFont.Serif, 10, 20, 5)));
        var text = svg.Elements(Svg + "text").Single();
        text.Value.ShouldBe("Fügen & <b>");
        text.Attribute("fill-opacity")!.Value.ShouldBe("0");
        Number(text, "x").ShouldBe(10);
        Number(text, "textLength").ShouldBe(TextShaper.Measure("Fügen & <b>", TextFont.Serif) * 5, 0.001);
        var letters = svg.Elements(Svg + "g").Single();
        letters.Attribute("aria-hidden")!.Value.ShouldBe("true");
        letters.Elements(Svg + "use").Count().ShouldBe("Fügen&<b>".Length);
    }

    [Fact]
    public void A_link_is_around_its_text()
    {
        var link = Read(SamplePages.AllMarks()).Elements(Svg + "a").Single();
        link.Attribute(Link + "href")!.Value.ShouldBe("https://example.org/scales?key=F#bass");
        link.Element(Svg + "text")!.Value.ShouldBe("a page on the open web");
    }

    [Fact]
    public void Shapes_carry_their_numbers()
    {
        var svg = Read(With(
            new LineMark(new Point(1, 2), new Point(3, 4), 0.25, true) { Dashes = [1, 0.5] },
            new RectangleMark(new Box(5, 6, 9, 8), 0, 0.5) { Ink = 0.5 },
            new EllipseMark(new Point(20, 30), 4, 2, 0.1),
            new PolygonMark([new Point(0, 0), new Point(-0.0001, 1), new Point(1.23456, 1e-7)])));
        svg.Element(Svg + "line")!.ToString().ShouldBe($"<line x1=\"1\" y1=\"2\" x2=\"3\" y2=\"4\" fill=\"none\" stroke=\"#000000\" stroke-width=\"0.25\" stroke-linecap=\"round\" stroke-dasharray=\"1 0.5\" xmlns=\"{Svg}\" />");
        svg.Elements(Svg + "rect").Last().ToString().ShouldBe($"<rect x=\"5\" y=\"6\" width=\"4\" height=\"2\" rx=\"0.5\" fill=\"#808080\" xmlns=\"{Svg}\" />");
        svg.Element(Svg + "ellipse")!.ToString().ShouldBe($"<ellipse cx=\"20\" cy=\"30\" rx=\"4\" ry=\"2\" fill=\"none\" stroke=\"#000000\" stroke-width=\"0.1\" xmlns=\"{Svg}\" />");
        svg.Element(Svg + "polygon")!.Attribute("points")!.Value.ShouldBe("0 0 0 1 1.235 0");
    }

    /// <summary>Control points bound a curve, so numbers within the page mean ink within the page.</summary>
    [Fact]
    public void All_is_within_the_page()
    {
        var page = SamplePages.AllMarks();
        page.Drawing.Marks.ShouldAllBe(m => m.Bounds.Left >= 0 && m.Bounds.Top >= 0 && m.Bounds.Right <= page.Width && m.Bounds.Bottom <= page.Height);
        var svg = Read(page);
        var outlines = svg.Element(Svg + "defs")!.Elements().ToDictionary(p => p.Attribute("id")!.Value, p => p.Attribute("d")!.Value);
        var seen = 0;
        foreach (var use in svg.Descendants(Svg + "use"))
        {
            var transform = (use.Attribute("transform") ?? use.Parent!.Attribute("transform")!).Value.Split('(', ')', ' ').Where(p => double.TryParse(p, CultureInfo.InvariantCulture, out _)).Select(p => double.Parse(p, CultureInfo.InvariantCulture)).ToArray();
            var shift = use.Attribute("x") is { } x ? double.Parse(x.Value, CultureInfo.InvariantCulture) : 0;
            foreach (var (px, py) in Points(outlines[use.Attribute(Link + "href")!.Value[1..]]))
            {
                (transform[0] + ((px + shift) * transform[2])).ShouldBeInRange(0, page.Width);
                (transform[1] + (py * transform[2])).ShouldBeInRange(0, page.Height);
                seen++;
            }
        }
        seen.ShouldBeGreaterThan(5000);
    }

    [Fact]
    public void The_same_page_gives_the_same_bytes_in_any_culture()
    {
        var before = Write(SamplePages.AllMarks());
        var culture = CultureInfo.CurrentCulture;
        try
        {
            var odd = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            odd.NumberFormat.NumberDecimalSeparator = ",";
            odd.NumberFormat.NegativeSign = "~";
            CultureInfo.CurrentCulture = odd;
            Write(SamplePages.AllMarks()).ShouldBe(before);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
        before[0].ShouldBe((byte)'<'); // No byte-order mark.
        before.ShouldNotContain((byte)'\r');
    }

    [Fact]
    public void Characters_that_XML_forbids_do_not_break_the_file() =>
        Read(With(SamplePages.Text("a\u0001b", TextFont.Serif, 10, 20, 5)), "t\u0002").Elements(Svg + "text").Single().Value.ShouldBe("a\uFFFDb");

    /// <summary>Path data in whole numbers with absolute commands.</summary>
    private static IEnumerable<(double X, double Y)> Points(string data)
    {
        var numbers = new List<double>();
        var at = 0;
        while (at < data.Length)
        {
            if (char.IsAsciiDigit(data[at]) || data[at] == '-')
            {
                var end = at + 1;
                while (end < data.Length && char.IsAsciiDigit(data[end]))
                {
                    end++;
                }
                numbers.Add(int.Parse(data.AsSpan(at, end - at), CultureInfo.InvariantCulture));
                at = end;
            }
            else
            {
                "MLQCZ ".ShouldContain(data[at]);
                at++;
            }
        }
        (numbers.Count % 2).ShouldBe(0);
        return Enumerable.Range(0, numbers.Count / 2).Select(i => (numbers[2 * i], numbers[(2 * i) + 1]));
    }
}

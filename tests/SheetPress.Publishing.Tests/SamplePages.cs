using System.Collections.Immutable;
using SheetPress.Engraving;

namespace SheetPress.Publishing.Tests;

/// <summary>Pages with every kind of mark, in millimetres, for the tests of the writers.</summary>
internal static class SamplePages
{
    internal const double StaffSpace = 1.75;
    internal const double Left = 20;
    internal const double Right = 190;

    internal const string Headline = "Café étude: żółte strojenie, größer, ÀÉÎÕÜ ñ ç ß";

    /// <summary>A page of A4 with all kinds of marks.</summary>
    internal static Page AllMarks()
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(Text(Headline, TextFont.SerifBold, Left, 25, 6));
        var y = 34.0;
        foreach (var font in Enum.GetValues<TextFont>())
        {
            marks.Add(Text($"{font}: the office fills a flat AVAST 0123456789 Δ ° ø “quoted” – Ω Ж", font, Left, y, 4));
            y += 6;
        }
        marks.AddRange(Staff(95));
        marks.Add(new RectangleMark(new Box(Left, 130, 60, 150), 0.3, 2));
        marks.Add(new RectangleMark(new Box(70, 130, 110, 150)) { Ink = 0.15 });
        marks.Add(new EllipseMark(new Point(130, 140), 12, 8, 0.4));
        marks.Add(new EllipseMark(new Point(130, 140), 4, 4));
        marks.Add(new PolygonMark([new Point(150, 150), new Point(160, 130), new Point(170, 150)], 0.5));
        marks.Add(new PolygonMark([new Point(175, 150), new Point(180, 135), new Point(185, 150)]) { Ink = 0.5 });
        marks.Add(new LineMark(new Point(Left, 160), new Point(Right, 160), 0.4) { Dashes = [3, 1.5] });
        marks.Add(new LineMark(new Point(Left, 165), new Point(Right, 170), 1.5, RoundEnds: true));
        marks.Add(new LineMark(new Point(Left, 175), new Point(Right, 175), 1.5) { Ink = 0.3 });
        marks.Add(new CurveMark(new Point(Left, 195), new Point(60, 180), new Point(140, 180), new Point(Right, 195), 0.2, 1.2));
        marks.Add(Text("a page on the open web", TextFont.Sans, Left, 210, 4) with { Link = "https://example.org/scales?key=F#bass" });
        return new Page(210, 297, new Drawing(marks.ToImmutable()));
    }

    /// <summary>A document of several pages with an outline of two levels.</summary>
    internal static SheetDocument Document(int pages = 3) => new()
    {
        Title = "Étude in F",
        Author = "Ana Testová",
        Language = "en-GB",
        Pages = [AllMarks(), .. Enumerable.Range(2, pages - 1).Select(n => new Page(210, 297, new Drawing([Text($"This is page {n}.", TextFont.Serif, Left, 40, 5), .. Staff(60)])))],
        Bookmarks = [new Bookmark("Harmonie – Überblick", 0, 20), new Bookmark("Exercises", 1, 30), new Bookmark("1. Scale", 1, 50, 1), new Bookmark("2. Arpeggio", 2, 50, 1), new Bookmark("Plan", 2, 200)],
    };

    internal static TextMark Text(string text, TextFont font, double x, double y, double size) => new(TextShaper.Run(text, font), new Point(x, y), size);

    /// <summary>A staff with glyphs, stems, a beam and a tie.</summary>
    private static IEnumerable<Mark> Staff(double top)
    {
        var defaults = MusicFont.Shipped.Defaults;
        var marks = new List<Mark>();
        for (var line = 0; line < 5; line++)
        {
            marks.Add(new LineMark(new Point(0, line), new Point((Right - Left) / StaffSpace, line), defaults.StaffLineThickness) { Role = MarkRole.StaffLine });
        }
        marks.Add(Glyph("fClef", 0.5, 1, MarkRole.Clef));
        marks.Add(Glyph("accidentalFlat", 4, 3, MarkRole.KeySignature));
        marks.Add(Glyph("timeSig4", 6, 1, MarkRole.Meter));
        marks.Add(Glyph("timeSig4", 6, 3, MarkRole.Meter));
        var head = MusicFont.Shipped["noteheadBlack"];
        for (var i = 0; i < 12; i++)
        {
            var (x, y) = (10 + (i * 4.0), 2 + (i % 4 * 0.5));
            marks.Add(Glyph("noteheadBlack", x, y, MarkRole.Notehead));
            var stem = x + head.Anchors["stemUpSE"].X - (defaults.StemThickness / 2);
            marks.Add(new LineMark(new Point(stem, y + head.Anchors["stemUpSE"].Y), new Point(stem, -1.5), defaults.StemThickness) { Role = MarkRole.Stem });
        }
        var (first, last) = (10 + head.Anchors["stemUpSE"].X, 14 + head.Anchors["stemUpSE"].X);
        marks.Add(new PolygonMark([new Point(first - 0.12, -1.5), new Point(last, -1.5), new Point(last, -1), new Point(first - 0.12, -1)]) { Role = MarkRole.Beam });
        marks.Add(new CurveMark(new Point(18.6, 4.2), new Point(19.6, 5), new Point(21.6, 5), new Point(22.6, 4.7), defaults.TieEndpointThickness, defaults.TieMidpointThickness) { Role = MarkRole.Tie });
        marks.Add(Glyph("restQuarter", 60, 2, MarkRole.Rest));
        marks.Add(Glyph("accidentalSharp", 64, 2, MarkRole.Accidental));
        marks.Add(Glyph("noteheadHalf", 66, 2, MarkRole.Notehead));
        marks.Add(Glyph("fermataAbove", 70, -1, MarkRole.Articulation));
        marks.Add(Glyph("coda", 76, -1, MarkRole.Direction));
        marks.Add(Glyph("restWhole", 82, 1, MarkRole.Rest));
        marks.Add(Glyph("brace", 92, 4, MarkRole.Bracket));
        return marks.Select(m => m.Transform(StaffSpace, Left, top));
    }

    private static GlyphMark Glyph(string name, double x, double y, MarkRole role) => new(MusicFont.Shipped[name], new Point(x, y)) { Role = role };
}

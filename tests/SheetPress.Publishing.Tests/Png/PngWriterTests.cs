using System.Buffers.Binary;
using SheetPress.Engraving;
using SkiaSharp;

namespace SheetPress.Publishing.Tests.Png;

public class PngWriterTests
{
    private static byte[] Write(Page page, double dpi)
    {
        using var stream = new MemoryStream();
        PngWriter.Write(page, stream, dpi);
        return stream.ToArray();
    }

    private static Page Square(params Mark[] marks) => new(25.4, 25.4, new Drawing([.. marks]));

    /// <summary>Mean darkness of a part of a one-inch picture at 100 dpi, 0 white to 1 black; edges in dots.</summary>
    private static double Ink(SKBitmap picture, int left, int top, int right, int bottom)
    {
        var sum = 0.0;
        for (var y = top; y < bottom; y++)
        {
            for (var x = left; x < right; x++)
            {
                sum += 1 - (picture.GetPixel(x, y).Red / 255.0);
            }
        }
        return sum / ((right - left) * (bottom - top));
    }

    [Fact]
    public void Size_and_resolution_follow_from_the_dots_an_inch()
    {
        var png = Write(SamplePages.AllMarks(), 200);
        // PNG specification: width, height, depth and colour type of IHDR at 16; then our pHYs at 33.
        BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)).ShouldBe(1654); // 210 mm
        BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)).ShouldBe(2339); // 297 mm
        (png[24], png[25]).ShouldBe(((byte)8, (byte)0)); // 8 bits of grey
        png.AsSpan(37, 4).SequenceEqual("pHYs"u8).ShouldBeTrue();
        BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(41)).ShouldBe(7874); // 200 dots an inch in dots a metre
        png[49].ShouldBe((byte)1);
        // Worked out with another implementation of the CRC (zlib) over "pHYs", 7874, 7874, 1.
        BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(50)).ShouldBe(0x6ED0753Eu);
    }

    [Fact]
    public void An_empty_page_is_white()
    {
        using var picture = SKBitmap.Decode(Write(Square(), 100));
        (picture.Width, picture.Height).ShouldBe((100, 100));
        Ink(picture, 0, 0, 100, 100).ShouldBe(0);
    }

    /// <summary>Every mark darkens the box it claims and nothing outside of it (but for the blur of one dot).</summary>
    [Fact]
    public void There_is_ink_where_the_marks_are_and_nowhere_else()
    {
        var inch = 25.4;
        var centre = inch / 2;
        Mark[] marks =
        [
            new GlyphMark(MusicFont.Shipped["noteheadBlack"], new Point(centre, centre), 5),
            new GlyphMark(MusicFont.Shipped["fClef"], new Point(5, centre), 3),
            new LineMark(new Point(3, 4), new Point(20, 18), 1),
            new LineMark(new Point(3, 12), new Point(20, 12), 1, RoundEnds: true),
            new LineMark(new Point(3, 12), new Point(20, 12), 1) { Dashes = [2, 1] },
            new PolygonMark([new Point(4, 20), new Point(12, 4), new Point(20, 20)]),
            new CurveMark(new Point(3, 15), new Point(8, 8), new Point(16, 8), new Point(22, 15), 0.3, 2),
            new EllipseMark(new Point(centre, centre), 8, 5),
            new EllipseMark(new Point(centre, centre), 8, 5, 1),
            new RectangleMark(new Box(5, 6, 20, 18)),
            new RectangleMark(new Box(5, 6, 20, 18), 1, 2),
            SamplePages.Text("Hg", TextFont.Serif, 4, 16, 12),
        ];
        foreach (var mark in marks)
        {
            using var picture = SKBitmap.Decode(Write(Square(mark), 100));
            int Dots(double millimetres) => (int)Math.Round(millimetres / inch * 100);
            var box = mark.Bounds;
            var (left, top, right, bottom) = (Dots(box.Left), Dots(box.Top), Dots(box.Right), Dots(box.Bottom));
            Ink(picture, left, top, right, bottom).ShouldBeGreaterThan(0.08, mark.ToString());
            Ink(picture, 0, 0, 100, Math.Max(1, top - 2)).ShouldBe(0, 1e-9, mark.ToString());
            Ink(picture, 0, bottom + 2, 100, 100).ShouldBe(0, 1e-9, mark.ToString());
            Ink(picture, 0, 0, Math.Max(1, left - 2), 100).ShouldBe(0, 1e-9, mark.ToString());
            Ink(picture, right + 2, 0, 100, 100).ShouldBe(0, 1e-9, mark.ToString());
            // The box is tight: there is ink on each of its sides (the box of a curve adds its half thickness all around).
            var slack = mark is CurveMark ? 6 : 3;
            Ink(picture, left, Math.Max(0, top - 2), right, top + slack).ShouldBeGreaterThan(0, mark.ToString());
            Ink(picture, left, bottom - slack, right, bottom + 2).ShouldBeGreaterThan(0, mark.ToString());
            Ink(picture, Math.Max(0, left - 2), top, left + slack, bottom).ShouldBeGreaterThan(0, mark.ToString());
            Ink(picture, right - slack, top, right + 2, bottom).ShouldBeGreaterThan(0, mark.ToString());
        }
    }

    [Fact]
    public void Ink_makes_greys()
    {
        using var picture = SKBitmap.Decode(Write(Square(new RectangleMark(new Box(5, 5, 20, 20)) { Ink = 0.25 }), 100));
        picture.GetPixel(50, 50).Red.ShouldBe((byte)191); // 255 times three quarters, rounded
    }

    [Fact]
    public void A_line_without_thickness_is_not_drawn()
    {
        using var picture = SKBitmap.Decode(Write(Square(new LineMark(new Point(2, 12), new Point(20, 12), 0)), 100));
        Ink(picture, 0, 0, 100, 100).ShouldBe(0);
    }

    [Fact]
    public void The_same_page_gives_the_same_bytes_on_any_number_of_threads()
    {
        var alone = Write(SamplePages.AllMarks(), 72);
        var files = new byte[6][];
        Parallel.For(0, files.Length, i => files[i] = Write(SamplePages.AllMarks(), 72));
        files.ShouldAllBe(f => f.SequenceEqual(alone));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-72)]
    [InlineData(1e6)]
    [InlineData(double.NaN)]
    public void A_resolution_out_of_range_is_refused(double dpi) =>
        Should.Throw<ArgumentOutOfRangeException>(() => Write(Square(), dpi));
}

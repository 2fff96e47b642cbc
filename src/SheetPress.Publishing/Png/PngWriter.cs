using System.Buffers.Binary;
using SheetPress.Engraving;
using SkiaSharp;

namespace SheetPress.Publishing;

/// <summary>Writes a page as a grey PNG picture on white ground.</summary>
public static class PngWriter
{
    private const double MillimetresPerInch = 25.4;
    private const int SignatureLength = 8;
    private const int HeaderChunkLength = 25;

    /// <summary>Writes a page.</summary>
    /// <param name="page">The page.</param>
    /// <param name="stream">Where to write; it stays open.</param>
    /// <param name="dpi">Dots an inch, 10 to 2400; the file carries it, so the picture prints in its true size.</param>
    public static void Write(Page page, Stream stream, double dpi = 200)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dpi, 10);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dpi, 2400);
        var scale = dpi / MillimetresPerInch;
        var size = new SKImageInfo(Pixels(page.Width * scale), Pixels(page.Height * scale), SKColorType.Gray8, SKAlphaType.Opaque);
        using var surface = SKSurface.Create(size) ?? throw new InvalidOperationException($"A picture of {size.Width} by {size.Height} dots does not fit into memory.");
        surface.Canvas.Clear(SKColors.White);
        using (var painter = new CanvasPainter(surface.Canvas, scale, Typefaces.Of))
        {
            painter.Draw(page.Drawing);
        }
        using var pixels = surface.PeekPixels();
        using var encoded = pixels.Encode(SKPngEncoderOptions.Default) ?? throw new InvalidOperationException("The picture cannot be written as PNG.");
        var png = encoded.AsSpan();
        stream.Write(png[..(SignatureLength + HeaderChunkLength)]);
        WriteResolution(stream, dpi);
        stream.Write(png[(SignatureLength + HeaderChunkLength)..]);
    }

    private static int Pixels(double length) => Math.Max(1, (int)Math.Round(length));

    /// <summary>Source: PNG specification, third edition (W3C), chunk pHYs: dots a metre across and down, unit 1.</summary>
    private static void WriteResolution(Stream stream, double dpi)
    {
        Span<byte> chunk = stackalloc byte[21];
        BinaryPrimitives.WriteInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk[4..]);
        var dotsPerMetre = (int)Math.Round(dpi * 1000 / MillimetresPerInch);
        BinaryPrimitives.WriteInt32BigEndian(chunk[8..], dotsPerMetre);
        BinaryPrimitives.WriteInt32BigEndian(chunk[12..], dotsPerMetre);
        chunk[16] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(chunk[17..], Crc(chunk[4..17]));
        stream.Write(chunk);
    }

    /// <summary>Source: PNG specification, annex D, cyclic redundancy code (polynomial EDB88320).</summary>
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 0 ? crc >> 1 : (crc >> 1) ^ 0xEDB88320;
            }
        }
        return ~crc;
    }
}

using SkiaSharp;

namespace SheetPress.Publishing;

/// <summary>
/// Outlines of the glyphs of a font in font units, y downward. Skia scales an outline on the way, which leaves 375.977
/// where the font says 376; the units of a font are whole numbers, so they are rounded back. Safe for any number of threads.
/// </summary>
internal sealed class GlyphOutlines
{
    private static readonly Lazy<GlyphOutlines> MusicOutlines = new(() => new GlyphOutlines(Typefaces.Music));

    private readonly SKTypeface _typeface;
    private readonly SKPath?[] _outlines;

    internal GlyphOutlines(SKTypeface typeface)
    {
        _typeface = typeface;
        UnitsPerEm = typeface.UnitsPerEm;
        _outlines = new SKPath?[typeface.GlyphCount];
    }

    /// <summary>Those of the music font.</summary>
    internal static GlyphOutlines Music => MusicOutlines.Value;

    /// <summary>Font units in one em.</summary>
    internal int UnitsPerEm { get; }

    /// <summary>Font units in one staff space; SMuFL: four staff spaces are one em.</summary>
    internal double UnitsPerStaffSpace => UnitsPerEm / 4.0;

    /// <summary>The glyph of a character.</summary>
    internal ushort Glyph(int character)
    {
        using var font = new SKFont(_typeface);
        return font.GetGlyph(character);
    }

    /// <summary>The outline of a glyph; empty for a space.</summary>
    internal SKPath Outline(ushort glyph)
    {
        ref var outline = ref _outlines[glyph];
        return Volatile.Read(ref outline) ?? Interlocked.CompareExchange(ref outline, Read(glyph), null) ?? outline;
    }

    private SKPath Read(ushort glyph)
    {
        using var font = new SKFont(_typeface, UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
        using var scaled = font.GetGlyphPath(glyph);
        using var builder = new SKPathBuilder();
        if (scaled is not null)
        {
            CopyRounded(scaled, builder);
        }
        return builder.Detach();
    }

    private static void CopyRounded(SKPath from, SKPathBuilder to)
    {
        Span<SKPoint> points = stackalloc SKPoint[4];
        using var iterator = from.CreateRawIterator();
        for (var verb = iterator.Next(points); verb != SKPathVerb.Done; verb = iterator.Next(points))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    to.MoveTo(Rounded(points[0]));
                    break;
                case SKPathVerb.Line:
                    to.LineTo(Rounded(points[1]));
                    break;
                case SKPathVerb.Quad:
                    to.QuadTo(Rounded(points[1]), Rounded(points[2]));
                    break;
                case SKPathVerb.Cubic:
                    to.CubicTo(Rounded(points[1]), Rounded(points[2]), Rounded(points[3]));
                    break;
                case SKPathVerb.Close:
                    to.Close();
                    break;
                default:
                    throw new InvalidDataException($"A font outline cannot hold a {verb}.");
            }
        }
    }

    private static SKPoint Rounded(SKPoint p) => new(MathF.Round(p.X), MathF.Round(p.Y));
}

using System.Globalization;
using System.Text;
using SheetPress.Engraving;
using SkiaSharp;

namespace SheetPress.Publishing;

/// <summary>Draws marks on a Skia canvas, the same way for a page of a PDF and for a picture.</summary>
/// <remarks>
/// Lengths are scaled here and not by the canvas: with the canvas left alone, a PDF needs no change of matrix for each mark.
/// </remarks>
internal sealed class CanvasPainter : IDisposable
{
    private readonly SKCanvas _canvas;
    private readonly double _scale;
    private readonly Func<TextRun, SKTypeface> _typefaceOf;
    private readonly Dictionary<string, SKPath> _outlines = new(StringComparer.Ordinal);
    private readonly SKPaint _fill = new() { IsAntialias = true };
    private readonly SKPaint _stroke = new() { IsAntialias = true, IsStroke = true, StrokeJoin = SKStrokeJoin.Miter };

    /// <summary>A painter for one page.</summary>
    /// <param name="canvas">Where to draw.</param>
    /// <param name="scale">Units of the canvas in a millimetre.</param>
    /// <param name="typefaceOf">The font for a run of text, with the glyph numbers it was shaped with.</param>
    internal CanvasPainter(SKCanvas canvas, double scale, Func<TextRun, SKTypeface> typefaceOf)
    {
        _canvas = canvas;
        _scale = scale;
        _typefaceOf = typefaceOf;
    }

    public void Dispose()
    {
        _fill.Dispose();
        _stroke.Dispose();
    }

    internal void Draw(Drawing drawing)
    {
        foreach (var mark in drawing.Marks)
        {
            _fill.Color = _stroke.Color = Grey(mark.Ink);
            switch (mark)
            {
                case GlyphMark glyph:
                    DrawGlyph(glyph);
                    break;
                case TextMark text:
                    DrawText(text);
                    break;
                case LineMark line:
                    DrawLine(line);
                    break;
                case PolygonMark polygon:
                    DrawPolygon(polygon);
                    break;
                case CurveMark curve:
                    DrawCurve(curve);
                    break;
                case EllipseMark ellipse:
                    _canvas.DrawOval(At(ellipse.Centre), new SKSize(Length(ellipse.RadiusX), Length(ellipse.RadiusY)), FillOrStroke(ellipse.OutlineThickness));
                    break;
                case RectangleMark rectangle:
                    DrawRectangle(rectangle);
                    break;
                default:
                    throw new NotSupportedException($"There is no way to draw a {mark.GetType().Name}.");
            }
        }
    }

    private static SKColor Grey(double ink)
    {
        var level = (byte)Math.Round(255 * (1 - Math.Clamp(ink, 0, 1)));
        return new SKColor(level, level, level);
    }

    private float Length(double value) => (float)(value * _scale);

    private SKPoint At(Point p) => new((float)(p.X * _scale), (float)(p.Y * _scale));

    private SKPaint FillOrStroke(double outlineThickness)
    {
        if (outlineThickness <= 0)
        {
            return _fill;
        }
        _stroke.StrokeWidth = Length(outlineThickness);
        _stroke.StrokeCap = SKStrokeCap.Butt;
        return _stroke;
    }

    private void DrawGlyph(GlyphMark mark)
    {
        var outlines = GlyphOutlines.Music;
        if (!_outlines.TryGetValue(mark.Glyph.Name, out var outline))
        {
            _outlines.Add(mark.Glyph.Name, outline = outlines.Outline(outlines.Glyph(mark.Glyph.CodePoint)));
        }
        var at = At(mark.Position);
        var scale = (float)(mark.StaffSpace * _scale / outlines.UnitsPerStaffSpace);
        _canvas.Save();
        _canvas.Translate(at.X, at.Y);
        _canvas.Scale(scale);
        _canvas.DrawPath(outline, _fill);
        _canvas.Restore();
    }

    private void DrawText(TextMark mark)
    {
        var run = mark.Run;
        if (run.Glyphs.IsEmpty)
        {
            return;
        }
        using var font = new SKFont(_typefaceOf(run), Length(mark.Size))
        {
            Subpixel = true,
            LinearMetrics = true,
            Hinting = SKFontHinting.None,
            Edging = SKFontEdging.Antialias,
        };
        // The characters go along with the glyphs, so that a PDF gives back the text as it was written.
        var utf8 = Encoding.UTF8.GetBytes(run.Text);
        using var builder = new SKTextBlobBuilder();
        var buffer = builder.AllocatePositionedTextRun(font, run.Glyphs.Length, utf8.Length);
        var glyphs = buffer.Glyphs;
        var positions = buffer.Positions;
        var clusters = buffer.Clusters;
        for (var i = 0; i < run.Glyphs.Length; i++)
        {
            var glyph = run.Glyphs[i];
            glyphs[i] = glyph.GlyphId;
            positions[i] = new SKPoint((float)(glyph.X * mark.Size * _scale), (float)(glyph.Y * mark.Size * _scale));
            clusters[i] = utf8.Length == run.Text.Length ? (uint)glyph.Cluster : (uint)Encoding.UTF8.GetByteCount(run.Text.AsSpan(0, glyph.Cluster));
        }
        buffer.SetText(utf8);
        using var blob = builder.Build();
        var at = At(mark.Position);
        _canvas.DrawText(blob, at.X, at.Y, _fill);
        if (mark.Link is { } link)
        {
            DrawLink(mark, link);
        }
    }

    /// <summary>The area to click is as high as the letters of the line, whatever letters it has.</summary>
    private void DrawLink(TextMark mark, string link)
    {
        var metrics = TextMetrics.Of(mark.Run.Font);
        var at = At(mark.Position);
        var area = new SKRect(at.X, at.Y - Length(metrics.Ascender * mark.Size), at.X + Length(mark.Run.Advance * mark.Size), at.Y + Length(metrics.Descender * mark.Size));
        _canvas.DrawUrlAnnotation(area, AsciiAddress(link))?.Dispose();
    }

    /// <summary>An address with all but visible ASCII as percent signs and digits. Source: RFC 3987, 3.1 (mapping of IRIs to URIs).</summary>
    private static string AsciiAddress(string link)
    {
        var address = new StringBuilder(link.Length);
        foreach (var b in Encoding.UTF8.GetBytes(link))
        {
            if (b is > 0x20 and < 0x7F)
            {
                address.Append((char)b);
            }
            else
            {
                address.Append(CultureInfo.InvariantCulture, $"%{b:X2}");
            }
        }
        return address.ToString();
    }

    private void DrawLine(LineMark mark)
    {
        if (mark.Thickness <= 0)
        {
            return; // Skia would draw the thinnest line it can.
        }
        _stroke.StrokeWidth = Length(mark.Thickness);
        _stroke.StrokeCap = mark.RoundEnds ? SKStrokeCap.Round : SKStrokeCap.Butt;
        if (!mark.Dashes.IsDefaultOrEmpty)
        {
            using var dashes = SKPathEffect.CreateDash(DashLengths(mark), 0);
            _stroke.PathEffect = dashes;
            _canvas.DrawLine(At(mark.From), At(mark.To), _stroke);
            _stroke.PathEffect = null;
            return;
        }
        _canvas.DrawLine(At(mark.From), At(mark.To), _stroke);
    }

    /// <summary>Dashes and gaps by turns; an odd number of lengths is gone through twice, as in PDF and SVG.</summary>
    private float[] DashLengths(LineMark mark)
    {
        var lengths = new float[mark.Dashes.Length % 2 == 0 ? mark.Dashes.Length : 2 * mark.Dashes.Length];
        for (var i = 0; i < lengths.Length; i++)
        {
            lengths[i] = Length(mark.Dashes[i % mark.Dashes.Length]);
        }
        return lengths;
    }

    private void DrawPolygon(PolygonMark mark)
    {
        if (mark.Corners.IsEmpty)
        {
            return;
        }
        using var builder = new SKPathBuilder();
        builder.MoveTo(At(mark.Corners[0]));
        for (var i = 1; i < mark.Corners.Length; i++)
        {
            builder.LineTo(At(mark.Corners[i]));
        }
        builder.Close();
        using var path = builder.Detach();
        _canvas.DrawPath(path, FillOrStroke(mark.OutlineThickness));
    }

    private void DrawCurve(CurveMark mark)
    {
        var shape = LensShape.Of(mark);
        using var builder = new SKPathBuilder();
        builder.MoveTo(At(shape.Upper.A));
        builder.CubicTo(At(shape.Upper.B), At(shape.Upper.C), At(shape.Upper.D));
        builder.LineTo(At(shape.Lower.A));
        builder.CubicTo(At(shape.Lower.B), At(shape.Lower.C), At(shape.Lower.D));
        builder.Close();
        using var path = builder.Detach();
        _canvas.DrawPath(path, _fill);
    }

    private void DrawRectangle(RectangleMark mark)
    {
        var (topLeft, bottomRight) = (At(new Point(mark.Area.Left, mark.Area.Top)), At(new Point(mark.Area.Right, mark.Area.Bottom)));
        var area = new SKRect(topLeft.X, topLeft.Y, bottomRight.X, bottomRight.Y);
        var paint = FillOrStroke(mark.OutlineThickness);
        if (mark.CornerRadius > 0)
        {
            _canvas.DrawRoundRect(area, Length(mark.CornerRadius), Length(mark.CornerRadius), paint);
        }
        else
        {
            _canvas.DrawRect(area, paint);
        }
    }
}

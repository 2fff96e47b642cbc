using System.Globalization;
using System.Text;
using SheetPress.Engraving;

namespace SheetPress.Publishing;

/// <summary>The marks of a page as SVG elements, one a line.</summary>
internal sealed class SvgBody
{
    /// <summary>The elements so far.</summary>
    internal StringBuilder Text { get; } = new();

    /// <summary>The outlines they use.</summary>
    internal SvgDefinitions Definitions { get; } = new();

    internal void Draw(Drawing drawing)
    {
        foreach (var mark in drawing.Marks)
        {
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
                    Open("ellipse").Number("cx", ellipse.Centre.X).Number("cy", ellipse.Centre.Y).Number("rx", ellipse.RadiusX).Number("ry", ellipse.RadiusY)
                        .Paint(ellipse, ellipse.OutlineThickness).Close();
                    break;
                case RectangleMark rectangle:
                    DrawRectangle(rectangle);
                    break;
                default:
                    throw new NotSupportedException($"There is no way to draw a {mark.GetType().Name}.");
            }
        }
    }

    /// <summary>Text for an element or an attribute; characters that XML 1.0 does not allow become the replacement character.</summary>
    internal static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '&':
                    escaped.Append("&amp;");
                    break;
                case '<':
                    escaped.Append("&lt;");
                    break;
                case '>':
                    escaped.Append("&gt;");
                    break;
                case '"':
                    escaped.Append("&quot;");
                    break;
                case (< 0x20 and not '\t' and not '\n') or 0xFFFE or 0xFFFF:
                    escaped.Append('\uFFFD');
                    break;
                default:
                    escaped.Append(rune.ToString());
                    break;
            }
        }
        return escaped.ToString();
    }

    private static string Grey(double ink)
    {
        var level = (int)Math.Round(255 * (1 - Math.Clamp(ink, 0, 1)));
        return string.Create(CultureInfo.InvariantCulture, $"#{level:x2}{level:x2}{level:x2}");
    }

    private void DrawGlyph(GlyphMark mark)
    {
        if (Definitions.NameOf(mark.Glyph) is { } name)
        {
            Text.Append("<use xlink:href=\"#").Append(name).Append('"');
            Place(mark.Position, mark.StaffSpace / GlyphOutlines.Music.UnitsPerStaffSpace).Paint(mark, 0).Close();
        }
    }

    private void DrawText(TextMark mark)
    {
        var run = mark.Run;
        if (string.IsNullOrWhiteSpace(run.Text))
        {
            return;
        }
        if (mark.Link is { } link)
        {
            Text.Append("<a xlink:href=\"").Append(Escaped(link)).Append("\">");
        }
        var unitsPerEm = Definitions.UnitsPerEm(run);
        Text.Append("<g aria-hidden=\"true\"");
        Place(mark.Position, mark.Size / unitsPerEm).Paint(mark, 0).Text.Append('>');
        foreach (var glyph in run.Glyphs)
        {
            if (Definitions.NameOf(run, glyph.GlyphId) is { } name)
            {
                Text.Append("<use xlink:href=\"#").Append(name).Append('"');
                Number("x", glyph.X * unitsPerEm);
                if (glyph.Y != 0)
                {
                    Number("y", glyph.Y * unitsPerEm);
                }
                Text.Append("/>");
            }
        }
        Text.Append("</g>");
        DrawInvisible(mark);
        if (mark.Link is not null)
        {
            Text.Append("</a>");
        }
        Text.Append('\n');
    }

    private void DrawInvisible(TextMark mark)
    {
        Text.Append("<text fill-opacity=\"0\" xml:space=\"preserve\"");
        Number("x", mark.Position.X).Number("y", mark.Position.Y).Number("font-size", mark.Size).Number("textLength", mark.Run.Advance * mark.Size);
        Text.Append(" lengthAdjust=\"spacingAndGlyphs\">").Append(Escaped(mark.Run.Text)).Append("</text>");
    }

    private void DrawLine(LineMark mark)
    {
        if (mark.Thickness <= 0)
        {
            return;
        }
        Open("line").Number("x1", mark.From.X).Number("y1", mark.From.Y).Number("x2", mark.To.X).Number("y2", mark.To.Y).Paint(mark, mark.Thickness);
        if (mark.RoundEnds)
        {
            Text.Append(" stroke-linecap=\"round\"");
        }
        if (!mark.Dashes.IsDefaultOrEmpty)
        {
            Text.Append(" stroke-dasharray=\"");
            for (var i = 0; i < mark.Dashes.Length; i++)
            {
                (i > 0 ? Text.Append(' ') : Text).AppendLength(mark.Dashes[i]);
            }
            Text.Append('"');
        }
        Close();
    }

    private void DrawPolygon(PolygonMark mark)
    {
        Open("polygon");
        Text.Append(" points=\"");
        for (var i = 0; i < mark.Corners.Length; i++)
        {
            Coordinates(mark.Corners[i], i > 0);
        }
        Text.Append('"');
        Paint(mark, mark.OutlineThickness).Close();
    }

    private void DrawCurve(CurveMark mark)
    {
        var (upper, lower) = LensShape.Of(mark);
        Open("path");
        Text.Append(" d=\"M");
        Coordinates(upper.A, false);
        Text.Append('C');
        Coordinates(upper.B, false);
        Coordinates(upper.C, true);
        Coordinates(upper.D, true);
        Text.Append('L');
        Coordinates(lower.A, false);
        Text.Append('C');
        Coordinates(lower.B, false);
        Coordinates(lower.C, true);
        Coordinates(lower.D, true);
        Text.Append("Z\"");
        Paint(mark, 0).Close();
    }

    private void DrawRectangle(RectangleMark mark)
    {
        Open("rect").Number("x", mark.Area.Left).Number("y", mark.Area.Top).Number("width", mark.Area.Width).Number("height", mark.Area.Height);
        if (mark.CornerRadius > 0)
        {
            Number("rx", mark.CornerRadius);
        }
        Paint(mark, mark.OutlineThickness).Close();
    }

    private SvgBody Open(string element)
    {
        Text.Append('<').Append(element);
        return this;
    }

    private SvgBody Number(string attribute, double value)
    {
        Text.Append(' ').Append(attribute).Append("=\"").AppendLength(value).Append('"');
        return this;
    }

    private void Coordinates(Point p, bool separate) => (separate ? Text.Append(' ') : Text).AppendLength(p.X).Append(' ').AppendLength(p.Y);

    private SvgBody Place(Point position, double scale)
    {
        Text.Append(" transform=\"translate(").AppendLength(position.X).Append(' ').AppendLength(position.Y).Append(") scale(").AppendFactor(scale).Append(")\"");
        return this;
    }

    /// <summary>Fills the shape, or strokes it when a thickness is given; black fill is what SVG does without being told.</summary>
    private SvgBody Paint(Mark mark, double thickness)
    {
        var grey = Grey(mark.Ink);
        if (thickness > 0)
        {
            Text.Append(" fill=\"none\" stroke=\"").Append(grey).Append('"');
            return Number("stroke-width", thickness);
        }
        if (mark.Ink < 1)
        {
            Text.Append(" fill=\"").Append(grey).Append('"');
        }
        return this;
    }

    private void Close() => Text.Append("/>\n");
}

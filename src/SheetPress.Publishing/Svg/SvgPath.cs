using System.Globalization;
using System.Text;
using SkiaSharp;

namespace SheetPress.Publishing;

/// <summary>Path data of a glyph outline in font units, which are whole numbers. Source: SVG 2, chapter 9 (paths).</summary>
internal static class SvgPath
{
    internal static string Data(SKPath outline)
    {
        var text = new StringBuilder();
        Span<SKPoint> points = stackalloc SKPoint[4];
        using var iterator = outline.CreateRawIterator();
        for (var verb = iterator.Next(points); verb != SKPathVerb.Done; verb = iterator.Next(points))
        {
            switch (verb)
            {
                case SKPathVerb.Move:
                    Append(text, 'M', points[..1]);
                    break;
                case SKPathVerb.Line:
                    Append(text, 'L', points[1..2]);
                    break;
                case SKPathVerb.Quad:
                    Append(text, 'Q', points[1..3]);
                    break;
                case SKPathVerb.Cubic:
                    Append(text, 'C', points[1..4]);
                    break;
                case SKPathVerb.Close:
                    text.Append('Z');
                    break;
                default:
                    throw new InvalidDataException($"A font outline cannot hold a {verb}.");
            }
        }
        return text.ToString();
    }

    private static void Append(StringBuilder text, char command, ReadOnlySpan<SKPoint> points)
    {
        text.Append(command);
        for (var i = 0; i < points.Length; i++)
        {
            AppendUnits(text, points[i].X, i > 0);
            AppendUnits(text, points[i].Y, true);
        }
    }

    /// <summary>A minus sign separates two numbers as well as a space does.</summary>
    private static void AppendUnits(StringBuilder text, float value, bool separate)
    {
        var units = (int)value;
        if (separate && units >= 0)
        {
            text.Append(' ');
        }
        text.Append(CultureInfo.InvariantCulture, $"{units}");
    }
}

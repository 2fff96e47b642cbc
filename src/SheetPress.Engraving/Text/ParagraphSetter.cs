using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>How the lines of a paragraph end.</summary>
public enum ParagraphEdge
{
    /// <summary>Ragged at the right.</summary>
    Ragged,
    /// <summary>Even on both sides; a line whose spaces would grow too wide stays ragged.</summary>
    Justified,
    /// <summary>Each line in the middle.</summary>
    Centred,
    /// <summary>Ragged at the left.</summary>
    RaggedLeft,
}

/// <summary>Sets paragraphs: breaks them by <see cref="TotalFit"/> and places the words.</summary>
public static class ParagraphSetter
{
    // Word spaces in their own width: how far they may grow before it looks bad, shrink at all, and grow in a justified line.
    private const double SpaceStretch = 0.5;
    private const double SpaceShrink = 0.3;
    private const double WidestRatio = 2;

    // How far a ragged line can fall short, as a share of the measure, before it looks bad; and the share that a last line should
    // fill: at a ragged edge lines give up a word to it, where the edge is even they could only do so by wide spaces.
    private const double RaggedStretch = 0.12;
    private const double RaggedLastFill = 0.4;
    private const double JustifiedLastFill = 0.12;

    /// <summary>Sets a paragraph.</summary>
    /// <param name="inlines">Its text.</param>
    /// <param name="style">How it looks.</param>
    /// <param name="width">Width of its column in millimetres.</param>
    /// <param name="edge">How its lines end.</param>
    /// <returns>Its lines; none for no text.</returns>
    public static ImmutableArray<SetLine> Set(ImmutableArray<Inline> inlines, TextStyle style, double width, ParagraphEdge edge = ParagraphEdge.Ragged)
    {
        var lines = ImmutableArray.CreateBuilder<SetLine>();
        for (var start = 0; start < inlines.Length;)
        {
            var end = start;
            while (end < inlines.Length && inlines[end] is not BreakInline) end++;
            SetUnbroken(lines, inlines.AsSpan()[start..end].ToArray(), style, width, edge);
            start = end + 1;
        }
        return lines.DrainToImmutable();
    }

    /// <summary>Width of a text set in one line.</summary>
    public static double NaturalWidth(ImmutableArray<Inline> inlines, TextStyle style)
    {
        var width = 0.0;
        foreach (var item in LineItems.Make(inlines, style, double.PositiveInfinity)) width += item.Piece.Width + item.Space;
        return width;
    }

    /// <summary>Width of the widest part of a text that is never broken.</summary>
    public static double LeastWidth(ImmutableArray<Inline> inlines, TextStyle style)
    {
        var (widest, run) = (0.0, 0.0);
        foreach (var item in LineItems.Make(inlines, style, double.PositiveInfinity))
        {
            run += item.Piece.Width;
            widest = Math.Max(widest, run);
            if (item.CanBreak) run = 0;
        }
        return widest;
    }

    private static void SetUnbroken(ImmutableArray<SetLine>.Builder lines, Inline[] inlines, TextStyle style, double width, ParagraphEdge edge)
    {
        var items = LineItems.Make(inlines, style, width);
        if (items.Count == 0) return;
        var toLeft = InlineLevels.Of(inlines).BaseLevel == 1;
        if (toLeft) edge = edge switch { ParagraphEdge.Ragged => ParagraphEdge.RaggedLeft, ParagraphEdge.RaggedLeft => ParagraphEdge.Ragged, _ => edge };
        var justified = edge == ParagraphEdge.Justified;
        var fits = new FitItem[items.Count];
        for (var i = 0; i < fits.Length; i++)
        {
            var (size, space) = (items[i].Piece.Width, items[i].Space);
            fits[i] = new FitItem(size, space, justified ? space * SpaceStretch : 0, justified ? space * SpaceShrink : 0, items[i].CanBreak ? 0 : double.PositiveInfinity);
        }
        var options = new FitOptions(width) { EndStretch = justified ? 0 : RaggedStretch * width, LastFill = justified ? JustifiedLastFill : RaggedLastFill };
        foreach (var line in TotalFit.Break(fits, options)) lines.Add(Place(items, line, style, width, edge, line.End == fits.Length, toLeft));
    }

    private static SetLine Place(List<LineItem> items, FitLine line, TextStyle style, double width, ParagraphEdge edge, bool isLast, bool toLeft)
    {
        var slack = width - line.Natural;
        var spread = 0.0;
        if (edge == ParagraphEdge.Justified)
        {
            if (slack < 0 && line.Shrink > 0) spread = Math.Max(-1, slack / line.Shrink) * SpaceShrink;
            else if (slack > 0 && !isLast && line.Stretch > 0 && slack / line.Stretch <= WidestRatio) spread = slack / line.Stretch * SpaceStretch;
        }
        var row = new LineRow(style.Size);
        var x = edge switch
        {
            ParagraphEdge.Centred => slack / 2,
            ParagraphEdge.RaggedLeft => slack,
            // What stays short of an even edge does so where its lines end.
            ParagraphEdge.Justified when toLeft => slack - (spread * (line.Natural - ItemsWidth(items, line))),
            _ => 0,
        };
        for (var i = line.Start; i < line.End; i++)
        {
            var item = items[i];
            var space = i + 1 < line.End ? item.Space * (1 + spread) : 0;
            row.Add(item, x, space);
            x += item.Piece.Width + space;
        }
        return row.Finish(x);
    }

    private static double ItemsWidth(List<LineItem> items, FitLine line)
    {
        var width = 0.0;
        for (var i = line.Start; i < line.End; i++) width += items[i].Piece.Width;
        return width;
    }
}

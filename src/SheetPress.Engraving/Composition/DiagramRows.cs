using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Sets diagrams side by side in rows, necks level. Upright ones and lying ones stand in rows of their own, unless one row holds them all: then their titles are level.</summary>
internal static class DiagramRows
{
    private const double Gap = 8;
    private const double RowGap = 5;
    // Upright diagrams of one run show as many frets as the longest of them, so that they and their captions end level; but none is
    // made longer than by this many.
    private const int MostMoreFrets = 2;

    // Diagrams side by side may press their frets together this far, in millimetres a fret on average.
    private const double NarrowestFret = 8.4;

    internal static ImmutableArray<FlowBox> Make(ImmutableArray<NeckDiagram> diagrams, PageStyle style)
    {
        var rows = new List<FlowBox>();
        var drawn = 0;
        DiagramRow? single = null;
        for (var start = 0; start < diagrams.Length;)
        {
            var end = start + 1;
            ImmutableArray<DiagramRow> grid;
            if (NeckParts.Of(diagrams[start], style) is { Length: > 1 } parts)
            {
                grid = Grid(parts.AsSpan(), drawn, style);
                rows.AddRange(grid.Select((row, i) => i + 1 < grid.Length ? row.Box with { BreakPenalty = FlowBox.Never } : row.Box));
                drawn += parts.Length;
                single = null;
            }
            else
            {
                while (end < diagrams.Length && diagrams[end].Upright == diagrams[start].Upright && IsWide(diagrams[end], style) == IsWide(diagrams[start], style) && NeckParts.Of(diagrams[end], style).Length == 1) end++;
                grid = Grid(diagrams.AsSpan()[start..end], drawn, style);
                if (grid is [var row] && single is { } before && Beside(before, row, style) is { } both)
                {
                    rows[^1] = both.Box;
                    single = both;
                }
                else
                {
                    rows.AddRange(grid.Select(r => r.Box));
                    single = grid is [var only] ? only : null;
                }
                drawn += end - start;
            }
            start = end;
        }
        return [.. rows];
    }

    // Two rows as one, where there is room: the second begins at the middle of the page or, where the first is longer, behind it.
    private static DiagramRow? Beside(DiagramRow first, DiagramRow second, PageStyle style)
    {
        var x = Math.Max(first.Width + Gap, Cell(2, style) + Gap);
        if (x + second.Width > style.TextWidth) x = first.Width + Gap;
        if (x + second.Width > style.TextWidth) return null;
        var words = Math.Max(first.Words, second.Words);
        var (down, downToo) = (words - first.Words, words - second.Words);
        var box = first.Box with
        {
            Height = Math.Max(first.Box.Height + down, second.Box.Height + downToo),
            Drawings = [.. first.Box.Drawings.Select(d => d.Offset(0, down)), .. second.Box.Drawings.Select(d => d.Offset(x, downToo))],
        };
        return new DiagramRow(box, words, x + second.Width);
    }

    // A lying neck that has to have the whole width.
    private static bool IsWide(NeckDiagram diagram, PageStyle style) => !diagram.Upright && LeastWidth(diagram, style) > Cell(2, style);

    private static double Cell(int columns, PageStyle style) => (style.TextWidth - ((columns - 1) * Gap)) / columns;

    private static double LeastWidth(NeckDiagram diagram, PageStyle style) => LeastNeck(diagram, style) + NeckFrame.Sides(diagram, style.Diagram);

    private static double LeastNeck(NeckDiagram diagram, PageStyle style) =>
        (diagram.LastFret - diagram.FirstFret + 1) * Math.Max(NarrowestFret, NeckParts.LeastFret(diagram, style));

    // Diagrams of one kind stand in columns, the left ends of their necks under each other, in rows that are as full as each other.
    private static ImmutableArray<DiagramRow> Grid(ReadOnlySpan<NeckDiagram> run, int first, PageStyle style)
    {
        var upright = run[0].Upright;
        var diagrams = upright ? Level(run) : run;
        var most = 1;
        var sides = Sides(diagrams, style);
        var figures = upright ? Draw(diagrams, first, style, style.TextWidth, sides) : [];
        var widest = upright ? Widest(figures) : 0;
        while (most < diagrams.Length && (upright ? ((most + 1) * widest) + (most * Gap) <= style.TextWidth : AllFit(diagrams, Cell(most + 1, style) - sides, style))) most++;
        var rowCount = (diagrams.Length + most - 1) / most;
        var columns = (diagrams.Length + rowCount - 1) / rowCount;
        if (!upright) figures = Draw(diagrams, first, style, Cell(columns, style), sides);
        var pitch = upright ? widest + Gap : Cell(columns, style) + Gap;
        // The first rows hold one more where the diagrams do not come out even.
        var starts = Enumerable.Range(0, rowCount + 1).Select(i => (i * (figures.Length / rowCount)) + Math.Min(i, figures.Length % rowCount)).ToArray();
        // Only what stands before the necks of the first column keeps them from the margin.
        var left = NeckLeft(starts[..^1].Select(start => figures[start]));
        var rise = DiagramFigure.WordsRise(upright, style.Diagram, style.Small, style.ItemTitle.Size);
        return [.. Enumerable.Range(0, rowCount).Select(i => Row(figures.AsSpan()[starts[i]..starts[i + 1]], left, pitch, rise))];
    }

    private static NeckDiagram[] Level(ReadOnlySpan<NeckDiagram> diagrams)
    {
        var longest = 0;
        foreach (var diagram in diagrams) longest = Math.Max(longest, diagram.LastFret - diagram.FirstFret);
        var level = diagrams.ToArray();
        foreach (ref var diagram in level.AsSpan())
        {
            var last = diagram.FirstFret + longest;
            if (last <= diagram.LastFret + MostMoreFrets && last <= diagram.Instrument.PlayableFrets) diagram = diagram with { LastFret = last };
        }
        return level;
    }

    // Each figure's marks carry its number beside that of their dot, so that one that runs into another can be told from its own parts.
    private static ImmutableArray<DiagramLayout> Draw(ReadOnlySpan<NeckDiagram> diagrams, int first, PageStyle style, double cell, double sides)
    {
        var figures = ImmutableArray.CreateBuilder<DiagramLayout>(diagrams.Length);
        foreach (var diagram in diagrams)
        {
            var own = NeckFrame.Sides(diagram, style.Diagram);
            var figure = DiagramFigure.Draw(diagram, style.Diagram, style.Small, style.ItemTitle.Size, cell - sides + own);
            var number = first + figures.Count;
            figures.Add(figure with { Drawing = new Drawing([.. figure.Drawing.Marks.Select(m => m.Role == MarkRole.Diagram ? m with { Origin = m.Origin with { Event = number } } : m)]) });
        }
        return figures.MoveToImmutable();
    }

    // The most room that any of the diagrams needs beside its neck: all keep it, so that necks of one length stand level.
    private static double Sides(ReadOnlySpan<NeckDiagram> diagrams, PageStyle style)
    {
        var sides = 0.0;
        foreach (var diagram in diagrams) sides = Math.Max(sides, NeckFrame.Sides(diagram, style.Diagram));
        return sides;
    }

    private static bool AllFit(ReadOnlySpan<NeckDiagram> diagrams, double neck, PageStyle style)
    {
        foreach (var diagram in diagrams) if (LeastNeck(diagram, style) > neck) return false;
        return true;
    }

    private static double NeckLeft(IEnumerable<DiagramLayout> figures) => figures.Max(f => f.NeckLeft);

    // Width of a column that holds any of the figures with their necks' left ends under each other.
    private static double Widest(ImmutableArray<DiagramLayout> figures)
    {
        return NeckLeft(figures) + figures.Max(f => f.Width - f.NeckLeft);
    }

    // A row, the y of the words over its necks (of where they would be, without any), and its width.
    private readonly record struct DiagramRow(FlowBox Box, double Words, double Width);

    private static DiagramRow Row(ReadOnlySpan<DiagramLayout> figures, double neckLeft, double pitch, double wordsRise)
    {
        var neckTop = 0.0;
        foreach (var figure in figures) neckTop = Math.Max(neckTop, figure.NeckTop);
        var drawings = ImmutableArray.CreateBuilder<PlacedDrawing>(figures.Length);
        var (x, height) = (0.0, 0.0);
        foreach (var figure in figures)
        {
            var y = neckTop - figure.NeckTop;
            drawings.Add(new PlacedDrawing(figure.Drawing, 1, x + neckLeft - figure.NeckLeft, y));
            height = Math.Max(height, y + figure.Height);
            x += pitch;
        }
        var last = figures[^1];
        return new DiagramRow(new FlowBox(height, drawings.MoveToImmutable()) { After = new FlowSpace(RowGap, 2, 0.5) }, neckTop - wordsRise, x - pitch + neckLeft - last.NeckLeft + last.Width);
    }

    /// <summary>The shapes of dots in some diagrams.</summary>
    internal static IEnumerable<DotShape> Shapes(ImmutableArray<NeckDiagram> diagrams) => diagrams.SelectMany(d => d.Dots).Select(d => d.Shape);

    /// <summary>The line, or lines on narrow paper, that say what the shapes of dots mean; null when there is nothing to say.</summary>
    /// <param name="shapes">The shapes of the diagrams that it stands by.</param>
    /// <param name="labels">Fixed words.</param>
    /// <param name="style">How pages look.</param>
    internal static FlowBox? Legend(IEnumerable<DotShape> shapes, SheetLabels labels, PageStyle style)
    {
        var shown = shapes.ToHashSet();
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var small = style.Small;
        var baseline = LineBox.Baseline(new SetLine([], 0, 0, 0), small);
        var painter = new DotPainter(marks, style.Diagram with { DotRadius = 0.38 * small.Size });
        var (x, y) = (0.0, baseline);
        foreach (var (shape, text) in (ReadOnlySpan<(DotShape, string)>)[(DotShape.Root, labels.RootLegend), (DotShape.Tone, labels.ToneLegend), (DotShape.Other, labels.OtherLegend)])
        {
            if (text.Length == 0 || !shown.Contains(shape)) continue;
            var piece = TextSetter.Set(text, small.Upright, small.Size);
            if (x > 0 && x + (1.15 * small.Size) + piece.Width > style.TextWidth) (x, y) = (0, y + small.Leading);
            painter.Dot(new NeckDot(default, shape), new Point(x + (0.4 * small.Size), y - (0.32 * small.Size)), halo: false);
            piece.PlaceAt(marks, x + (1.15 * small.Size), y);
            x += (1.15 * small.Size) + piece.Width + (2 * small.Size);
        }
        return marks.Count == 0 ? null : FlowBox.Of(new Drawing(marks.DrainToImmutable()), y - baseline + small.Leading);
    }
}

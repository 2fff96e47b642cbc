using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>Sets diagrams side by side in rows, necks level.</summary>
internal static class DiagramRows
{
    private const double Gap = 9;
    private const double RowGap = 5;

    internal static ImmutableArray<FlowBox> Make(ImmutableArray<NeckDiagram> diagrams, PageStyle style)
    {
        var figures = diagrams.Select(d => DiagramFigure.Draw(d, style.Diagram, style.Small, style.Heading.Size, style.TextWidth)).ToImmutableArray();
        var rows = ImmutableArray.CreateBuilder<FlowBox>();
        for (var start = 0; start < figures.Length;)
        {
            var (end, width) = (start, 0.0);
            while (end < figures.Length && (end == start || (diagrams[end].Upright == diagrams[start].Upright && width + Gap + figures[end].Width <= style.TextWidth)))
            {
                width += (end == start ? 0 : Gap) + figures[end].Width;
                end++;
            }
            rows.Add(Row(figures.AsSpan()[start..end]));
            start = end;
        }
        return rows.DrainToImmutable();
    }

    private static FlowBox Row(ReadOnlySpan<DiagramLayout> figures)
    {
        var neckTop = 0.0;
        foreach (var figure in figures) neckTop = Math.Max(neckTop, figure.NeckTop);
        var drawings = ImmutableArray.CreateBuilder<PlacedDrawing>(figures.Length);
        var (x, height) = (0.0, 0.0);
        foreach (var figure in figures)
        {
            var y = neckTop - figure.NeckTop;
            drawings.Add(new PlacedDrawing(figure.Drawing, 1, x, y));
            height = Math.Max(height, y + figure.Height);
            x += figure.Width + Gap;
        }
        return new FlowBox(height, drawings.MoveToImmutable()) { After = new FlowSpace(RowGap, 2, 0.5) };
    }

    /// <summary>The line that says what the shapes of dots mean; null when there is nothing to say.</summary>
    internal static FlowBox? Legend(ImmutableArray<NeckDiagram> diagrams, SheetLabels labels, PageStyle style)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var small = style.Small;
        var baseline = LineBox.Baseline(new SetLine([], 0, 0, 0), small);
        var painter = new DotPainter(marks, style.Diagram with { DotRadius = 0.38 * small.Size });
        var x = 0.0;
        foreach (var (shape, text) in (ReadOnlySpan<(DotShape, string)>)[(DotShape.Root, labels.RootLegend), (DotShape.Tone, labels.ToneLegend), (DotShape.Other, labels.OtherLegend)])
        {
            if (text.Length == 0 || !diagrams.Any(d => d.Dots.Any(dot => dot.Shape == shape))) continue;
            painter.Dot(new NeckDot(default, shape), new Point(x + (0.4 * small.Size), baseline - (0.32 * small.Size)), halo: false);
            var piece = TextSetter.Set(text, small.Upright, small.Size);
            piece.PlaceAt(marks, x + (1.15 * small.Size), baseline);
            x += (1.15 * small.Size) + piece.Width + (2 * small.Size);
        }
        return marks.Count == 0 ? null : FlowBox.Of(new Drawing(marks.DrainToImmutable()), small.Leading);
    }
}

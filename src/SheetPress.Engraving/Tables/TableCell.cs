using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A cell: parts stacked from top to bottom.</summary>
/// <param name="Parts">The parts; none for an empty cell.</param>
public sealed record TableCell(ImmutableArray<CellPart> Parts)
{
    /// <summary>An empty cell.</summary>
    public static TableCell Empty { get; } = new([]);

    /// <summary>A cell of text in one style.</summary>
    public static TableCell Of(ImmutableArray<Inline> inlines, TextStyle style) => inlines.IsEmpty ? Empty : new([new TextPart(inlines, style)]);

    /// <summary>A cell of plain text in one style.</summary>
    public static TableCell Of(string text, TextStyle style, Emphasis emphasis = Emphasis.None) =>
        text.Length == 0 ? Empty : Of([new TextInline(text) { Emphasis = emphasis }], style);
}

/// <summary>A part of a cell.</summary>
public abstract record CellPart
{
    /// <summary>Width below which it cannot be set well.</summary>
    public abstract double LeastWidth { get; }

    /// <summary>Width beyond which it gains nothing.</summary>
    public abstract double NaturalWidth { get; }

    /// <summary>Sets it in a width.</summary>
    internal abstract SetPart Set(double width, ColumnAlignment alignment);
}

/// <summary>A part that has been set.</summary>
/// <param name="Marks">Marks from the top left corner of its column.</param>
/// <param name="Height">Height in millimetres.</param>
/// <param name="Baseline">First baseline below the top.</param>
internal sealed record SetPart(ImmutableArray<Mark> Marks, double Height, double Baseline);

/// <summary>A paragraph in a cell.</summary>
/// <param name="Inlines">Its text.</param>
/// <param name="Style">How it looks.</param>
public sealed record TextPart(ImmutableArray<Inline> Inlines, TextStyle Style) : CellPart
{
    /// <inheritdoc />
    public override double LeastWidth => ParagraphSetter.LeastWidth(Inlines, Style);

    /// <inheritdoc />
    public override double NaturalWidth => ParagraphSetter.NaturalWidth(Inlines, Style);

    internal override SetPart Set(double width, ColumnAlignment alignment)
    {
        var edge = alignment switch { ColumnAlignment.Right => ParagraphEdge.RaggedLeft, ColumnAlignment.Centre => ParagraphEdge.Centred, _ => ParagraphEdge.Ragged };
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var (y, baseline) = (0.0, 0.0);
        foreach (var line in ParagraphSetter.Set(Inlines, Style, width, edge))
        {
            var at = y + LineBox.Baseline(line, Style);
            if (y == 0) baseline = at;
            foreach (var mark in line.Marks) marks.Add(mark.Transform(1, 0, at));
            y += LineBox.Height(line, Style);
        }
        return new SetPart(marks.DrainToImmutable(), y, baseline);
    }
}

/// <summary>A part that is drawn already, such as chord tones over their degrees.</summary>
/// <param name="Drawing">Marks about the left end of its first baseline, in millimetres.</param>
/// <param name="Width">Its width.</param>
/// <param name="Above">Height above the baseline.</param>
/// <param name="Below">Depth below the baseline.</param>
public sealed record DrawnPart(Drawing Drawing, double Width, double Above, double Below) : CellPart
{
    /// <summary>A piece of text as a part.</summary>
    public static DrawnPart Of(TextPiece piece) => new(new Drawing(piece.Marks), piece.Width, piece.Ascent, piece.Descent);

    /// <inheritdoc />
    public override double LeastWidth => Width;

    /// <inheritdoc />
    public override double NaturalWidth => Width;

    internal override SetPart Set(double width, ColumnAlignment alignment)
    {
        var x = alignment switch { ColumnAlignment.Right => width - Width, ColumnAlignment.Centre => (width - Width) / 2, _ => 0 };
        return new SetPart(Drawing.Transform(1, x, Above).Marks, Above + Below, Above);
    }
}

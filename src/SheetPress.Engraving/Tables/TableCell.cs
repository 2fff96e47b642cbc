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
    internal abstract ImmutableArray<CellLine> Set(double width, ColumnAlignment alignment);
}

/// <summary>A line of a cell. All lengths are in millimetres.</summary>
/// <param name="Marks">Marks about the left edge of the column and the baseline.</param>
/// <param name="Above">Room above the baseline, half of the leading included.</param>
/// <param name="Below">Room below the baseline, half of the leading included.</param>
internal sealed record CellLine(ImmutableArray<Mark> Marks, double Above, double Below);

/// <summary>A paragraph in a cell.</summary>
/// <param name="Inlines">Its text.</param>
/// <param name="Style">How it looks.</param>
public sealed record TextPart(ImmutableArray<Inline> Inlines, TextStyle Style) : CellPart
{
    /// <inheritdoc />
    public override double LeastWidth => ParagraphSetter.LeastWidth(Inlines, Style);

    /// <inheritdoc />
    public override double NaturalWidth => ParagraphSetter.NaturalWidth(Inlines, Style);

    internal override ImmutableArray<CellLine> Set(double width, ColumnAlignment alignment)
    {
        var edge = alignment switch { ColumnAlignment.Right => ParagraphEdge.RaggedLeft, ColumnAlignment.Centre => ParagraphEdge.Centred, _ => ParagraphEdge.Ragged };
        return [.. ParagraphSetter.Set(Inlines, Style, width, edge).Select(l => new CellLine(l.Marks, LineBox.Baseline(l, Style), LineBox.Height(l, Style) - LineBox.Baseline(l, Style)))];
    }
}

/// <summary>A line that is drawn already, such as chord tones. All lengths are in millimetres.</summary>
/// <param name="Drawing">Marks about the left end of its baseline.</param>
/// <param name="Width">Its width.</param>
/// <param name="Above">Room above the baseline.</param>
/// <param name="Below">Room below the baseline.</param>
public sealed record DrawnPart(Drawing Drawing, double Width, double Above, double Below) : CellPart
{
    /// <summary>A piece of text as a part.</summary>
    public static DrawnPart Of(TextPiece piece) => new(new Drawing(piece.Marks), piece.Width, piece.Ascent, piece.Descent);

    /// <summary>Marks as a line among lines of text: in the room of such a line, whatever stands out of it.</summary>
    public static DrawnPart Among(TextStyle text, ImmutableArray<Mark> marks, double width)
    {
        var line = new SetLine([], 0, 0, 0);
        var above = LineBox.Baseline(line, text);
        return new DrawnPart(new Drawing(marks), width, above, LineBox.Height(line, text) - above);
    }

    /// <inheritdoc />
    public override double LeastWidth => Width;

    /// <inheritdoc />
    public override double NaturalWidth => Width;

    internal override ImmutableArray<CellLine> Set(double width, ColumnAlignment alignment)
    {
        var x = alignment switch { ColumnAlignment.Right => width - Width, ColumnAlignment.Centre => (width - Width) / 2, _ => 0 };
        return [new CellLine(Drawing.Transform(1, x, 0).Marks, Above, Below)];
    }
}

using System.Collections.Immutable;

namespace SheetPress.Engraving;

/// <summary>A block of text.</summary>
public abstract record TextBlock;

/// <summary>A paragraph.</summary>
/// <param name="Inlines">Its parts.</param>
public sealed record ParagraphBlock(ImmutableArray<Inline> Inlines) : TextBlock;

/// <summary>A heading within running text.</summary>
/// <param name="Level">1 for the outermost, to 6.</param>
/// <param name="Inlines">Its parts.</param>
public sealed record HeadingBlock(int Level, ImmutableArray<Inline> Inlines) : TextBlock;

/// <summary>A list.</summary>
/// <param name="FirstNumber">Number of the first item; null for a list with bullets.</param>
/// <param name="Items">Its items, each a row of blocks.</param>
/// <param name="IsLoose">Whether items are set apart like paragraphs.</param>
public sealed record ListBlock(int? FirstNumber, ImmutableArray<ImmutableArray<TextBlock>> Items, bool IsLoose) : TextBlock;

/// <summary>A quotation.</summary>
/// <param name="Blocks">What is quoted.</param>
public sealed record QuoteBlock(ImmutableArray<TextBlock> Blocks) : TextBlock;

/// <summary>Code: set as written, every character in a cell of one width.</summary>
/// <param name="Lines">Its lines.</param>
public sealed record CodeBlock(ImmutableArray<string> Lines) : TextBlock;

/// <summary>A table of text.</summary>
/// <param name="Header">Cells of the header row; empty for none.</param>
/// <param name="Rows">The other rows, each as many cells as there are columns.</param>
/// <param name="Alignments">Alignment of each column.</param>
public sealed record TableBlock(ImmutableArray<ImmutableArray<Inline>> Header, ImmutableArray<ImmutableArray<ImmutableArray<Inline>>> Rows, ImmutableArray<ColumnAlignment> Alignments) : TextBlock;

/// <summary>A rule across the column: a change of subject.</summary>
public sealed record RuleBlock : TextBlock;

/// <summary>Alignment of a column.</summary>
public enum ColumnAlignment
{
    /// <summary>At the left edge.</summary>
    Left,
    /// <summary>In the middle.</summary>
    Centre,
    /// <summary>At the right edge.</summary>
    Right,
}

using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>A part of running text.</summary>
public abstract record Inline
{
    /// <summary>Its emphasis.</summary>
    public Emphasis Emphasis { get; init; }

    /// <summary>Target of the link it belongs to; null for none.</summary>
    public string? Link { get; init; }
}

/// <summary>Words; a run of spaces stands for one space and is where a line can break.</summary>
/// <param name="Text">The words.</param>
public sealed record TextInline(string Text) : Inline;

/// <summary>A chord symbol set as music.</summary>
/// <param name="Chord">The chord.</param>
public sealed record ChordInline(Chord Chord) : Inline;

/// <summary>A degree set as music.</summary>
/// <param name="Degree">The degree.</param>
public sealed record DegreeInline(Degree Degree) : Inline;

/// <summary>A roman numeral set as music.</summary>
/// <param name="Roman">The numeral in plain text.</param>
public sealed record RomanInline(string Roman) : Inline;

/// <summary>The end of a line.</summary>
public sealed record BreakInline : Inline;

/// <summary>Something set already, such as a box to tick with a number after it.</summary>
/// <param name="Piece">The piece.</param>
public sealed record PieceInline(TextPiece Piece) : Inline;

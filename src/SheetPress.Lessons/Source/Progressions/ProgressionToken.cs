namespace SheetPress.Lessons;

/// <summary>Kinds of tokens of a written progression.</summary>
internal enum ProgressionTokenKind
{
    /// <summary>A chord, a roman numeral or one of the words.</summary>
    Word,
    /// <summary>A run of bar signs: | || |: :| :|:</summary>
    Barline,
    /// <summary>Something in square brackets.</summary>
    Mark,
    /// <summary>The end of a line.</summary>
    LineEnd,
}

/// <summary>One token of a written progression.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Text">Its characters; of a mark, those between the brackets.</param>
/// <param name="Span">Where it stands.</param>
internal sealed record ProgressionToken(ProgressionTokenKind Kind, LocatedText Text, SourceSpan Span);

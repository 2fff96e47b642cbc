namespace SheetPress.Lessons;

/// <summary>A part of a source text: character offsets, the end not included.</summary>
/// <param name="Start">Offset of the first character, from 0.</param>
/// <param name="End">Offset behind the last character; equal to the start for a point.</param>
public readonly record struct SourceSpan(int Start, int End)
{
    /// <summary>Number of characters.</summary>
    public int Length => End - Start;
}

/// <summary>A line and a column, both counted from 1.</summary>
/// <param name="Line">Line from 1.</param>
/// <param name="Column">Column from 1, in characters as a reader counts them: one outside the basic plane (an emoji) is one.</param>
public readonly record struct LinePosition(int Line, int Column);

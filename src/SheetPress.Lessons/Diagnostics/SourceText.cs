using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>A part of a source text: character offsets, the end not included.</summary>
/// <param name="Start">Offset of the first character, from 0.</param>
/// <param name="End">Offset behind the last character; equal to the start for a point.</param>
public readonly record struct SourceSpan(int Start, int End);

/// <summary>A line and a column, both counted from 1.</summary>
/// <param name="Line">Line from 1.</param>
/// <param name="Column">Column from 1, in characters.</param>
public readonly record struct LinePosition(int Line, int Column);

/// <summary>The text of one lesson file and the name it is reported under.</summary>
public sealed class SourceText
{
    private readonly ImmutableArray<int> _lineStarts;

    /// <summary>Makes a source text.</summary>
    /// <param name="path">Path as the user gave it.</param>
    /// <param name="text">The whole text.</param>
    public SourceText(string path, string text)
    {
        Path = path;
        Text = text;
        var starts = ImmutableArray.CreateBuilder<int>();
        starts.Add(0);
        for (var i = 0; i < text.Length; i++) if (text[i] == '\n') starts.Add(i + 1);
        _lineStarts = starts.ToImmutable();
    }

    /// <summary>Path as the user gave it.</summary>
    public string Path { get; }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>Line and column of an offset; offsets outside the text are brought to its ends.</summary>
    public LinePosition PositionOf(int offset)
    {
        offset = Math.Clamp(offset, 0, Text.Length);
        var index = _lineStarts.BinarySearch(offset);
        if (index < 0) index = ~index - 1;
        return new LinePosition(index + 1, offset - _lineStarts[index] + 1);
    }

    /// <summary>The text of a line, counted from 1, without its line ending.</summary>
    public string LineText(int line)
    {
        var start = _lineStarts[line - 1];
        var end = line < _lineStarts.Length ? _lineStarts[line] : Text.Length;
        return Text[start..end].TrimEnd('\r', '\n');
    }
}

/// <summary>
/// Text taken out of a source, such as the value of a YAML entry, that still knows where each of its characters came from
/// (a block scalar loses its indentation, a quoted one its quotes and escapes).
/// </summary>
public sealed class LocatedText
{
    private readonly ImmutableArray<int> _offsets;

    /// <summary>Makes a located text.</summary>
    /// <param name="value">The characters.</param>
    /// <param name="offsets">Source offset of each character, and of the end: one more than there are characters.</param>
    public LocatedText(string value, ImmutableArray<int> offsets)
    {
        if (offsets.Length != value.Length + 1) throw new ArgumentException("Each character and the end need an offset.", nameof(offsets));
        Value = value;
        _offsets = offsets;
    }

    /// <summary>The characters.</summary>
    public string Value { get; }

    /// <summary>The span of the whole.</summary>
    public SourceSpan Span => SpanOf(0, Value.Length);

    /// <summary>The source span of a part.</summary>
    /// <param name="start">Index of the first character.</param>
    /// <param name="length">Number of characters.</param>
    public SourceSpan SpanOf(int start, int length)
    {
        start = Math.Clamp(start, 0, Value.Length);
        var end = Math.Clamp(start + length, start, Value.Length);
        return end > start ? new SourceSpan(_offsets[start], _offsets[end - 1] + 1) : new SourceSpan(_offsets[start], _offsets[start]);
    }

    /// <summary>A part, still located.</summary>
    public LocatedText Slice(int start, int length) => new(Value.Substring(start, length), _offsets.Slice(start, length + 1));

    /// <inheritdoc />
    public override string ToString() => Value;
}

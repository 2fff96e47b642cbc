using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>The text of one lesson file and the name it is reported under.</summary>
public sealed class SourceText
{
    private readonly ImmutableArray<int> _lineStarts;

    /// <summary>Makes a source text. Lines end with a line feed; a carriage return before it belongs to the line ending.</summary>
    /// <param name="path">Path as the user gave it.</param>
    /// <param name="text">The whole text, without a byte-order mark.</param>
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

    /// <summary>Number of lines; an empty text has one.</summary>
    public int LineCount => _lineStarts.Length;

    /// <summary>Line and column of an offset; offsets outside the text are brought to its ends.</summary>
    public LinePosition PositionOf(int offset)
    {
        offset = Math.Clamp(offset, 0, Text.Length);
        var line = LineOf(offset);
        var column = 1;
        for (var i = _lineStarts[line - 1]; i < offset; i++) if (!char.IsLowSurrogate(Text[i])) column++;
        return new LinePosition(line, column);
    }

    /// <summary>The line, from 1, that an offset lies in; offsets outside the text are brought to its ends.</summary>
    public int LineOf(int offset)
    {
        var index = _lineStarts.BinarySearch(Math.Clamp(offset, 0, Text.Length));
        return index < 0 ? ~index : index + 1;
    }

    /// <summary>Offset of the first character of a line, counted from 1.</summary>
    public int LineStart(int line) => _lineStarts[line - 1];

    /// <summary>The text of a line, counted from 1, without its line ending.</summary>
    public string LineText(int line)
    {
        var start = _lineStarts[line - 1];
        var end = line < _lineStarts.Length ? _lineStarts[line] : Text.Length;
        return Text[start..end].TrimEnd('\r', '\n');
    }
}

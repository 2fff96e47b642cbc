using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>
/// Text taken out of a source, such as the value of a YAML entry, that still knows where each of its characters came from
/// (a block scalar loses its indentation, a quoted one its quotes and escapes).
/// </summary>
public sealed class LocatedText
{
    private readonly ImmutableArray<SourceSpan> _places;
    private readonly int _end;

    /// <summary>Makes a located text.</summary>
    /// <param name="value">The characters.</param>
    /// <param name="places">Source span of each character, in order.</param>
    /// <param name="end">Source offset behind the last character, or of the place itself when the text is empty.</param>
    public LocatedText(string value, ImmutableArray<SourceSpan> places, int end)
    {
        if (places.Length != value.Length) throw new ArgumentException("Each character needs a place.", nameof(places));
        Value = value;
        _places = places;
        _end = end;
    }

    /// <summary>Makes a located text of characters that stand in the source just so, from an offset on.</summary>
    public static LocatedText At(string value, int offset)
    {
        var places = ImmutableArray.CreateBuilder<SourceSpan>(value.Length);
        for (var i = 0; i < value.Length; i++) places.Add(new SourceSpan(offset + i, offset + i + 1));
        return new LocatedText(value, places.MoveToImmutable(), offset + value.Length);
    }

    /// <summary>The characters.</summary>
    public string Value { get; }

    /// <summary>Number of characters.</summary>
    public int Length => Value.Length;

    /// <summary>The span of the whole.</summary>
    public SourceSpan Span => SpanOf(0, Value.Length);

    /// <summary>The source span of a part; a part of no length is a point. Indexes outside the text are brought to its ends.</summary>
    /// <param name="start">Index of the first character.</param>
    /// <param name="length">Number of characters.</param>
    public SourceSpan SpanOf(int start, int length)
    {
        start = Math.Clamp(start, 0, Value.Length);
        var end = Math.Clamp(start + length, start, Value.Length);
        var from = start < Value.Length ? _places[start].Start : _end;
        return end > start ? new SourceSpan(from, _places[end - 1].End) : new SourceSpan(from, from);
    }

    /// <summary>A part, still located.</summary>
    public LocatedText Slice(int start, int length)
    {
        var end = start + length;
        return new LocatedText(Value.Substring(start, length), _places.Slice(start, length), end < Value.Length ? _places[end].Start : _end);
    }

    /// <summary>The text without white space at its ends.</summary>
    public LocatedText Trim()
    {
        var start = 0;
        var end = Value.Length;
        while (start < end && char.IsWhiteSpace(Value[start])) start++;
        while (end > start && char.IsWhiteSpace(Value[end - 1])) end--;
        return start == 0 && end == Value.Length ? this : Slice(start, end - start);
    }

    /// <summary>The words between white space and commas, in order.</summary>
    public ImmutableArray<LocatedText> Words()
    {
        var words = ImmutableArray.CreateBuilder<LocatedText>();
        var start = -1;
        for (var i = 0; i <= Value.Length; i++)
        {
            var gap = i == Value.Length || Value[i] == ',' || char.IsWhiteSpace(Value[i]);
            if (!gap && start < 0) start = i;
            if (gap && start >= 0)
            {
                words.Add(Slice(start, i - start));
                start = -1;
            }
        }
        return words.DrainToImmutable();
    }

    /// <summary>Another text in the same place, such as the proper form of a word: each of its characters has the place of the whole.</summary>
    public LocatedText As(string value) => new(value, [.. Enumerable.Repeat(Span, value.Length)], Span.End);

    /// <summary>Several texts as one, with a character between them that has the place of the gap.</summary>
    public static LocatedText Join(IReadOnlyList<LocatedText> parts, char between)
    {
        if (parts.Count == 0) throw new ArgumentException("There is nothing to join.", nameof(parts));
        if (parts.Count == 1) return parts[0];
        var value = new System.Text.StringBuilder();
        var places = ImmutableArray.CreateBuilder<SourceSpan>();
        for (var i = 0; i < parts.Count; i++)
        {
            if (i > 0)
            {
                value.Append(between);
                places.Add(new SourceSpan(parts[i - 1]._end, Math.Max(parts[i - 1]._end, parts[i].Span.Start)));
            }
            value.Append(parts[i].Value);
            places.AddRange(parts[i]._places);
        }
        return new LocatedText(value.ToString(), places.DrainToImmutable(), parts[^1]._end);
    }

    /// <inheritdoc />
    public override string ToString() => Value;
}

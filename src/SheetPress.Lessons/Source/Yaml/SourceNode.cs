using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>One value of a YAML text with its place.</summary>
/// <param name="span">Where it stands.</param>
internal abstract class SourceNode(SourceSpan span)
{
    /// <summary>Where it stands.</summary>
    public SourceSpan Span { get; } = span;
}

/// <summary>A value that could not be read, with the reason already reported: readers say nothing more about it.</summary>
/// <param name="span">Where it stands.</param>
internal sealed class BrokenNode(SourceSpan span) : SourceNode(span);

/// <summary>A text, number or word.</summary>
/// <param name="text">Its characters.</param>
/// <param name="isPlain">Whether it stands without quotes and without a block sign.</param>
internal sealed class ScalarNode(LocatedText text, bool isPlain) : SourceNode(text.Span)
{
    /// <summary>Its characters.</summary>
    public LocatedText Text { get; } = text;

    /// <summary>Whether nothing is written: an entry with no value after the colon.</summary>
    public bool IsEmpty { get; } = isPlain && text.Length == 0;
}

/// <summary>A list.</summary>
/// <param name="items">The items in order.</param>
/// <param name="isComplete">False when reading stopped inside it.</param>
/// <param name="span">Where it stands.</param>
internal sealed class SequenceNode(ImmutableArray<SourceNode> items, bool isComplete, SourceSpan span) : SourceNode(span)
{
    /// <summary>The items in order.</summary>
    public ImmutableArray<SourceNode> Items { get; } = items;

    /// <summary>False when reading stopped inside it.</summary>
    public bool IsComplete { get; } = isComplete;
}

/// <summary>Named entries.</summary>
/// <param name="entries">The entries in order, same names not merged.</param>
/// <param name="isComplete">False when reading stopped inside it, so that entries may be missing without fault of the author.</param>
/// <param name="span">Where it stands.</param>
internal sealed class MappingNode(ImmutableArray<SourceEntry> entries, bool isComplete, SourceSpan span) : SourceNode(span)
{
    /// <summary>The entries in order, same names not merged.</summary>
    public ImmutableArray<SourceEntry> Entries { get; } = entries;

    /// <summary>False when reading stopped inside it.</summary>
    public bool IsComplete { get; } = isComplete;
}

/// <summary>A name and its value.</summary>
/// <param name="Name">The name.</param>
/// <param name="Value">The value.</param>
internal sealed record SourceEntry(LocatedText Name, SourceNode Value);

using System.Collections.Concurrent;

namespace SheetPress.Engraving;

/// <summary>
/// Remembers what shaping gave: a sheet repeats the same words and numbers over and over. It is emptied when it is full,
/// so its memory is bounded however many lessons one process makes; what is in it never changes a result.
/// </summary>
internal sealed class ShapeCache<TValue>
{
    private const int Capacity = 16_384;
    private const int LongestText = 64;

    private readonly ConcurrentDictionary<(string Text, TextFont Font), TValue> _entries = new();
    private int _count;

    internal TValue Get(string text, TextFont font, Func<string, TextFont, TValue> shape)
    {
        if (text.Length > LongestText)
        {
            return shape(text, font);
        }
        if (_entries.TryGetValue((text, font), out var known))
        {
            return known;
        }
        var value = shape(text, font);
        if (Interlocked.Increment(ref _count) > Capacity)
        {
            _entries.Clear();
            Interlocked.Exchange(ref _count, 0);
        }
        _entries.TryAdd((text, font), value);
        return value;
    }
}

using System.Collections.Concurrent;

namespace SheetPress.Engraving;

/// <summary>
/// Remembers what shaping gave: a sheet repeats the same words and numbers over and over. The part of a font is emptied
/// when it is full, so its memory is bounded however many lessons one process makes; what is in it never changes a result.
/// </summary>
/// <remarks>One dictionary with plain strings for each font: with a pair as key, its code would have to be compiled at start.</remarks>
internal sealed class ShapeCache<TValue>
    where TValue : class
{
    /// <summary>Entries that one font may have.</summary>
    internal const int Capacity = 4_096;
    private const int LongestText = 64;

    private readonly Part[] _parts = new Part[FontFile.TextFaces];

    internal ShapeCache()
    {
        for (var i = 0; i < _parts.Length; i++) _parts[i] = new Part();
    }

    internal TValue Get(string text, TextFont font, Func<string, TextFont, TValue> shape)
    {
        var part = _parts[(int)font];
        if (text.Length > LongestText)
        {
            return shape(text, font);
        }
        if (part.Entries.TryGetValue(text, out var known))
        {
            return known;
        }
        var value = shape(text, font);
        if (Interlocked.Increment(ref part.Added) > Capacity)
        {
            part.Entries.Clear();
            Interlocked.Exchange(ref part.Added, 1);
        }
        part.Entries.TryAdd(text, value);
        return value;
    }

    /// <summary>Entries of a font at this moment.</summary>
    internal int Count(TextFont font) => _parts[(int)font].Entries.Count;

    private sealed class Part
    {
        internal readonly ConcurrentDictionary<string, TValue> Entries = new(StringComparer.Ordinal);
        internal int Added;
    }
}

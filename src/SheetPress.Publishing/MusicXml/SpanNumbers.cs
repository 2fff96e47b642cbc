namespace SheetPress.Publishing;

/// <summary>
/// The numbers that tell apart slurs, slides and the like that are open at once, in the order of the document. Each gets the lowest free
/// number of its element; a number that ends on a note is free again only after that note, so that no stop can be taken for its own start.
/// </summary>
internal sealed class SpanNumbers
{
    private readonly Dictionary<(string Element, object Key), int> _open = [];
    private readonly List<(string Element, object Key)> _ended = [];

    /// <summary>Opens a span and gives its number.</summary>
    public string Start(string element, object key)
    {
        var number = 1;
        while (_open.Any(o => o.Key.Element == element && o.Value == number)) number++;
        _open.Add((element, key), number);
        return XmlOutput.Number(number);
    }

    /// <summary>Ends a span and gives its number; null when it never began.</summary>
    public string? Stop(string element, object key)
    {
        if (!_open.TryGetValue((element, key), out var number)) return null;
        _ended.Add((element, key));
        return XmlOutput.Number(number);
    }

    /// <summary>Frees the numbers of the spans that ended since the last call.</summary>
    public void Settle()
    {
        foreach (var ended in _ended) _open.Remove(ended);
        _ended.Clear();
    }
}

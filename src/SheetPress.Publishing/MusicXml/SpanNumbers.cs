namespace SheetPress.Publishing;

/// <summary>
/// The numbers that tell apart slurs, slides and the like that are open at once, in the order of the document. Each gets the lowest free
/// number of its element; a number that ends on a note is free again only after that note, so that no stop can be taken for its own start.
/// </summary>
internal sealed class SpanNumbers
{
    private readonly List<Span> _open = [];

    /// <summary>Opens a span and gives its number.</summary>
    /// <param name="element">Name of the element.</param>
    /// <param name="staff">The staff it is on.</param>
    /// <param name="key">What tells it from the others of its element and staff.</param>
    public string Start(string element, int staff, object key)
    {
        var number = 1;
        while (_open.Exists(s => s.Element == element && s.Number == number)) number++;
        _open.Add(new Span(element, staff, key, number));
        return XmlOutput.Number(number);
    }

    /// <summary>Ends a span and gives its number; null when it never began.</summary>
    public string? Stop(string element, int staff, object key)
    {
        var span = _open.Find(s => s.Element == element && s.Staff == staff && s.Key.Equals(key));
        if (span is null) return null;
        span.HasEnded = true;
        return XmlOutput.Number(span.Number);
    }

    /// <summary>Frees the numbers of the spans that ended since the last call.</summary>
    public void Settle() => _open.RemoveAll(s => s.HasEnded);

    private sealed class Span(string element, int staff, object key, int number)
    {
        public string Element { get; } = element;

        public int Staff { get; } = staff;

        public object Key { get; } = key;

        public int Number { get; } = number;

        public bool HasEnded { get; set; }
    }
}

namespace SheetPress.Engraving;

/// <summary>A glyph of the music font with its metrics in staff spaces, y downward (SMuFL metadata has y upward).</summary>
public sealed class MusicGlyph
{
    internal MusicGlyph(string name, int codePoint, Box bounds, double advance, IReadOnlyDictionary<string, Point> anchors)
    {
        Name = name;
        CodePoint = codePoint;
        Bounds = bounds;
        Advance = advance;
        Anchors = anchors;
    }

    /// <summary>Canonical SMuFL name, such as "noteheadBlack".</summary>
    public string Name { get; }

    /// <summary>Unicode code point in the private use area.</summary>
    public int CodePoint { get; }

    /// <summary>Ink box in staff spaces about the glyph origin, y downward.</summary>
    public Box Bounds { get; }

    /// <summary>Advance width in staff spaces.</summary>
    public double Advance { get; }

    /// <summary>Anchors by SMuFL name ("stemUpSE", "stemDownNW", "cutOutNE"), in staff spaces, y downward.</summary>
    public IReadOnlyDictionary<string, Point> Anchors { get; }

    /// <inheritdoc />
    public override string ToString() => Name;
}

using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>The table of chord qualities.</summary>
public static class ChordQualities
{
    /// <summary>Every quality, simple ones first.</summary>
    public static ImmutableArray<ChordQuality> All { get; } =
    [
        new("", "major triad", "1 3 5", "maj", "M"),
        new("m", "minor triad", "1 b3 5", "min", "-"),
        new("dim", "diminished triad", "1 b3 b5", "°", "o"),
        new("7", "dominant seventh", "1 3 5 b7", "dom7"),
        new("maj7", "major seventh", "1 3 5 7", "M7", "Δ7", "Δ", "ma7"),
        new("m7", "minor seventh", "1 b3 5 b7", "min7", "-7"),
        new("m7b5", "half-diminished seventh", "1 b3 b5 b7", "ø7", "ø", "-7b5"),
        new("dim7", "diminished seventh", "1 b3 b5 bb7", "°7", "o7"),
    ];
}

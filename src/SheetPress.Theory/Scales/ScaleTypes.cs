using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>The table of scales.</summary>
public static class ScaleTypes
{
    /// <summary>Every kind of scale.</summary>
    public static ImmutableArray<ScaleType> All { get; } =
    [
        new("major", "1 2 3 4 5 6 7", "ionian"),
        new("natural minor", "1 2 b3 4 5 b6 b7", "aeolian"),
        new("phrygian dominant", "1 b2 3 4 5 b6 b7"),
    ];
}

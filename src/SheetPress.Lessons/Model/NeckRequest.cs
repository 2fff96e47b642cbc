using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>Where an author wants a line on the neck; nulls leave it to the fingering.</summary>
public sealed record NeckRequest
{
    /// <summary>Fret at which the index finger is to stay near, 1 and up.</summary>
    public int? Position { get; init; }
    /// <summary>Lowest fret that may be used besides open strings.</summary>
    public int? LowestFret { get; init; }
    /// <summary>Highest fret that may be used.</summary>
    public int? HighestFret { get; init; }
    /// <summary>String numbers that may be used; empty for all.</summary>
    public ImmutableArray<int> Strings { get; init; } = [];
    /// <summary>Whether open strings may be used; null for the level's choice.</summary>
    public bool? OpenStrings { get; init; }
}

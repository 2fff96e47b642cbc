using System.Collections.Immutable;
using SheetPress.Scores;

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

    /// <summary>Whether a place may be used; the position is a wish that no place breaks.</summary>
    public bool Allows(FretPosition place) =>
        (Strings.IsDefaultOrEmpty || Strings.Contains(place.String))
        && (place.Fret == 0 ? OpenStrings != false : place.Fret >= (LowestFret ?? 0) && place.Fret <= (HighestFret ?? int.MaxValue));

    /// <summary>
    /// The request for another instrument than it was written for: strings and frets that it does not have are left out, and what would
    /// leave nothing is left to the fingering.
    /// </summary>
    public NeckRequest FitTo(Instrument instrument)
    {
        var highest = HighestFret is { } high ? Math.Min(high, instrument.PlayableFrets) : (int?)null;
        var fits = LowestFret is not { } low || low < instrument.PlayableFrets - 3;
        return this with
        {
            Position = Position <= instrument.PlayableFrets - 3 ? Position : null,
            LowestFret = fits ? LowestFret : null,
            HighestFret = fits ? highest : null,
            Strings = Strings.RemoveAll(s => s > instrument.StringCount),
        };
    }
}

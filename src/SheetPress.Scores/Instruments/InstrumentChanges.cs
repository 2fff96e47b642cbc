using System.Collections.Immutable;
using SheetPress.Theory;

namespace SheetPress.Scores;

/// <summary>What a player's own instrument has different from one of the catalogue; null keeps the catalogue's.</summary>
public sealed record InstrumentChanges
{
    /// <summary>
    /// Open strings as players say them, from the string nearest the ceiling (the highest number) to string 1: E1 A1 D2 G2 for a
    /// bass, D1 A1 D2 G2 with a dropped string. 3 to 12 strings.
    /// </summary>
    public ImmutableArray<Pitch>? Tuning { get; init; }

    /// <summary>Name on the page.</summary>
    public string? Name { get; init; }

    /// <summary>Number of frets.</summary>
    public int? Frets { get; init; }

    /// <summary>Fret of the capo; 0 for none.</summary>
    public int? Capo { get; init; }

    /// <summary>Scale length in millimetres.</summary>
    public double? ScaleLength { get; init; }

    /// <summary>Whether the player is left-handed.</summary>
    public bool? LeftHanded { get; init; }
}

using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Engraving;

/// <summary>
/// What a diagram of the neck shows: a stretch of frets with dots on it. Frets count from the nut or, with a capo, from the capo.
/// </summary>
public sealed record NeckDiagram
{
    /// <summary>The instrument: its strings, its frets, and whether the picture is mirrored for a left-handed player.</summary>
    public required Instrument Instrument { get; init; }

    /// <summary>The lowest fret shown, 1 or more; with 1 the nut is drawn.</summary>
    public required int FirstFret { get; init; }

    /// <summary>The highest fret shown, not below <see cref="FirstFret"/>.</summary>
    public required int LastFret { get; init; }

    /// <summary>The dots. Fret 0 stands before the nut.</summary>
    public ImmutableArray<NeckDot> Dots { get; init; } = [];

    /// <summary>Barres, drawn under the dots.</summary>
    public ImmutableArray<Barre> Barres { get; init; } = [];

    /// <summary>Numbers of strings that are not to sound; each gets an x.</summary>
    public ImmutableArray<int> MutedStrings { get; init; } = [];

    /// <summary>Places in the order they are played, joined by a thin line under the dots; empty for none.</summary>
    public ImmutableArray<FretPosition> Path { get; init; } = [];

    /// <summary>Whether it stands upright (frets downward, lowest string on the left) instead of lying (lowest string at the bottom).</summary>
    public bool Upright { get; init; }

    /// <summary>Whether frets are drawn at equal distances instead of in true proportion.</summary>
    public bool EvenFrets { get; init; }

    /// <summary>Chord symbol printed over the diagram; null for none.</summary>
    public Chord? Symbol { get; init; }

    /// <summary>Caption under the diagram, plain text; empty for none.</summary>
    public string Caption { get; init; } = "";
}

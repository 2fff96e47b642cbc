using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>One stroke or rest of a rhythm.</summary>
public sealed record RhythmCell
{
    /// <summary>Start in quarter notes from the start of the pattern.</summary>
    public required Fraction Start { get; init; }
    /// <summary>Length in quarter notes, above zero.</summary>
    public required Fraction Duration { get; init; }
    /// <summary>Whether it is silent.</summary>
    public bool IsRest { get; init; }
    /// <summary>Counting syllable, when the rhythm was given by counting.</summary>
    public string? Count { get; init; }
    /// <summary>Articulations marked in the rhythm.</summary>
    public Articulations Articulations { get; init; }
    /// <summary>Stroke marked in the rhythm (thumb, pop).</summary>
    public Stroke Stroke { get; init; }
    /// <summary>Head marked in the rhythm (ghost, dead).</summary>
    public Notehead Head { get; init; }
    /// <summary>Connection to the next stroke marked in the rhythm.</summary>
    public Connection Connection { get; init; }
}

/// <summary>A rhythm that repeats: cells in order that fill its length.</summary>
/// <param name="Cells">Cells, rests included, without gaps.</param>
/// <param name="Length">Length in quarter notes after which it starts again.</param>
public sealed record RhythmPattern(ImmutableArray<RhythmCell> Cells, Fraction Length);

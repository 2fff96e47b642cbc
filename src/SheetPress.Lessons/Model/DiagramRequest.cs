using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>What a neck diagram shows.</summary>
public enum DiagramKind
{
    /// <summary>The tones of one chord.</summary>
    Chord,
    /// <summary>The tones of one scale.</summary>
    Scale,
    /// <summary>Places that the lesson lists.</summary>
    Shape,
    /// <summary>A chord as the hand holds it.</summary>
    Grip,
    /// <summary>The notes of an exercise in the order they are played.</summary>
    Path,
}

/// <summary>What stands inside the dots of a diagram.</summary>
public enum DiagramText
{
    /// <summary>Degrees above the root.</summary>
    Degrees,
    /// <summary>Note names.</summary>
    Notes,
    /// <summary>Fretting fingers.</summary>
    Fingers,
    /// <summary>Nothing.</summary>
    Nothing,
}

/// <summary>A neck diagram asked for.</summary>
/// <param name="Kind">What it shows.</param>
/// <param name="Span">Where it is written.</param>
public sealed record DiagramRequest(DiagramKind Kind, SourceSpan Span)
{
    /// <summary>The chord of a chord diagram or grip, in the key to be played; or the chord whose degrees a shape's dots are named after, null for none.</summary>
    public Chord? Chord { get; init; }

    /// <summary>The scale of a scale diagram, in the key to be played.</summary>
    public Scale? Scale { get; init; }

    /// <summary>Places of a shape or of a grip that the lesson spells out; empty for the other kinds.</summary>
    public ImmutableArray<FretPosition> Positions { get; init; } = [];

    /// <summary>Fingers that the lesson gives for its places, 0 where it gives none.</summary>
    public ImmutableArray<int> Fingers { get; init; } = [];

    /// <summary>Lowest fret shown, or null to fit.</summary>
    public int? FromFret { get; init; }

    /// <summary>Highest fret shown, or null to fit.</summary>
    public int? ToFret { get; init; }

    /// <summary>Whether it is an upright chord box instead of a horizontal neck.</summary>
    public bool Upright { get; init; }

    /// <summary>What stands inside the dots; null for what is usual for its kind.</summary>
    public DiagramText? Labels { get; init; }

    /// <summary>Whether frets lie at equal distances; null for what is usual (upright diagrams even, necks in proportion).</summary>
    public bool? EvenFrets { get; init; }

    /// <summary>How many diagrams are made side by side, one for each position along the neck, at most; null for one diagram.</summary>
    public int? Family { get; init; }

    /// <summary>Number of the exercise whose path is shown, as the lesson lists them, from 0.</summary>
    public int Exercise { get; init; }

    /// <summary>First measure of the path, from 0; null for the beginning.</summary>
    public int? FromMeasure { get; init; }

    /// <summary>Last measure of the path, from 0; null for as many as can be read in one picture.</summary>
    public int? ToMeasure { get; init; }

    /// <summary>Caption; empty to take the name of what it shows.</summary>
    public string Caption { get; init; } = "";
}

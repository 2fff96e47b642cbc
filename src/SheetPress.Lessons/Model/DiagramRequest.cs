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
}

/// <summary>A neck diagram asked for.</summary>
/// <param name="Kind">What it shows.</param>
/// <param name="Span">Where it is written.</param>
public sealed record DiagramRequest(DiagramKind Kind, SourceSpan Span)
{
    /// <summary>The chord of a chord diagram, in the key to be played; or the chord whose degrees a shape's dots are named after, null for none.</summary>
    public Chord? Chord { get; init; }

    /// <summary>The scale of a scale diagram, in the key to be played.</summary>
    public Scale? Scale { get; init; }

    /// <summary>Places of a shape; empty for the other kinds.</summary>
    public ImmutableArray<FretPosition> Positions { get; init; } = [];

    /// <summary>Lowest fret shown, or null to fit.</summary>
    public int? FromFret { get; init; }

    /// <summary>Highest fret shown, or null to fit.</summary>
    public int? ToFret { get; init; }

    /// <summary>Whether it is an upright chord box instead of a horizontal neck.</summary>
    public bool Upright { get; init; }

    /// <summary>Whether dots hold note names instead of degrees.</summary>
    public bool ShowNotes { get; init; }

    /// <summary>Caption; empty to take the name of what it shows.</summary>
    public string Caption { get; init; } = "";
}

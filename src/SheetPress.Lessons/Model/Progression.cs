using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>One chord of a progression and the time it lasts.</summary>
/// <param name="Start">Quarter notes from the start of the progression as written (repeats not unrolled).</param>
/// <param name="Duration">Quarter notes, above zero.</param>
/// <param name="Chord">The chord; null for no chord.</param>
/// <param name="Analysis">What it does in the key; null for no chord.</param>
/// <param name="Span">Where it is written in the lesson.</param>
public sealed record ChordSpan(Fraction Start, Fraction Duration, Chord? Chord, ChordAnalysis? Analysis, SourceSpan Span)
{
    /// <summary>Index of the measure it lies in.</summary>
    public int Measure { get; init; }

    /// <summary>Whether the chord before sounds on: the same harmony without a symbol of its own.</summary>
    public bool IsHeld { get; init; }

    /// <summary>End in quarter notes from the start of the progression.</summary>
    public Fraction End => Start + Duration;
}

/// <summary>A progression: the measures with their repeats and meters, and the chords over them.</summary>
/// <param name="Measures">Measures in written order; their <see cref="FrameMeasure.Harmonies"/> hold the chord symbols.</param>
/// <param name="Chords">Chords in order, without gaps. A chord held over a barline is one span for each bar.</param>
public sealed record Progression(ImmutableArray<FrameMeasure> Measures, ImmutableArray<ChordSpan> Chords)
{
    /// <summary>The tempo that its first bar states; null for none. Later ones are among the directions of their measures.</summary>
    public Tempo? Tempo { get; init; }

    /// <summary>Length in quarter notes as written.</summary>
    public Fraction Length => Measures.Aggregate(Fraction.Zero, (sum, m) => sum + m.Length);
}

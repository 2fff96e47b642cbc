using System.Collections.Immutable;
using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>An exercise as the lesson asks for it: a style with its options, checked against what the style declares.</summary>
public sealed record ExerciseRequest
{
    /// <summary>The style.</summary>
    public required ExerciseStyle Style { get; init; }
    /// <summary>Title; null to take the style's own.</summary>
    public string? Title { get; init; }
    /// <summary>One-line instruction; null to take the style's own.</summary>
    public string? Instruction { get; init; }
    /// <summary>Meter of its own; null for the lesson's. Given together with <see cref="Progression"/>.</summary>
    public Meter? Meter { get; init; }
    /// <summary>The lesson's progression in the exercise's own meter; null for the lesson's.</summary>
    public Progression? Progression { get; init; }
    /// <summary>Instrument of its own; null for the lesson's. It stays when a run asks for another instrument.</summary>
    public Instrument? Instrument { get; init; }
    /// <summary>Rhythm, or null for the style's own.</summary>
    public RhythmPattern? Rhythm { get; init; }
    /// <summary>Tempo of its own, or null for the lesson's.</summary>
    public Tempo? Tempo { get; init; }
    /// <summary>The share of its full tempo at which a step of a ladder is played; changes of tempo in its line are slowed by it.</summary>
    public double TempoShare { get; init; } = 1;
    /// <summary>Level of its own, or null for the lesson's.</summary>
    public int? Level { get; init; }
    /// <summary>Where on the neck it is to be played.</summary>
    public NeckRequest Neck { get; init; } = new();
    /// <summary>Which staves to show.</summary>
    public StaffLayout Layout { get; init; }
    /// <summary>Whether to show fretting fingers; null for the style's and level's choice.</summary>
    public bool? ShowFingers { get; init; }
    /// <summary>Whether a staff alone shows the numbers of strings; null likewise.</summary>
    public bool? ShowStrings { get; init; }
    /// <summary>Whether to show degree names; null likewise.</summary>
    public bool? ShowDegrees { get; init; }
    /// <summary>Whether to show counting syllables; null likewise (shown when the rhythm was counted).</summary>
    public bool? ShowCounts { get; init; }
    /// <summary>Whether to show roman numerals; null likewise.</summary>
    public bool? ShowRomans { get; init; }
    /// <summary>Whether to show small chord diagrams over the chord symbols; null likewise.</summary>
    public bool? ShowShapes { get; init; }
    /// <summary>
    /// Marks for the strokes in turn, from the first on and over again; empty for none. A rhythm the lesson gives has them already;
    /// a style's own rhythm takes them with <see cref="RhythmPattern.WithMarks"/>.
    /// </summary>
    public ImmutableArray<StrokeMarks> Marks { get; init; } = [];
    /// <summary>The way in which it is to be built up in steps; null for the exercise by itself. See <see cref="Lessons.Ladder"/>.</summary>
    public LadderKind? Ladder { get; init; }
    /// <summary>Measures a system when fixed.</summary>
    public int? MeasuresPerSystem { get; init; }
    /// <summary>Seed for styles with choice; the same seed gives the same line.</summary>
    public int Seed { get; init; } = 1;
    /// <summary>Options of the style by name, as the lesson gives them; a missing one takes its default.</summary>
    public ImmutableDictionary<string, OptionValue> Options { get; init; } = ImmutableDictionary<string, OptionValue>.Empty;
    /// <summary>Where the exercise is written.</summary>
    public required SourceSpan Span { get; init; }
}

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
    /// <summary>Rhythm, or null for the style's own.</summary>
    public RhythmPattern? Rhythm { get; init; }
    /// <summary>Tempo of its own, or null for the lesson's.</summary>
    public Tempo? Tempo { get; init; }
    /// <summary>Level of its own, or null for the lesson's.</summary>
    public int? Level { get; init; }
    /// <summary>Where on the neck it is to be played.</summary>
    public NeckRequest Neck { get; init; } = new();
    /// <summary>Which staves to show.</summary>
    public StaffLayout Layout { get; init; }
    /// <summary>Whether to show fretting fingers; null for the style's and level's choice.</summary>
    public bool? ShowFingers { get; init; }
    /// <summary>Whether to show degree names; null likewise.</summary>
    public bool? ShowDegrees { get; init; }
    /// <summary>Whether to show counting syllables; null likewise (shown when the rhythm was counted).</summary>
    public bool? ShowCounts { get; init; }
    /// <summary>Measures a system when fixed.</summary>
    public int? MeasuresPerSystem { get; init; }
    /// <summary>Seed for styles with choice; the same seed gives the same line.</summary>
    public int Seed { get; init; } = 1;
    /// <summary>Options of the style by name, as the lesson gives them; a missing one takes its default.</summary>
    public ImmutableDictionary<string, OptionValue> Options { get; init; } = ImmutableDictionary<string, OptionValue>.Empty;
    /// <summary>Where the exercise is written.</summary>
    public required SourceSpan Span { get; init; }
}

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

/// <summary>The types an option can have.</summary>
public enum OptionType
{
    /// <summary>One of the words of <see cref="StyleOption.Choices"/>.</summary>
    Choice,
    /// <summary>A whole number in a range.</summary>
    Number,
    /// <summary>True or false.</summary>
    Flag,
    /// <summary>A list of chord degrees: "R 5 8 b7".</summary>
    Degrees,
    /// <summary>Free text of the style's own small language, such as a line of notes.</summary>
    Text,
}

/// <summary>An option a style declares.</summary>
/// <param name="Name">Name in lessons: lower-case words joined with hyphens.</param>
/// <param name="Type">Type of its value.</param>
/// <param name="Summary">One line on what it does.</param>
/// <param name="Default">Default as it would be written in a lesson; empty when there is none.</param>
public sealed record StyleOption(string Name, OptionType Type, string Summary, string Default)
{
    /// <summary>Allowed words of a choice.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];
    /// <summary>Lowest number allowed.</summary>
    public int Minimum { get; init; } = int.MinValue;
    /// <summary>Highest number allowed.</summary>
    public int Maximum { get; init; } = int.MaxValue;
    /// <summary>Whether a lesson must give it.</summary>
    public bool Required { get; init; }
}

/// <summary>A value given for an option, parsed by its type, with its place in the lesson.</summary>
/// <param name="Text">The text as written, located.</param>
public sealed record OptionValue(LocatedText Text)
{
    /// <summary>The number, for <see cref="OptionType.Number"/>.</summary>
    public int Number { get; init; }
    /// <summary>The flag, for <see cref="OptionType.Flag"/>.</summary>
    public bool Flag { get; init; }
    /// <summary>The degrees, for <see cref="OptionType.Degrees"/>.</summary>
    public ImmutableArray<DegreeRequest> Degrees { get; init; } = [];
}

/// <summary>A degree as a teacher writes it: "b7" is exact, a plain "7" or "3" means the one the chord has.</summary>
/// <param name="Degree">Number and, when exact, alteration.</param>
/// <param name="IsExact">Whether an accidental was written (or the degree has only one size in use, like R, 5 in chords without an altered fifth is NOT exact).</param>
public readonly record struct DegreeRequest(Degree Degree, bool IsExact);

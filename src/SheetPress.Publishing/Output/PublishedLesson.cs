using System.Collections.Immutable;

namespace SheetPress.Publishing;

/// <summary>What was written for a lesson.</summary>
public sealed record PublishedLesson
{
    /// <summary>Identifier of the lesson.</summary>
    public required string Id { get; init; }

    /// <summary>Every file written, in order.</summary>
    public required ImmutableArray<string> Files { get; init; }

    /// <summary>Pages of the handout.</summary>
    public required int Pages { get; init; }

    /// <summary>Measures of all exercises.</summary>
    public required int Measures { get; init; }

    /// <summary>Sounding notes of all exercises, tied ones counted once, chords by their tones.</summary>
    public required int Notes { get; init; }

    /// <summary>Characters that no font at hand can show.</summary>
    public ImmutableArray<string> MissingCharacters { get; init; } = [];

    /// <summary>Milliseconds by stage, in order.</summary>
    public ImmutableArray<StageTime> Stages { get; init; } = [];
}

/// <summary>How long a stage took.</summary>
/// <param name="Stage">Name of the stage.</param>
/// <param name="Milliseconds">Milliseconds.</param>
public readonly record struct StageTime(string Stage, double Milliseconds);

using SheetPress.Theory;

namespace SheetPress.Lessons;

/// <summary>What a run asks for in place of what the lesson says.</summary>
public sealed record LessonOverrides
{
    /// <summary>Nothing in place of anything.</summary>
    public static LessonOverrides None { get; } = new();

    /// <summary>
    /// The key to play the lesson in; null for its own. Its tonic counts and the lesson keeps its mode, so that a minor lesson stays
    /// minor; where that key would need more than seven flats or sharps, the one that sounds the same is taken.
    /// </summary>
    public Key? Key { get; init; }

    /// <summary>Identifier of the instrument to write the lesson for; null for its own.</summary>
    public string? InstrumentId { get; init; }

    /// <summary>The kind of pages to set the lesson on; null for its own.</summary>
    public PageKind? Pages { get; init; }
}

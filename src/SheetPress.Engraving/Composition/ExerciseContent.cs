using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>One exercise of a sheet: title, instruction and music.</summary>
public sealed record ExerciseContent
{
    /// <summary>Number as printed before the title: "1", "4.2"; empty for none.</summary>
    public string Number { get; init; } = "";

    /// <summary>The music; its title and instruction are printed above it.</summary>
    public required Score Score { get; init; }

    /// <summary>Neck diagrams between the instruction and the music, such as the path of the exercise.</summary>
    public ImmutableArray<NeckDiagram> Diagrams { get; init; } = [];
}

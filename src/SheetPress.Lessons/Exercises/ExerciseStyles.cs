using System.Collections.Immutable;

namespace SheetPress.Lessons;

/// <summary>The catalogue of exercise styles.</summary>
public static class ExerciseStyles
{
    /// <summary>Every style, grouped as the catalogue shows them.</summary>
    public static ImmutableArray<ExerciseStyle> All { get; } = [];

    /// <summary>The style of a name, or null.</summary>
    public static ExerciseStyle? Find(string name) => All.FirstOrDefault(s => s.Name == name);
}

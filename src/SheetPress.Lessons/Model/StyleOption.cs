using System.Collections.Immutable;

namespace SheetPress.Lessons;

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
    /// <summary>A value to show where there is no default; empty for none.</summary>
    public string Example { get; init; } = "";

    /// <summary>Whether a lesson must give it.</summary>
    public bool Required { get; init; }
}

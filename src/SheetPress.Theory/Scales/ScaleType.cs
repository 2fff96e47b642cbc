using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>A kind of scale: its name and its degrees against the major scale, ascending from the root within one octave.</summary>
public sealed class ScaleType
{
    /// <summary>The usual name in lower case, as in "phrygian dominant".</summary>
    public string Name { get; }

    /// <summary>Degrees from the root up, the octave left out.</summary>
    public ImmutableArray<Degree> Degrees { get; }

    /// <summary>Other names in use.</summary>
    public ImmutableArray<string> Aliases { get; }

    internal ScaleType(string name, string degrees, params string[] aliases)
    {
        Name = name;
        Degrees = [.. degrees.Split(' ').Select(Degree.Parse)];
        Aliases = [.. aliases];
    }

    /// <inheritdoc />
    public override string ToString() => Name;
}

/// <summary>A scale: a root and a kind of scale.</summary>
/// <param name="Root">The root.</param>
/// <param name="Type">The kind of scale.</param>
public sealed record Scale(NoteName Root, ScaleType Type)
{
    /// <summary>The notes from the root up within one octave, spelled from the root.</summary>
    public ImmutableArray<NoteName> Notes => [.. Type.Degrees.Select(d => Root + d.ToInterval())];

    /// <summary>"C natural minor".</summary>
    public override string ToString() => $"{Root} {Type.Name}";
}

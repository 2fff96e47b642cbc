using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>A kind of chord: its canonical suffix, the degrees it stacks on the root, and the other ways to write it.</summary>
public sealed class ChordQuality
{
    /// <summary>The canonical suffix in plain text: "" for a major triad, "m7b5", "7", "maj7".</summary>
    public string Suffix { get; }

    /// <summary>What the quality is called in words: "half-diminished seventh".</summary>
    public string Name { get; }

    /// <summary>The chord tones from the root up, root first.</summary>
    public ImmutableArray<Degree> Degrees { get; }

    /// <summary>Other suffixes in use for the same chord.</summary>
    public ImmutableArray<string> Aliases { get; }

    internal ChordQuality(string suffix, string name, string degrees, params string[] aliases)
    {
        Suffix = suffix;
        Name = name;
        Degrees = [.. degrees.Split(' ').Select(Degree.Parse)];
        Aliases = [.. aliases];
    }

    /// <summary>The chord tone of a number (3 the third, 7 the seventh, 9 the ninth), or null when the chord has none.</summary>
    public Degree? Find(int number)
    {
        foreach (var degree in Degrees) if (degree.Number == number) return degree;
        return null;
    }

    /// <inheritdoc />
    public override string ToString() => Suffix;
}

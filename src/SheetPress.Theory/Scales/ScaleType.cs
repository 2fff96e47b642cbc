using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace SheetPress.Theory;

/// <summary>A kind of scale: its name and its degrees against the major scale, ascending from the root within one octave.</summary>
public sealed class ScaleType
{
    private readonly string degreeText;
    private readonly string aliasText;
    private Degree[]? degrees;

    /// <summary>The usual name in lower case throughout, by which it is looked up: "phrygian dominant".</summary>
    public string Name { get; }

    /// <summary>Degrees from the root up, the octave left out.</summary>
    public ImmutableArray<Degree> Degrees => ImmutableCollectionsMarshal.AsImmutableArray(Rows);

    // Read when first asked for. Two threads may do it at the same time; either array serves.
    private Degree[] Rows => degrees ??= DegreeList.Read(degreeText);

    /// <summary>Other names in use, in lower case.</summary>
    public ImmutableArray<string> Aliases => aliasText.Length == 0 ? [] : [.. aliasText.Split(", ")];

    /// <summary>A row of the table; aliases are parted by ", ".</summary>
    internal ScaleType(string name, string degrees, string aliases)
    {
        Name = name;
        degreeText = degrees;
        aliasText = aliases;
    }

    /// <summary>The degree of a number (3 the third, 4 the fourth), or null when the scale has none. Of two with one number, the lower.</summary>
    public Degree? Find(int number)
    {
        foreach (var degree in Rows) if (degree.Number == number) return degree;
        return null;
    }

    /// <summary>Whether a degree of the scale lies so many half steps above the root, octaves left out.</summary>
    /// <param name="halfSteps">Half steps, 0 or more.</param>
    public bool Sounds(int halfSteps)
    {
        foreach (var degree in Rows) if (degree.HalfSteps == halfSteps % 12) return true;
        return false;
    }

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <summary>The name as it is printed, with capitals and real accidental signs: "Mixolydian ♭6".</summary>
    public string ToDisplayString()
    {
        var text = ProperNames.Capitalise(Name).ToCharArray();
        for (var i = 0; i + 1 < text.Length; i++)
        {
            // A b counts as a sign only before a number or another sign: "b6", "bb7", not "bebop".
            var sign = text[i] == '#' || (text[i] == 'b' && (char.IsAsciiDigit(text[i + 1]) || (text[i + 1] == 'b' && i + 2 < text.Length && char.IsAsciiDigit(text[i + 2]))));
            if (sign) text[i] = text[i] == '#' ? '♯' : '♭';
        }
        return new string(text);
    }
}

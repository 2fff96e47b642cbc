using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>A kind of scale: its name and its degrees against the major scale, ascending from the root within one octave.</summary>
public sealed class ScaleType
{
    private readonly string degreeText;
    private readonly string aliasText;
    private ImmutableArray<Degree> degrees;

    /// <summary>The usual name in lower case, as in "phrygian dominant".</summary>
    public string Name { get; }

    /// <summary>Degrees from the root up, the octave left out.</summary>
    public ImmutableArray<Degree> Degrees
    {
        get
        {
            if (degrees.IsDefault) ImmutableInterlocked.InterlockedInitialize(ref degrees, [.. degreeText.Split(' ').Select(Degree.Parse)]);
            return degrees;
        }
    }

    /// <summary>Other names in use, in lower case.</summary>
    public ImmutableArray<string> Aliases => aliasText.Length == 0 ? [] : [.. aliasText.Split(", ")];

    /// <summary>A row of the table; aliases are parted by ", ".</summary>
    internal ScaleType(string name, string degrees, string aliases = "")
    {
        Name = name;
        degreeText = degrees;
        aliasText = aliases;
    }

    /// <summary>The degree of a number (3 the third, 4 the fourth), or null when the scale has none. Of two with one number, the lower.</summary>
    public Degree? Find(int number)
    {
        foreach (var degree in Degrees) if (degree.Number == number) return degree;
        return null;
    }

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <summary>The name with real accidental signs: "mixolydian ♭6".</summary>
    public string ToDisplayString()
    {
        var text = Name.ToCharArray();
        for (var i = 0; i + 1 < text.Length; i++)
        {
            // A b counts as a sign only before a number or another sign: "b6", "bb7", not "bebop".
            var sign = text[i] == '#' || (text[i] == 'b' && (char.IsAsciiDigit(text[i + 1]) || (text[i + 1] == 'b' && i + 2 < text.Length && char.IsAsciiDigit(text[i + 2]))));
            if (sign) text[i] = text[i] == '#' ? '♯' : '♭';
        }
        return new string(text);
    }
}

using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>
/// A kind of chord: the degrees it stacks on the root, its canonical suffix and its name. Equality is by the degrees: "7#5b9" and "7b9#5" are
/// one quality.
/// </summary>
public sealed class ChordQuality : IEquatable<ChordQuality>
{
    private readonly string degreeText = "";
    private readonly string aliasText = "";

    // Made when first asked for. Two threads may make the same value at the same time; either serves.
    private ChordShape? shape;
    private SuffixParts? parts;
    private KindParts? kind;

    /// <summary>The canonical suffix in plain text: "" for a major triad, "m7b5", "7", "maj7", "7b9#11", "(b5)" in brackets where it would run into the root.</summary>
    public string Suffix { get; }

    /// <summary>What the quality is called in words: "half-diminished seventh".</summary>
    public string Name { get; }

    /// <summary>The chord tones from the root up, root first, in order of their numbers.</summary>
    public ImmutableArray<Degree> Degrees => Shape.Degrees;

    /// <summary>Other suffixes in use for the same chord, the commonest first. The parser understands more than these.</summary>
    public ImmutableArray<string> Aliases => aliasText.Length == 0 ? [] : [.. aliasText.Split(' ')];

    /// <summary>The nearest basic kind, for interchange formats.</summary>
    public ChordKind Kind => Kinds.Kind;

    /// <summary>What the quality adds to its <see cref="Kind"/>, alters in it or leaves out of it, in order of number.</summary>
    public ImmutableArray<KindChange> KindChanges => Kinds.Changes;

    /// <summary>A row of the table; degrees and aliases are read when first asked for.</summary>
    internal ChordQuality(string suffix, string name, string degrees, string aliases)
    {
        Suffix = suffix;
        Name = name;
        degreeText = degrees;
        aliasText = aliases;
    }

    /// <summary>A quality that is not in the table, named by its build.</summary>
    internal ChordQuality(ChordShape shape, string suffix)
    {
        Suffix = suffix;
        Name = ChordNaming.Words(shape);
        this.shape = shape;
    }

    /// <summary>The quality with these degrees above the root (1 may be left out). Seconds, fourths and sixths count as ninths, elevenths and thirteenths where the chord makes them so.</summary>
    public static ChordQuality FromDegrees(IEnumerable<Degree> degrees) => ChordQualities.Of(new ChordShape([.. degrees]));

    /// <summary>The chord tone of a number (3 the third, 7 the seventh, 9 the ninth), or null when the chord has none.</summary>
    public Degree? Find(int number) => Shape.First(number);

    /// <summary>The basic part of the suffix ("m7" of "m7b5") and what follows it, in order ("b5").</summary>
    internal SuffixParts Parts => parts ??= ChordNaming.Parts(Shape);

    internal ChordShape Shape => shape ??= new ChordShape(DegreeList.Read(degreeText));

    private KindParts Kinds => kind ??= ChordKinds.Classify(Shape);

    /// <inheritdoc />
    public bool Equals(ChordQuality? other) => other is not null && Suffix == other.Suffix;

    /// <inheritdoc />
    public override bool Equals(object? obj) => Equals(obj as ChordQuality);

    /// <inheritdoc />
    public override int GetHashCode() => string.GetHashCode(Suffix, StringComparison.Ordinal);

    /// <inheritdoc />
    public override string ToString() => Suffix;
}

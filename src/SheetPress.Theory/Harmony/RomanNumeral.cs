using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace SheetPress.Theory;

/// <summary>
/// A chord named by its place in a key: "iiø7", "V7/ii", "bVIImaj7", "I/3". Capitals stand for a major third (or none), small letters for a
/// minor one; ° is diminished, ø half-diminished, + augmented. Equality is by all parts.
/// </summary>
/// <remarks>
/// <para>Conventions. A numeral counts the degrees of the key's own scale, so in minor III, VI and VII are the natural ones. A sign in front
/// moves that degree by a half step; a sign that the scale already has against the major scale changes nothing ("bVI" and "VI" are the same in
/// minor, "bbVII" is a half step lower). In minor, small vi and vii without a sign stand on the raised sixth and seventh, as in melodic minor:
/// "vii°7" is on the leading tone, "bvii" on the natural seventh.</para>
/// <para>What follows the numeral is the suffix of a chord symbol, not a figured bass: "I6" is a sixth chord. In small numerals the m is left
/// out: "ii7" is a minor seventh. A slash leads to the bass as a degree of the chord ("I/3"; "V7/7" is the chord's own seventh, "n7" a
/// major seventh in spite of it) or to the degree that the chord is applied to ("V7/ii", counted in the minor key of a small target, the major
/// key of a capital one). Where there are both, the slash is the bass and a word leads to the degree: "V7/3 of ii".</para>
/// </remarks>
public sealed record RomanNumeral
{
    /// <summary>The word that leads to the degree that a chord with a bass is applied to, with its blanks.</summary>
    public const string Of = " of ";

    private static readonly string[] Capitals = ["I", "II", "III", "IV", "V", "VI", "VII"];
    private static readonly string[] Smalls = ["i", "ii", "iii", "iv", "v", "vi", "vii"];

    /// <summary>The degree of the key, 1 to 7.</summary>
    public int Number { get; }

    /// <summary>The signs in front of the numeral: -1 for one flat, 1 for one sharp.</summary>
    public int Alteration { get; }

    /// <summary>The quality of the chord.</summary>
    public ChordQuality Quality { get; }

    /// <summary>The degree that the chord is applied to, as ii in "V7/ii"; null when it is the tonic.</summary>
    public RomanNumeral? Target { get; }

    /// <summary>The bass as a degree above the chord's root, 1 to 7; null when it is the root.</summary>
    public Degree? Bass { get; }

    /// <summary>Makes a numeral.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside 1..7, the alteration outside -3..3, or the bass above the seventh.</exception>
    public RomanNumeral(int number, int alteration, ChordQuality quality, RomanNumeral? target = null, Degree? bass = null)
    {
        ArgumentNullException.ThrowIfNull(quality);
        if (number is < 1 or > 7) throw new ArgumentOutOfRangeException(nameof(number), number, "A numeral is from 1 to 7.");
        if (alteration is < -3 or > 3) throw new ArgumentOutOfRangeException(nameof(alteration), alteration, "A numeral has at most three signs.");
        if (bass is { Number: > 7 }) throw new ArgumentOutOfRangeException(nameof(bass), bass, "The bass is a degree from 1 to 7.");
        Number = number;
        Alteration = alteration;
        Quality = quality;
        Target = target;
        Bass = bass == Degree.Root ? null : bass;
    }

    /// <summary>Whether the numeral is written small: the chord has a minor third.</summary>
    public bool IsSmall => Quality.Shape.IsMinor;

    /// <summary>The chord that the numeral is in a key.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The spelling would need more than six flats or sharps.</exception>
    public Chord ToChord(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        var root = RootIn(key.Tonic, key.Mode);
        return new Chord(root, Quality, Bass is { } bass ? root + bass.ToInterval() : null);
    }

    /// <summary>The numeral of a chord in a key, exactly by its spelling, without a target. <see cref="ToChord"/> gives the chord back.</summary>
    /// <exception cref="ArgumentException">The chord is spelled so far from the key that more than three signs would be needed.</exception>
    public static RomanNumeral FromChord(Chord chord, Key key)
    {
        ArgumentNullException.ThrowIfNull(chord);
        ArgumentNullException.ThrowIfNull(key);
        return FromChord(chord, key.Tonic, key.Mode, null);
    }

    /// <summary>The numeral of a chord as applied to a degree of a key: A7 applied to ii in C major is V7/ii. <see cref="ToChord"/> gives the chord back.</summary>
    /// <exception cref="ArgumentException">The chord is spelled so far from the target that more than three signs would be needed.</exception>
    public static RomanNumeral FromChord(Chord chord, Key key, RomanNumeral target)
    {
        ArgumentNullException.ThrowIfNull(chord);
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(target);
        return FromChord(chord, target.RootIn(key.Tonic, key.Mode), target.LocalMode, target);
    }

    private Mode LocalMode => IsSmall ? Mode.Minor : Mode.Major;

    private NoteName RootIn(NoteName tonic, Mode mode)
    {
        if (Target is not null) (tonic, mode) = (Target.RootIn(tonic, mode), Target.LocalMode);
        return tonic + Interval.FromNumber(Number, TotalAlteration(mode));
    }

    // Half steps of the root against the major scale on the tonic.
    private int TotalAlteration(Mode mode)
    {
        var own = mode.DegreeOf(Number).Alteration;
        if (Alteration == 0) return StandsRaised(mode, Number, IsSmall) ? 0 : own;
        return own * Alteration > 0 ? Alteration : own + Alteration;
    }

    private static bool StandsRaised(Mode mode, int number, bool small) => small && mode is Mode.Minor or Mode.Aeolian && number >= 6;

    private static RomanNumeral FromChord(Chord chord, NoteName tonic, Mode mode, RomanNumeral? target)
    {
        var place = DegreeAbove(tonic, chord.Root);
        var own = mode.DegreeOf(place.Number).Alteration;
        var alteration = (place.Alteration, StandsRaised(mode, place.Number, chord.Quality.Shape.IsMinor)) switch
        {
            (0, true) => 0,
            (var total, false) when total == own => 0,
            var (total, _) when own * total > 0 && Math.Abs(total) >= Math.Abs(own) => total,
            var (total, _) => total - own,
        };
        if (alteration is < -3 or > 3) throw new ArgumentException($"{chord} is spelled too far from {tonic} for a numeral.", nameof(chord));
        return new(place.Number, alteration, chord.Quality, target, chord.Bass is { } bass ? DegreeAbove(chord.Root, bass) : null);
    }

    private static Degree DegreeAbove(NoteName root, NoteName note)
    {
        var interval = root.IntervalTo(note);
        var alteration = interval.HalfSteps - Interval.FromNumber(interval.Number).HalfSteps;
        if (alteration is < -3 or > 3) throw new ArgumentException($"{note} is spelled too far from {root} for a numeral.", nameof(note));
        return new(interval.Number, alteration);
    }

    /// <summary>The canonical form: "iiø7", "V7/ii", "V7/3 of ii", "bVIImaj7". ° and ø are used, flats and sharps are b and #.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        text.Append(Alteration < 0 ? new string('b', -Alteration) : new string('#', Alteration));
        text.Append((IsSmall ? Smalls : Capitals)[Number - 1]);
        text.Append(RomanSuffix.Write(Quality));
        if (Bass is { } bass) text.Append('/').Append(BassText(bass));
        // Two slashes would look alike.
        if (Target is not null) text.Append(Bass is null ? "/" : Of).Append(Target);
        return text.ToString();
    }

    /// <summary>The canonical form with real accidental signs: "♭VIImaj7", "V7♭9/ii".</summary>
    public string ToDisplayString() => ToString().Replace('b', '♭').Replace('#', '♯').Replace("/n", "/♮", StringComparison.Ordinal);

    /// <summary>Reads a numeral. For what is wrong with a text, ask <see cref="RomanNumeralParser"/>.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out RomanNumeral? numeral)
    {
        numeral = text is null ? null : RomanNumeralParser.Parse(text).Numeral;
        return numeral is not null;
    }

    /// <summary>Reads a numeral.</summary>
    /// <exception cref="FormatException">The text is no numeral.</exception>
    public static RomanNumeral Parse(string text)
    {
        var result = RomanNumeralParser.Parse(text);
        if (result.Numeral is { } numeral) return numeral;
        throw new FormatException($"'{text}' is no roman numeral: {result.Message} (at character {result.ErrorIndex + 1}).{(result.Suggestion is { } s ? $" Did you mean {s}?" : "")}");
    }

    // A number alone means the tone that the chord has; n (natural) is needed where that differs from the plain degree, and
    // behind a suspension, where "sus2/4" would be read as both.
    private string BassText(Degree bass)
    {
        var own = OwnTone(Quality, bass.Number);
        if (own == bass) return bass.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var needsSign = bass.Alteration == 0 && (own is not null || Quality.Suffix.Contains("sus", StringComparison.Ordinal));
        return (needsSign ? "n" : "") + bass;
    }

    /// <summary>The chord's tone of a number from 1 to 7, a ninth counting as a second; null when it has none.</summary>
    internal static Degree? OwnTone(ChordQuality quality, int number) => (quality.Find(number) ?? quality.Find(number + 7))?.Simple;
}

using System.Collections.Immutable;

namespace SheetPress.Theory;

/// <summary>The table of scales.</summary>
/// <remarks>
/// Spelling follows the use of each scale: seven-note scales take each letter once where they can, the altered scale shows the tensions of the
/// dominant it serves (1 b9 #9 3 #11 b13 b7), diminished scales keep the third and seventh of their chord.
/// </remarks>
public static class ScaleTypes
{
    private static ImmutableArray<ScaleType> all;
    private static Dictionary<string, ScaleType>? byName;

    /// <summary>Every kind of scale, common ones first in each group.</summary>
    public static ImmutableArray<ScaleType> All
    {
        get
        {
            if (all.IsDefault) ImmutableInterlocked.InterlockedInitialize(ref all, [.. Rows()]);
            return all;
        }
    }

    /// <summary>The scale of a name or alias, or null. Case and blanks around do not matter; ♭ and b, ♯ and # are alike, and so are a hyphen and a blank.</summary>
    public static ScaleType? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        byName ??= Index();
        return byName.GetValueOrDefault(Normal(name));
    }

    /// <summary>The scale with a name of the table, exactly as it stands there.</summary>
    /// <exception cref="ArgumentException">There is no such name.</exception>
    internal static ScaleType Get(string name)
    {
        foreach (var type in All) if (type.Name == name) return type;
        throw new ArgumentException($"There is no scale '{name}'.", nameof(name));
    }

    private static Dictionary<string, ScaleType> Index()
    {
        var index = new Dictionary<string, ScaleType>(StringComparer.Ordinal);
        foreach (var type in All)
        {
            index.Add(Normal(type.Name), type);
            foreach (var alias in type.Aliases) index.Add(Normal(alias), type);
        }
        return index;
    }

    private static string Normal(string name) =>
        name.Trim().ToLowerInvariant().Replace('♭', 'b').Replace('♯', '#').Replace('-', ' ');

    private static ScaleType[] Rows() =>
    [
        // Major and its modes.
        new("major", "1 2 3 4 5 6 7", "ionian"),
        new("dorian", "1 2 b3 4 5 6 b7"),
        new("phrygian", "1 b2 b3 4 5 b6 b7"),
        new("lydian", "1 2 3 #4 5 6 7"),
        new("mixolydian", "1 2 3 4 5 6 b7", "dominant"),
        new("natural minor", "1 2 b3 4 5 b6 b7", "aeolian, minor"),
        new("locrian", "1 b2 b3 4 b5 b6 b7"),

        // Harmonic minor and its modes.
        new("harmonic minor", "1 2 b3 4 5 b6 7"),
        new("locrian natural 6", "1 b2 b3 4 b5 6 b7", "locrian 6, locrian #6"),
        new("ionian #5", "1 2 3 4 #5 6 7", "ionian augmented, major #5, major augmented"),
        new("dorian #4", "1 2 b3 #4 5 6 b7", "altered dorian, romanian minor, ukrainian dorian"),
        new("phrygian dominant", "1 b2 3 4 5 b6 b7", "phrygian major, spanish, mixolydian b9 b13, mixolydian b2 b6"),
        new("lydian #2", "1 #2 3 #4 5 6 7", "lydian #9"),
        new("ultralocrian", "1 b2 b3 b4 b5 b6 bb7", "altered bb7, super locrian bb7, superlocrian bb7"),

        // Melodic minor (as it ascends) and its modes.
        new("melodic minor", "1 2 b3 4 5 6 7", "jazz minor, ascending melodic minor"),
        new("dorian b2", "1 b2 b3 4 5 6 b7", "phrygian natural 6, phrygian #6"),
        new("lydian augmented", "1 2 3 #4 #5 6 7", "lydian #5"),
        new("lydian dominant", "1 2 3 #4 5 6 b7", "lydian b7, mixolydian #4, mixolydian #11, overtone"),
        new("mixolydian b6", "1 2 3 4 5 b6 b7", "mixolydian b13, hindu, melodic major"),
        new("locrian natural 2", "1 2 b3 4 b5 b6 b7", "locrian #2, aeolian b5, half diminished"),
        new("altered", "1 b2 #2 3 #4 b6 b7", "super locrian, superlocrian, altered dominant, diminished whole tone"),

        // Symmetric scales.
        new("whole tone", "1 2 3 #4 #5 b7"),
        new("whole-half diminished", "1 2 b3 4 b5 b6 6 7", "diminished, octatonic"),
        new("half-whole diminished", "1 b2 b3 3 #4 5 6 b7", "dominant diminished, half whole octatonic"),
        new("augmented", "1 #2 3 5 #5 7", "augmented hexatonic"),
        new("chromatic", "1 b2 2 b3 3 4 b5 5 b6 6 b7 7"),

        // Pentatonics.
        new("major pentatonic", "1 2 3 5 6", "pentatonic"),
        new("minor pentatonic", "1 b3 4 5 b7"),
        new("suspended pentatonic", "1 2 4 5 b7", "egyptian"),
        new("dominant pentatonic", "1 2 3 5 b7"),
        new("mixolydian pentatonic", "1 3 4 5 b7"),
        new("minor six pentatonic", "1 b3 4 5 6", "dorian pentatonic"),
        new("major flat six pentatonic", "1 2 3 5 b6", "flat six pentatonic"),
        new("half-diminished pentatonic", "1 b3 4 b5 b7", "locrian pentatonic, minor seven flat five pentatonic"),
        new("hirajoshi", "1 2 b3 5 b6"),
        new("in-sen", "1 b2 4 5 b7"),

        // Blues.
        new("minor blues", "1 b3 4 b5 5 b7", "blues"),
        new("major blues", "1 2 b3 3 5 6"),

        // Bebop: eight notes, so that chord tones fall on the beat.
        new("bebop dominant", "1 2 3 4 5 6 b7 7", "bebop, bebop mixolydian"),
        new("bebop major", "1 2 3 4 5 #5 6 7"),
        new("bebop dorian", "1 2 b3 3 4 5 6 b7", "bebop minor"),
        new("bebop melodic minor", "1 2 b3 4 5 #5 6 7"),
        new("bebop natural minor", "1 2 b3 4 5 b6 b7 7", "minor bebop"),
        new("bebop locrian", "1 b2 b3 4 b5 5 b6 b7"),

        // Others in use.
        new("harmonic major", "1 2 3 4 5 b6 7"),
        new("double harmonic", "1 b2 3 4 5 b6 7", "double harmonic major, byzantine"),
        new("hungarian minor", "1 2 b3 #4 5 b6 7", "double harmonic minor"),
        new("neapolitan minor", "1 b2 b3 4 5 b6 7"),
        new("neapolitan major", "1 b2 b3 4 5 6 7"),
        new("spanish eight-note", "1 b2 b3 3 4 5 b6 b7", "spanish heptatonic, spanish phrygian"),
        new("minor hexatonic", "1 2 b3 4 5 b7", "natural minor hexatonic"),
        new("major hexatonic", "1 2 3 4 5 6"),
        new("lydian minor", "1 2 3 #4 5 b6 b7", "lydian dominant b6"),
        new("prometheus", "1 2 3 #4 6 b7"),
        new("persian", "1 b2 3 4 b5 b6 7"),
        new("enigmatic", "1 b2 3 #4 #5 #6 7"),
    ];
}

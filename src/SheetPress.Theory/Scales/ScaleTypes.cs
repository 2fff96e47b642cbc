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

    private static ScaleType[] Rows()
    {
        var rows = new List<ScaleType>();
        foreach (var line in Table.Split('\n'))
        {
            if (line.StartsWith("# ", StringComparison.Ordinal)) continue;
            var columns = line.Split('|', StringSplitOptions.TrimEntries);
            rows.Add(new ScaleType(columns[0], columns[1], columns[2]));
        }
        return [.. rows];
    }

    // Name, degrees, other names.
    private const string Table = """
        # Major and its modes.
        major                        | 1 2 3 4 5 6 7                  | ionian
        dorian                       | 1 2 b3 4 5 6 b7                |
        phrygian                     | 1 b2 b3 4 5 b6 b7              |
        lydian                       | 1 2 3 #4 5 6 7                 |
        mixolydian                   | 1 2 3 4 5 6 b7                 | dominant
        natural minor                | 1 2 b3 4 5 b6 b7               | aeolian, minor
        locrian                      | 1 b2 b3 4 b5 b6 b7             |
        # Harmonic minor and its modes.
        harmonic minor               | 1 2 b3 4 5 b6 7                |
        locrian natural 6            | 1 b2 b3 4 b5 6 b7              | locrian 6, locrian #6
        ionian #5                    | 1 2 3 4 #5 6 7                 | ionian augmented, major #5, major augmented
        dorian #4                    | 1 2 b3 #4 5 6 b7               | altered dorian, romanian minor, ukrainian dorian
        phrygian dominant            | 1 b2 3 4 5 b6 b7               | phrygian major, spanish, mixolydian b9 b13, mixolydian b2 b6
        lydian #2                    | 1 #2 3 #4 5 6 7                | lydian #9
        ultralocrian                 | 1 b2 b3 b4 b5 b6 bb7           | altered bb7, super locrian bb7, superlocrian bb7
        # Melodic minor (as it ascends) and its modes.
        melodic minor                | 1 2 b3 4 5 6 7                 | jazz minor, ascending melodic minor
        dorian b2                    | 1 b2 b3 4 5 6 b7               | phrygian natural 6, phrygian #6
        lydian augmented             | 1 2 3 #4 #5 6 7                | lydian #5
        lydian dominant              | 1 2 3 #4 5 6 b7                | lydian b7, mixolydian #4, mixolydian #11, overtone
        mixolydian b6                | 1 2 3 4 5 b6 b7                | mixolydian b13, hindu, melodic major
        locrian natural 2            | 1 2 b3 4 b5 b6 b7              | locrian #2, aeolian b5, half diminished
        altered                      | 1 b2 #2 3 #4 b6 b7             | super locrian, superlocrian, altered dominant, diminished whole tone
        # Symmetric scales.
        whole tone                   | 1 2 3 #4 #5 b7                 |
        whole-half diminished        | 1 2 b3 4 b5 b6 6 7             | diminished, octatonic
        half-whole diminished        | 1 b2 b3 3 #4 5 6 b7            | dominant diminished, half whole octatonic
        augmented                    | 1 #2 3 5 #5 7                  | augmented hexatonic
        chromatic                    | 1 b2 2 b3 3 4 b5 5 b6 6 b7 7   |
        # Pentatonics.
        major pentatonic             | 1 2 3 5 6                      | pentatonic
        minor pentatonic             | 1 b3 4 5 b7                    |
        suspended pentatonic         | 1 2 4 5 b7                     | egyptian
        dominant pentatonic          | 1 2 3 5 b7                     |
        mixolydian pentatonic        | 1 3 4 5 b7                     |
        minor six pentatonic         | 1 b3 4 5 6                     | dorian pentatonic
        major flat six pentatonic    | 1 2 3 5 b6                     | flat six pentatonic
        half-diminished pentatonic   | 1 b3 4 b5 b7                   | locrian pentatonic, minor seven flat five pentatonic
        hirajoshi                    | 1 2 b3 5 b6                    |
        in-sen                       | 1 b2 4 5 b7                    |
        # Blues.
        minor blues                  | 1 b3 4 b5 5 b7                 | blues
        major blues                  | 1 2 b3 3 5 6                   |
        # Bebop: eight notes, so that chord tones fall on the beat.
        bebop dominant               | 1 2 3 4 5 6 b7 7               | bebop, bebop mixolydian
        bebop major                  | 1 2 3 4 5 #5 6 7               |
        bebop dorian                 | 1 2 b3 3 4 5 6 b7              | bebop minor
        bebop melodic minor          | 1 2 b3 4 5 #5 6 7              |
        bebop natural minor          | 1 2 b3 4 5 b6 b7 7             | minor bebop
        bebop locrian                | 1 b2 b3 4 b5 5 b6 b7           |
        # Others in use.
        harmonic major               | 1 2 3 4 5 b6 7                 |
        double harmonic              | 1 b2 3 4 5 b6 7                | double harmonic major, byzantine
        hungarian minor              | 1 2 b3 #4 5 b6 7               | double harmonic minor
        neapolitan minor             | 1 b2 b3 4 5 b6 7               |
        neapolitan major             | 1 b2 b3 4 5 6 7                |
        spanish eight-note           | 1 b2 b3 3 4 5 b6 b7            | spanish heptatonic, spanish phrygian
        minor hexatonic              | 1 2 b3 4 5 b7                  | natural minor hexatonic
        major hexatonic              | 1 2 3 4 5 6                    |
        lydian minor                 | 1 2 3 #4 5 b6 b7               | lydian dominant b6
        prometheus                   | 1 2 3 #4 6 b7                  |
        persian                      | 1 b2 3 4 b5 b6 7               |
        enigmatic                    | 1 b2 3 #4 #5 #6 7              |
        """;
}

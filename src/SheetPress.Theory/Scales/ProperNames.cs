namespace SheetPress.Theory;

/// <summary>
/// Names of scales and modes as they are printed. Words that come from the names of peoples, places and persons have a capital, those of the
/// church modes among them, as English dictionaries give them (from memory): "Dorian", "Spanish eight-note", "bebop Dorian".
/// </summary>
internal static class ProperNames
{
    private static readonly string[] Words =
    [
        "ionian", "dorian", "phrygian", "lydian", "mixolydian", "aeolian", "locrian", "ultralocrian",
        "spanish", "hungarian", "neapolitan", "persian", "prometheus",
    ];

    /// <summary>The text with capitals where they belong.</summary>
    internal static string Capitalise(string text)
    {
        var words = text.Split(' ');
        for (var i = 0; i < words.Length; i++)
        {
            if (Array.IndexOf(Words, words[i]) >= 0) words[i] = char.ToUpperInvariant(words[i][0]) + words[i][1..];
        }
        return string.Join(' ', words);
    }
}

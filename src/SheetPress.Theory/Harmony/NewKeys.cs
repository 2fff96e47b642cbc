namespace SheetPress.Theory;

/// <summary>
/// Finds the chords that lead into a change of key: the dominant of the new key right before it, and the ii before that. They are heard in
/// the new key already (common practice). The dominant of the old key and its common minor chords stay where they are.
/// </summary>
internal static class NewKeys
{
    /// <summary>For each chord that leads into another key what it does there; null for all others.</summary>
    /// <param name="progression">The chords; null for "no chord".</param>
    /// <param name="keys">The key at each.</param>
    internal static HarmonicFunction?[] Find(IReadOnlyList<Chord?> progression, IReadOnlyList<Key> keys)
    {
        var found = new HarmonicFunction?[progression.Count];
        for (var i = 1; i < progression.Count; i++)
        {
            if (keys[i] == keys[i - 1]) continue;
            var last = ChordUpTo(progression, i - 1);
            if (last < 0 || !IsDominant(progression[last]!, keys[i - 1], keys[i])) continue;
            var before = Mark(progression, keys, found, last, HarmonicFunction.DominantOfNewKey);
            if (before >= 0 && IsSupertonic(progression[before]!, keys[i - 1], keys[i])) Mark(progression, keys, found, before, HarmonicFunction.SupertonicOfNewKey);
        }
        return found;
    }

    private static int ChordUpTo(IReadOnlyList<Chord?> progression, int index)
    {
        while (index >= 0 && progression[index] is null) index--;
        return index;
    }

    // Marks a chord and its repetitions before it, and gives the place of the other chord in the same key before these; -1 where there is none.
    private static int Mark(IReadOnlyList<Chord?> progression, IReadOnlyList<Key> keys, HarmonicFunction?[] found, int index, HarmonicFunction function)
    {
        var (chord, key) = (progression[index]!, keys[index]);
        while (index >= 0 && keys[index] == key && progression[index]!.Root == chord.Root && progression[index]!.Quality.IsDominantSeventh() == chord.Quality.IsDominantSeventh())
        {
            found[index] = function;
            index = ChordUpTo(progression, index - 1);
        }
        return index >= 0 && keys[index] == key ? index : -1;
    }

    private static bool IsDominant(Chord chord, Key old, Key next)
    {
        if (Steps.Up(next.Tonic, chord.Root) != 7 || Steps.Up(old.Tonic, chord.Root) == 7) return false;
        return chord.Quality.IsDominantSeventh() || (chord.Quality.IsPlainMajor() && chord.Quality.Find(7) is null && !IsIn(old, chord));
    }

    private static bool IsSupertonic(Chord chord, Key old, Key next) =>
        Steps.Up(next.Tonic, chord.Root) == 2 && (chord.Quality.IsPlainMinor() ? !IsIn(old, chord) : chord.Quality.IsHalfDiminished() && Steps.Up(old.Tonic, chord.Root) != 2);

    private static bool IsIn(Key key, Chord chord)
    {
        foreach (var tone in chord.Tones) if (!key.Scale.ContainsSound(tone.Note)) return false;
        return true;
    }
}

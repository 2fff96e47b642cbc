namespace SheetPress.Theory;

/// <summary>
/// Finds the chords over which another key rules for a moment: a major or minor chord from outside the key that its own dominant seventh
/// reaches is a tonic, and the chords beside it that its key holds are heard in that key. Common practice.
/// </summary>
internal static class KeysOfMoment
{
    /// <summary>The key of the moment for each chord; null where the key itself rules.</summary>
    /// <param name="progression">The chords; null for "no chord".</param>
    /// <param name="key">The key of the whole.</param>
    internal static Key?[] Find(IReadOnlyList<Chord?> progression, Key key)
    {
        var found = new Key?[progression.Count];
        var (before, at) = (-1, -1);
        for (var i = 0; i < progression.Count; i++)
        {
            if (progression[i] is not { } chord) continue;
            if (at >= 0 && IsSame(progression[at]!, chord)) continue;
            (before, at) = (at, i);
            if (before < 0 || found[i] is not null || !IsTonic(progression, before, i, key)) continue;
            var moment = Theory.Key.Nearest(chord.Root, chord.Quality.IsPlainMinor() ? Mode.Minor : Mode.Major);
            Mark(progression, found, i, -1, key, moment);
            Mark(progression, found, i + 1, 1, key, moment);
        }
        return found;
    }

    private static bool IsTonic(IReadOnlyList<Chord?> progression, int before, int at, Key key)
    {
        var (dominant, chord) = (progression[before]!, progression[at]!);
        if (!dominant.Quality.IsDominantSeventh() || dominant.Quality.Find(3) is null || !Steps.UpFourth(dominant, chord)) return false;
        if (!chord.Quality.IsPlainMajor() && !chord.Quality.IsPlainMinor()) return false;
        if (chord.Root.PitchClass == key.Tonic.PitchClass || Holds(key.Scale, chord)) return false;
        var next = at + 1;
        while (next < progression.Count && (progression[next] is not { } other || IsSame(other, chord))) next++;
        // What goes on up a fourth into a dominant is its ii, and a triad that goes on up a fourth a dominant itself.
        if (next >= progression.Count || !Steps.UpFourth(chord, progression[next]!)) return true;
        return chord.Quality.IsPlainMajor() ? chord.Quality.Find(7) is not null || chord.Quality.Find(6) is not null : !progression[next]!.Quality.IsDominantSeventh();
    }

    private static void Mark(IReadOnlyList<Chord?> progression, Key?[] found, int from, int step, Key key, Key moment)
    {
        for (var i = from; i >= 0 && i < progression.Count; i += step)
        {
            if (progression[i] is not { } chord) continue;
            if (!Holds(moment.Scale, chord) && !IsDominantOf(moment, chord)) return;
            // A chord that leads on to a dominant of some other key is no longer at home.
            if (step > 0 && i + 1 < progression.Count && progression[i + 1] is { } after && Steps.UpFourth(chord, after) && after.Quality.IsDominantSeventh() && !Holds(moment.Scale, after)) return;
            if (!Holds(key.Scale, chord)) found[i] ??= moment;
        }
    }

    // Its dominant with any tensions, and the half-diminished chord that leads there.
    private static bool IsDominantOf(Key moment, Chord chord) => Steps.Up(moment.Tonic, chord.Root) switch
    {
        7 => chord.Quality.IsDominantSeventh(),
        2 => chord.Quality.IsHalfDiminished(),
        _ => false,
    };

    private static bool Holds(Scale scale, Chord chord)
    {
        foreach (var tone in chord.Tones) if (!scale.ContainsSound(tone.Note)) return false;
        return true;
    }

    private static bool IsSame(Chord left, Chord right) => left.Root == right.Root && left.Quality.Equals(right.Quality);
}

namespace SheetPress.Theory;

/// <summary>
/// Says whether a progression rests on a dominant seventh, as a blues does: its tonic then is no dominant of the fourth degree, whatever
/// follows. Common practice.
/// </summary>
internal static class BluesHome
{
    private const int FewestReturns = 2;
    private const int TimesTheOthers = 2;

    /// <summary>Whether more than two thirds of the tonic chords of a key with a major third, and two at least, are dominant sevenths.</summary>
    internal static bool Is(IReadOnlyList<Chord?> progression, Key key)
    {
        if (key.HasMinorThird) return false;
        var (sevenths, others) = (0, 0);
        Chord? before = null;
        foreach (var chord in progression)
        {
            if (chord is null) continue;
            if (Steps.Up(key.Tonic, chord.Root) == 0 && (before is null || before.Root != chord.Root || !before.Quality.Equals(chord.Quality)))
            {
                if (chord.Quality.IsDominantSeventh()) sevenths++;
                else others++;
            }
            before = chord;
        }
        return sevenths >= FewestReturns && sevenths > TimesTheOthers * others;
    }
}

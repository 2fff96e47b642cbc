namespace SheetPress.Scores;

/// <summary>
/// Natural harmonics of an open string. A finger that touches the string at 1/n of its length sounds the n-th partial, n times the
/// frequency of the open string; the frets nearest those places are 12 (1/2), 7 and 19 (1/3), 5 and 24 (1/4), 4, 9 and 16 (1/5), from memory.
/// </summary>
public static class NaturalHarmonics
{
    /// <summary>Half steps above the open string (at the capo) that the harmonic at a fret sounds, rounded to equal temperament; null when there is none in use.</summary>
    public static int? HalfStepsAt(int fret) => fret switch
    {
        12 => 12,
        7 or 19 => 19,
        5 or 24 => 24,
        4 or 9 or 16 => 28,
        _ => null,
    };
}

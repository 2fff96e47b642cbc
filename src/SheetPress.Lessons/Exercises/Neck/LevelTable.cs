namespace SheetPress.Lessons;

/// <summary>
/// What the levels mean. A lesson's own rhythm, range or options always win over the table.
/// <code>
/// level  who                 own rhythm of runs   notes kept to   arpeggios     walking lines
/// 1      first months        beats                frets 0-5       one octave    chord tones, scale steps
/// 2      first year          eighths              frets 0-7       one octave    chord tones, scale steps
/// 3      steady player       eighths              frets 0-9       one octave    half-step approaches
/// 4      experienced         eighths              frets 0-12      two octaves   half-step approaches, wider contour
/// 5      advanced            sixteenths           the whole neck  two octaves   double approaches, widest contour
/// </code>
/// Notes outside the comfortable frets are used only where a chord leaves no other octave.
/// </summary>
internal static class LevelTable
{
    /// <summary>The highest fret at which the level is at home.</summary>
    public static int HighestFret(int level) => HandModel.HomeFret(level);

    /// <summary>Octaves of an arpeggio when the lesson does not say.</summary>
    public static int ArpeggioOctaves(int level) => level >= 4 ? 2 : 1;
}

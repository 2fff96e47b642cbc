namespace SheetPress.Scores;

/// <summary>
/// Natural harmonics of an open string. A finger that touches the string at 1/n of its length sounds the n-th partial, n times the
/// frequency of the open string; the frets nearest those places are 12 (1/2), 7 and 19 (1/3), 5 and 24 (1/4), 4, 9 and 16 (1/5), from memory.
/// </summary>
public static class NaturalHarmonics
{
    // From the easiest to sound to the hardest.
    private static readonly int[] Frets = [12, 7, 5, 19, 24, 4, 9, 16];

    /// <summary>Where a sounding pitch can be had as a natural harmonic, the easiest places first; empty when it is none of an open string.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="midiNumber">The pitch that sounds.</param>
    public static IEnumerable<FretPosition> PlacesOf(Instrument instrument, int midiNumber)
    {
        foreach (var fret in Frets)
        {
            if (fret > instrument.PlayableFrets) continue;
            for (var number = 1; number <= instrument.StringCount; number++)
            {
                if (instrument.MidiNumberAt(number, 0) + HalfStepsAt(fret) == midiNumber) yield return new FretPosition(number, fret);
            }
        }
    }

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

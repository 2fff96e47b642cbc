using System.Collections.Frozen;

namespace SheetPress.Scores;

/// <summary>The events of a score that say on which string they are played, where no tab does.</summary>
public static class StringNumbers
{
    /// <summary>
    /// Common practice in fretted music on a staff, from memory: the first note of a voice has the number of its string, and after it each
    /// note on another string than the note before. Empty for a score that does not show them or has a tab.
    /// </summary>
    /// <param name="score">The score.</param>
    /// <returns>Indices of measure, voice and event.</returns>
    public static FrozenSet<(int Measure, int Voice, int Event)> Of(Score score)
    {
        var shown = new HashSet<(int, int, int)>();
        if (!score.ShowStrings || score.Layout != StaffLayout.Staff) return shown.ToFrozenSet();
        for (var voice = 0; voice < score.Measures.Max(m => m.Voices.Length); voice++)
        {
            int[] before = [];
            for (var measure = 0; measure < score.Measures.Length; measure++)
            {
                if (voice >= score.Measures[measure].Voices.Length) continue;
                foreach (var (i, e) in score.Measures[measure].Voices[voice].Events.Index())
                {
                    int[] strings = [.. e.Tones.Where(t => !t.TieStop).Select(t => t.Position?.String).OfType<int>()];
                    if (strings.Length == 0) continue;
                    if (!strings.SequenceEqual(before)) shown.Add((measure, voice, i));
                    before = strings;
                }
            }
        }
        return shown.ToFrozenSet();
    }
}

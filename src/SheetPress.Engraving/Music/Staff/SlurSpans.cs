using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Finds the notes that slurs go over.</summary>
internal static class SlurSpans
{
    /// <summary>Phrasing slurs: index of the first and last event; -1 and the length of the voice where the slur goes on beyond the system.</summary>
    public static IEnumerable<(int First, int Last)> Phrases(IReadOnlyList<PlacedEvent> voice)
    {
        var open = -2;
        for (var i = 0; i < voice.Count; i++)
        {
            if (voice[i].Plan.Event.SlurStop)
            {
                yield return (open == -2 ? -1 : open, i);
                open = -2;
            }
            if (voice[i].Plan.Event.SlurStart) open = i;
        }
        if (open >= 0) yield return (open, voice.Count);
    }

    /// <summary>Chains of hammer-ons and pull-offs: index of the first and last event.</summary>
    public static IEnumerable<(int First, int Last)> LegatoChains(IReadOnlyList<PlacedEvent> voice)
    {
        for (var i = 0; i < voice.Count; i++)
        {
            if (!IsLegato(voice[i])) continue;
            var last = i;
            while (last < voice.Count && IsLegato(voice[last])) last++;
            yield return (i, last);
            i = last - 1;
        }
    }

    private static bool IsLegato(PlacedEvent e) => e.Plan.Event.Connection is Connection.HammerOn or Connection.PullOff;
}

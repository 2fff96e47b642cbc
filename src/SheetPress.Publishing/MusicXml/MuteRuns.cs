using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>The palm-muted runs of an exercise: muted notes of one voice that follow each other, with the notes tied to them.</summary>
internal sealed class MuteRuns
{
    private readonly HashSet<EventPlace> _starts = [];
    private readonly HashSet<EventPlace> _ends = [];

    private MuteRuns()
    {
    }

    /// <summary>Whether a run starts at an event, and whether one ends there.</summary>
    public (bool Starts, bool Ends) At(EventPlace place) => (_starts.Contains(place), _ends.Contains(place));

    public static MuteRuns Of(Score score)
    {
        var runs = new MuteRuns();
        for (var v = 0; v < 2; v++) runs.Collect(score, v);
        return runs;
    }

    private void Collect(Score score, int voice)
    {
        EventPlace? last = null;
        for (var m = 0; m < score.Measures.Length; m++)
        {
            var events = voice < score.Measures[m].Voices.Length ? score.Measures[m].Voices[voice].Events : [];
            if (events.IsEmpty) End();
            for (var e = 0; e < events.Length; e++)
            {
                var isTied = last is not null && !events[e].IsRest && IsTied(events[e]);
                if (!isTied && (events[e].IsRest || !events[e].Articulations.HasFlag(Articulations.PalmMute)))
                {
                    End();
                    continue;
                }
                var place = new EventPlace(m, voice, e);
                if (last is null) _starts.Add(place);
                last = place;
            }
        }
        End();

        static bool IsTied(ScoreEvent e)
        {
            foreach (var tone in e.Tones) if (!tone.TieStop) return false;
            return true;
        }

        void End()
        {
            if (last is { } end) _ends.Add(end);
            last = null;
        }
    }
}

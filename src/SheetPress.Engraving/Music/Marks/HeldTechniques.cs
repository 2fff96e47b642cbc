using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Palm mute and let ring of each event of a score as they last: a note that is tied on is played as it began.</summary>
internal sealed class HeldTechniques
{
    private readonly Dictionary<(int Measure, int Voice, int Event), (Articulations Before, Articulations Own, Articulations After)> _held = [];

    /// <summary>Reads a score.</summary>
    public HeldTechniques(Score score)
    {
        for (var voice = 0; voice < score.Measures.Max(m => m.Voices.Length); voice++)
        {
            var (before, last) = (Articulations.None, default((int, int, int)?));
            for (var measure = 0; measure < score.Measures.Length; measure++)
            {
                var events = voice < score.Measures[measure].Voices.Length ? score.Measures[measure].Voices[voice].Events : [];
                if (events.IsEmpty) (before, last) = (Articulations.None, null);
                for (var i = 0; i < events.Length; i++)
                {
                    var own = IsTiedOn(events[i]) ? before : events[i].Articulations & (Articulations.PalmMute | Articulations.LetRing);
                    if (last is { } earlier) _held[earlier] = _held[earlier] with { After = own };
                    _held[(measure, voice, i)] = (before, own, Articulations.None);
                    (before, last) = (own, (measure, voice, i));
                }
            }
        }
    }

    /// <summary>Whether a technique holds at the event before this one, at this one, and at the next.</summary>
    public (bool Before, bool Here, bool After) At(EventPlan e, Articulations kind) =>
        _held.TryGetValue((e.Origin.Measure, e.Origin.Voice, e.Origin.Event), out var held) ? (held.Before.HasFlag(kind), held.Own.HasFlag(kind), held.After.HasFlag(kind)) : default;

    /// <summary>Whether an event is the rest of a note that began before.</summary>
    public static bool IsTiedOn(ScoreEvent note) => !note.IsRest && note.Tones.All(t => t.TieStop);
}

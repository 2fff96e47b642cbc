using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Where an event stands: indexes of its measure, its voice and itself.</summary>
internal readonly record struct EventPlace(int Measure, int Voice, int Event);

/// <summary>A hammer-on, pull-off or slide from one tone to the next.</summary>
/// <param name="Kind">How they are joined.</param>
/// <param name="From">Where it starts.</param>
/// <param name="FromTone">Index of the tone there.</param>
/// <param name="To">Where it ends.</param>
/// <param name="ToTone">Index of the tone there.</param>
internal sealed record Join(Connection Kind, EventPlace From, int FromTone, EventPlace To, int ToTone);

/// <summary>The joins of an exercise, found from both of their ends. Tones of chords are joined along their strings.</summary>
internal sealed class Joins
{
    private readonly ILookup<EventPlace, Join> _starting;
    private readonly ILookup<EventPlace, Join> _ending;

    private Joins(List<Join> all)
    {
        _starting = all.ToLookup(j => j.From);
        _ending = all.ToLookup(j => j.To);
    }

    public IEnumerable<Join> StartingAt(EventPlace place) => _starting[place];

    public IEnumerable<Join> EndingAt(EventPlace place) => _ending[place];

    public static Joins Of(Score score)
    {
        var all = new List<Join>();
        var voices = score.Measures.Max(m => m.Voices.Length);
        for (var v = 0; v < voices; v++)
        {
            (EventPlace Place, ScoreEvent Event)? before = null;
            for (var m = 0; m < score.Measures.Length; m++)
            {
                if (v >= score.Measures[m].Voices.Length) { before = null; continue; }
                var events = score.Measures[m].Voices[v].Events;
                for (var e = 0; e < events.Length; e++)
                {
                    var here = (Place: new EventPlace(m, v, e), Event: events[e]);
                    if (before is { } b && b.Event.Connection != Connection.None) Connect(b.Place, b.Event, here.Place, here.Event, all);
                    before = here;
                }
            }
        }
        return new Joins(all);
    }

    private static void Connect(EventPlace from, ScoreEvent first, EventPlace to, ScoreEvent second, List<Join> all)
    {
        var found = false;
        for (var a = 0; a < first.Tones.Length; a++)
        {
            var b = SameString(first.Tones[a], second);
            if (b < 0 || first.Tones[a].Position == second.Tones[b].Position) continue;
            all.Add(new Join(first.Connection, from, a, to, b));
            found = true;
        }
        if (!found && !first.IsRest && !second.IsRest) all.Add(new Join(first.Connection, from, 0, to, 0));
    }

    private static int SameString(Tone tone, ScoreEvent other)
    {
        for (var i = 0; i < other.Tones.Length; i++)
            if (tone.Position is { } position && other.Tones[i].Position?.String == position.String) return i;
        return -1;
    }
}

using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Where an event stands: indexes of its measure, its voice and itself.</summary>
internal sealed record EventPlace(int Measure, int Voice, int Event);

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
    private static readonly List<Join> None = [];

    private readonly Dictionary<EventPlace, List<Join>> _starting = [];
    private readonly Dictionary<EventPlace, List<Join>> _ending = [];

    private Joins()
    {
    }

    public List<Join> StartingAt(EventPlace place) => _starting.GetValueOrDefault(place, None);

    public List<Join> EndingAt(EventPlace place) => _ending.GetValueOrDefault(place, None);

    public static Joins Of(Score score)
    {
        var joins = new Joins();
        for (var v = 0; v < 2; v++)
        {
            EventPlace? from = null;
            for (var m = 0; m < score.Measures.Length; m++)
            {
                if (v >= score.Measures[m].Voices.Length)
                {
                    from = null;
                    continue;
                }
                var events = score.Measures[m].Voices[v].Events;
                for (var e = 0; e < events.Length; e++)
                {
                    if (from is not null) joins.Connect(from, EventAt(score, from), new EventPlace(m, v, e), events[e]);
                    from = events[e].Connection == Connection.None ? null : new EventPlace(m, v, e);
                }
            }
        }
        return joins;
    }

    private static ScoreEvent EventAt(Score score, EventPlace place) => score.Measures[place.Measure].Voices[place.Voice].Events[place.Event];

    private void Connect(EventPlace from, ScoreEvent first, EventPlace to, ScoreEvent second)
    {
        var found = false;
        for (var a = 0; a < first.Tones.Length; a++)
        {
            var b = SameString(first.Tones[a], second);
            if (b < 0 || first.Tones[a].Position == second.Tones[b].Position) continue;
            Add(new Join(first.Connection, from, a, to, b));
            found = true;
        }
        if (!found && !first.IsRest && !second.IsRest) Add(new Join(first.Connection, from, 0, to, 0));
    }

    private void Add(Join join)
    {
        if (!_starting.TryGetValue(join.From, out var starting)) _starting.Add(join.From, starting = []);
        starting.Add(join);
        if (!_ending.TryGetValue(join.To, out var ending)) _ending.Add(join.To, ending = []);
        ending.Add(join);
    }

    private static int SameString(Tone tone, ScoreEvent other)
    {
        for (var i = 0; i < other.Tones.Length; i++)
            if (tone.Position is { } position && other.Tones[i].Position?.String == position.String) return i;
        return -1;
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>What is known of an exercise before its first note is written.</summary>
internal sealed class ExercisePlan
{
    public ExercisePlan(Score score, int index, ImmutableArray<StaffRole> staves, PartInstruments instruments)
    {
        Score = score;
        Index = index;
        Staves = staves;
        InstrumentId = instruments.IdForNotes(score.Instrument);
        Joins = Joins.Of(score);
        Accidentals = WrittenAccidentals.Of(score);
    }

    /// <summary>The exercise.</summary>
    public Score Score { get; }

    /// <summary>Its index in the file.</summary>
    public int Index { get; }

    /// <summary>The staves of the part and what each does here.</summary>
    public ImmutableArray<StaffRole> Staves { get; }

    /// <summary>The identifier that notes name their instrument by; null when the part has one instrument.</summary>
    public string? InstrumentId { get; }

    /// <summary>Hammer-ons, pull-offs and slides.</summary>
    public Joins Joins { get; }

    /// <summary>Which noteheads carry accidentals.</summary>
    public WrittenAccidentals Accidentals { get; }

    /// <summary>The staff that carries what is said once.</summary>
    public StaffRole Leading => Staves.First(s => s.Leads);

    /// <summary>The lowest staff shown.</summary>
    public StaffRole Lowest => Staves.Last(s => s.IsShown);

    /// <summary>Whether a place and the event before or after it in its voice are palm-muted: what starts and ends a "P.M." line.</summary>
    /// <returns>Whether a muted run starts here, and whether one ends here.</returns>
    public (bool Starts, bool Ends) MuteRun(EventPlace place)
    {
        if (!Muted(EventAt(place))) return (false, false);
        return (!Muted(Neighbour(place, -1)), !Muted(Neighbour(place, 1)));
    }

    private static bool Muted(ScoreEvent? e) => e is { IsRest: false } && e.Articulations.HasFlag(Articulations.PalmMute);

    private ScoreEvent EventAt(EventPlace place) => Score.Measures[place.Measure].Voices[place.Voice].Events[place.Event];

    private ScoreEvent? Neighbour(EventPlace place, int step)
    {
        var events = Score.Measures[place.Measure].Voices[place.Voice].Events;
        if (place.Event + step >= 0 && place.Event + step < events.Length) return events[place.Event + step];
        var measure = place.Measure + step;
        if (measure < 0 || measure >= Score.Measures.Length || place.Voice >= Score.Measures[measure].Voices.Length) return null;
        var voice = Score.Measures[measure].Voices[place.Voice];
        return step > 0 ? voice.Events[0] : voice.Events[^1];
    }
}

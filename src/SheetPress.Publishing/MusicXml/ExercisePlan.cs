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
        Mutes = MuteRuns.Of(score);
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

    /// <summary>Palm-muted runs.</summary>
    public MuteRuns Mutes { get; }

    /// <summary>The staff that carries what is said once.</summary>
    public StaffRole Leading => Staves.First(s => s.Leads);

    /// <summary>The lowest staff shown.</summary>
    public StaffRole Lowest => Staves.Last(s => s.IsShown);
}

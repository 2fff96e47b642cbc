using System.Globalization;

namespace SheetPress.Scores;

/// <summary>What a score must be true to.</summary>
public enum ScoreRule
{
    /// <summary>The events of a voice follow each other without gaps and fill the measure; a measure is no longer than its meter.</summary>
    MeasureAddsUp,
    /// <summary>A tuplet spans whole units, and its ratio is that of its events.</summary>
    TupletIsExact,
    /// <summary>A tie leads to the same pitch in the next event of the voice, and every tie that arrives has left somewhere.</summary>
    TieConnectsSamePitch,
    /// <summary>The string and fret of a tone exist and sound its pitch; the tones of an event lie on different strings.</summary>
    PositionSoundsPitch,
    /// <summary>Beams begin, continue and end in order at every level, with no more levels than the values have flags.</summary>
    BeamsAreBalanced,
    /// <summary>Tones of an event stand in order from low to high, none twice (save for a unison on two strings).</summary>
    TonesInOrder,
    /// <summary>A hammer-on leads to a higher tone, a pull-off to a lower one, and they and slides stay on a string and lead to a note.</summary>
    ConnectionLeadsOn,
    /// <summary>Marks and chord symbols lie within their measure and are in order.</summary>
    MarksInMeasure,
    /// <summary>Repeats are played at least twice and endings belong to a repeat.</summary>
    RepeatsMakeSense,
}

/// <summary>Something in a score that is not right.</summary>
/// <param name="Rule">The rule that is broken.</param>
/// <param name="MeasureIndex">Index of the measure.</param>
/// <param name="VoiceIndex">Index of the voice in the measure; 0 when the measure itself is meant.</param>
/// <param name="EventIndex">Index of the event in the voice; -1 when the measure itself is meant.</param>
/// <param name="Message">What is wrong, in one sentence.</param>
public sealed record ScoreFinding(ScoreRule Rule, int MeasureIndex, int VoiceIndex, int EventIndex, string Message)
{
    /// <summary>"measure 3, voice 1, event 2: ..." with everything counted from 1.</summary>
    public override string ToString() => EventIndex < 0
        ? string.Create(CultureInfo.InvariantCulture, $"measure {MeasureIndex + 1}: {Message}")
        : string.Create(CultureInfo.InvariantCulture, $"measure {MeasureIndex + 1}, voice {VoiceIndex + 1}, event {EventIndex + 1}: {Message}");
}

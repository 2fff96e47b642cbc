namespace SheetPress.Scores;

/// <summary>
/// An equation of two note values at a change of tempo: the left one, as long as it was before, is as long as the right one from here on.
/// That the left value is the old one is common practice (from memory).
/// </summary>
/// <param name="Before">The value in the measure before.</param>
/// <param name="After">The value that lasts as long from here on.</param>
public sealed record TempoEquation(NoteValue Before, NoteValue After)
{
    /// <summary>The tempo from here on, counted in the right value: as many of it a minute as of the left one before.</summary>
    /// <param name="tempo">The tempo before.</param>
    public Tempo From(Tempo tempo) => new(tempo.BeatsPerMinute * (tempo.Beat.Duration / Before.Duration).ToDouble(), After);
}

namespace SheetPress.Scores;

/// <summary>A tempo: so many beats a minute of a written value.</summary>
/// <param name="BeatsPerMinute">Beats a minute, above zero.</param>
/// <param name="Beat">The written value that is counted, such as a quarter or a dotted quarter.</param>
public sealed record Tempo(double BeatsPerMinute, NoteValue Beat)
{
    /// <summary>The same speed counted in quarter notes a minute, for playback.</summary>
    public double QuartersPerMinute => BeatsPerMinute * Beat.Duration.ToDouble();

    /// <summary>The tempo faster by a factor (slower below 1), in whole beats a minute, at least one.</summary>
    /// <param name="factor">The factor, above zero; 1 leaves the tempo as it is.</param>
    public Tempo Times(double factor) => factor == 1 ? this : this with { BeatsPerMinute = Math.Max(1, Math.Round(BeatsPerMinute * factor)) };
}

/// <summary>How pairs of equal written values are played.</summary>
public enum Feel
{
    /// <summary>As written.</summary>
    Straight,
    /// <summary>Pairs of eighths played long-short, 2:1.</summary>
    SwingEighths,
    /// <summary>Pairs of sixteenths played long-short, 2:1.</summary>
    SwingSixteenths,
}

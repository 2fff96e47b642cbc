namespace SheetPress.Scores;

/// <summary>What a score says about itself besides its measures.</summary>
public record ScoreHeader
{
    /// <summary>Name for files: lower-case words joined with hyphens.</summary>
    public required string Id { get; init; }

    /// <summary>Title of the exercise.</summary>
    public required string Title { get; init; }

    /// <summary>One line that says what to do; may be empty.</summary>
    public string Instruction { get; init; } = "";

    /// <summary>The instrument that plays.</summary>
    public required Instrument Instrument { get; init; }

    /// <summary>The tempo at the start.</summary>
    public required Tempo Tempo { get; init; }

    /// <summary>How pairs are played.</summary>
    public Feel Feel { get; init; }

    /// <summary>Which staves to show.</summary>
    public StaffLayout Layout { get; init; }

    /// <summary>Whether fretting fingers are shown.</summary>
    public bool ShowFingers { get; init; }

    /// <summary>Whether a staff alone shows on which string to play, where that changes.</summary>
    public bool ShowStrings { get; init; }

    /// <summary>Whether degree names stand in a row under the staff.</summary>
    public bool ShowDegrees { get; init; }

    /// <summary>Whether counting syllables stand in a row under the staff.</summary>
    public bool ShowCounts { get; init; }

    /// <summary>Whether roman numerals stand in a row under the staves.</summary>
    public bool ShowRomans { get; init; }

    /// <summary>Whether a chord chart shows the rhythm of the notes, in slashes, in place of one slash for each beat.</summary>
    public bool ShowRhythm { get; init; }

    /// <summary>Measures a system, when the author fixed them; null lets the page decide.</summary>
    public int? MeasuresPerSystem { get; init; }
}

namespace SheetPress.Scores;

/// <summary>Families of fretted instruments.</summary>
public enum InstrumentFamily
{
    /// <summary>Bass guitar.</summary>
    Bass,
    /// <summary>Guitar.</summary>
    Guitar,
    /// <summary>Ukulele.</summary>
    Ukulele,
    /// <summary>Mandolin.</summary>
    Mandolin,
    /// <summary>Tenor banjo.</summary>
    Banjo,
}

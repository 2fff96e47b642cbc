namespace SheetPress.Scores;

/// <summary>The clefs in use.</summary>
public enum Clef
{
    /// <summary>F clef on the fourth line.</summary>
    Bass,
    /// <summary>G clef on the second line.</summary>
    Treble,
    /// <summary>G clef with a small 8 below: it sounds an octave lower than a plain G clef reads.</summary>
    Treble8,
}

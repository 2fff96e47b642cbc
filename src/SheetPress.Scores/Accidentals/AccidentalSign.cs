namespace SheetPress.Scores;

/// <summary>Whether a notehead carries an accidental, and why.</summary>
public enum AccidentalSign
{
    /// <summary>No accidental: the signature or an earlier sign of the measure says it.</summary>
    None,
    /// <summary>The accidental is needed to read the pitch.</summary>
    Needed,
    /// <summary>Not needed by the rules, but players expect the reminder.</summary>
    Courtesy,
}

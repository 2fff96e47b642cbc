namespace SheetPress.Scores;

/// <summary>The part of an instrument that a problem is about.</summary>
public enum InstrumentPart
{
    /// <summary>The open strings.</summary>
    Tuning,
    /// <summary>The number of frets.</summary>
    Frets,
    /// <summary>The capo.</summary>
    Capo,
    /// <summary>The scale length.</summary>
    ScaleLength,
}

/// <summary>Why an instrument cannot be.</summary>
/// <param name="Part">The part that is wrong.</param>
/// <param name="Message">What is wrong and what would be right, in one or two sentences for a teacher.</param>
public sealed record InstrumentProblem(InstrumentPart Part, string Message);

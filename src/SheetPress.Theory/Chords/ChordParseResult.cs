namespace SheetPress.Theory;

/// <summary>What reading a chord symbol gave: a chord, "no chord", or an error with what to write instead.</summary>
public sealed record ChordParseResult
{
    /// <summary>The chord; null for "no chord" and on an error.</summary>
    public Chord? Chord { get; init; }

    /// <summary>Whether the symbol is one that people use in two ways, so that a reader should be told which was taken: C2, C4.</summary>
    public bool IsAmbiguous { get; init; }

    /// <summary>Whether the text says "no chord" (N.C.).</summary>
    public bool IsNoChord { get; init; }

    /// <summary>Whether the text could be read.</summary>
    public bool Success => Message is null;

    /// <summary>Index in the text where reading stopped, counted from 0; -1 when all was read. It can be the length of the text.</summary>
    public int ErrorIndex { get; init; } = -1;

    /// <summary>What is wrong there, as a clause without a full stop; null when nothing is.</summary>
    public string? Message { get; init; }

    /// <summary>A chord symbol that was probably meant, ready to be written instead; null when there is none near.</summary>
    public string? Suggestion { get; init; }
}

namespace SheetPress.Scores;

/// <summary>What the words of a D.C. or D.S. allow after it: common practice, "D.C. al Fine" does not go to the coda, "D.C. al Coda" does not end at a Fine.</summary>
public static class JumpWords
{
    /// <summary>Whether playing ends at a Fine after the jump.</summary>
    /// <param name="text">The words; empty for the bare jump, which allows both.</param>
    public static bool MayEnd(string text) => SaysFine(text) || !SaysCoda(text);

    /// <summary>Whether playing leaves for the coda after the jump.</summary>
    /// <param name="text">The words.</param>
    public static bool MayGoToCoda(string text) => SaysCoda(text) || !SaysFine(text);

    /// <summary>Whether the words ask for a Fine.</summary>
    /// <param name="text">The words.</param>
    public static bool SaysFine(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Contains("fine", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Whether the words ask for a coda.</summary>
    /// <param name="text">The words.</param>
    public static bool SaysCoda(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Contains("coda", StringComparison.OrdinalIgnoreCase);
    }
}

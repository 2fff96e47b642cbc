namespace SheetPress.Theory;

/// <summary>The kinds of twelve-bar blues.</summary>
public enum BluesKind
{
    /// <summary>A major or dominant tonic, and the dominant in the ninth or tenth bar.</summary>
    Major,
    /// <summary>A minor tonic.</summary>
    Minor,
    /// <summary>A major or dominant tonic, and a ii–V in place of the dominant in the ninth and tenth bars.</summary>
    Jazz,
}

/// <summary>A twelve-bar blues found in a progression.</summary>
/// <param name="Kind">What kind it is.</param>
/// <param name="FirstBar">Index of its first bar among those looked at, from 0; it has <see cref="Bars"/> of them.</param>
/// <param name="Markup">What to say about it, in full sentences, chords in square brackets as in <see cref="MarkedText"/>.</param>
public sealed record BluesForm(BluesKind Kind, int FirstBar, string Markup)
{
    /// <summary>How many bars it has.</summary>
    public const int Bars = 12;

    /// <summary>The sentences in plain text.</summary>
    public string Sentence => MarkedText.Plain(Markup);
}

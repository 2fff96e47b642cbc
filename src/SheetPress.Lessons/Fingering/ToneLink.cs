using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>How a tone depends on one of the event before.</summary>
internal enum ToneBond
{
    /// <summary>It is the same tone, which sounds on: it stays where it is.</summary>
    Held,
    /// <summary>A hammer-on or pull-off leads to it: it lies on the same string.</summary>
    SameString,
    /// <summary>A slide leads to it: it lies on the same string and is fretted.</summary>
    Slide,
}

/// <summary>A tone that depends on one of the event before, as where two voices are played by one hand.</summary>
/// <param name="Before">Index of the tone in the event before.</param>
/// <param name="Now">Index of the tone that depends on it.</param>
/// <param name="Bond">How.</param>
internal readonly record struct ToneLink(int Before, int Now, ToneBond Bond)
{
    /// <summary>Whether two places satisfy it.</summary>
    public bool Allows(FretPosition from, FretPosition to) => Bond == ToneBond.Held ? from == to : from.String == to.String && (Bond != ToneBond.Slide || to.Fret > 0);
}

using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Reads rhythms, given as note values or as counted syllables.</summary>
public static class RhythmReader
{
    /// <summary>Reads note values; see <see cref="ValueReader"/> for how they are written.</summary>
    /// <param name="text">The rhythm as written.</param>
    /// <param name="meter">The meter it has to fill.</param>
    /// <param name="bag">Where problems go.</param>
    /// <returns>The pattern, as short as it can be repeated; null with the reasons reported.</returns>
    public static RhythmPattern? ReadValues(LocatedText text, Meter meter, DiagnosticBag bag) => new ValueReader(meter, bag).Read(text);

    /// <summary>Reads counted syllables; see <see cref="CountReader"/> for how they are written.</summary>
    /// <param name="text">The rhythm as written.</param>
    /// <param name="meter">The meter it has to fill.</param>
    /// <param name="bag">Where problems go.</param>
    /// <returns>The pattern, in whole bars; null with the reasons reported.</returns>
    public static RhythmPattern? ReadCounts(LocatedText text, Meter meter, DiagnosticBag bag) => new CountReader(meter, bag).Read(text);
}

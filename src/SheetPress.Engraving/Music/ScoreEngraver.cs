using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Turns a score into systems of marks.</summary>
public static class ScoreEngraver
{
    /// <summary>Engraves a score.</summary>
    /// <param name="score">The score.</param>
    /// <param name="lineWidth">Width of a full system in staff spaces, from the left end of the staff to its right end.</param>
    /// <param name="options">Choices of the page.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width cannot hold a measure: below 20 staff spaces.</exception>
    public static EngravedScore Engrave(Score score, double lineWidth, EngravingOptions options) => throw new NotImplementedException();
}

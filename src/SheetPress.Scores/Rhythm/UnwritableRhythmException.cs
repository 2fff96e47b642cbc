namespace SheetPress.Scores;

/// <summary>A rhythm that no note values from whole to sixty-fourth and no tuplets of 3, 5, 6 or 7 can write.</summary>
public sealed class UnwritableRhythmException : Exception
{
    /// <summary>Index of the measure in the frame; 0 for a rhythm spelled on its own.</summary>
    public int MeasureIndex { get; }

    /// <summary>Makes the exception.</summary>
    public UnwritableRhythmException(string message, int measureIndex = 0, Exception? inner = null)
        : base(message, inner) => MeasureIndex = measureIndex;
}

using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>A measure in the order of playing.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Start">Start in quarter notes from the start of the performance.</param>
/// <param name="Offset">Where in a full measure it starts.</param>
/// <param name="WrittenStart">Start in quarter notes from the start of the score as written.</param>
/// <param name="Tempo">Tempo at its start.</param>
internal readonly record struct PlayedMeasure(Measure Measure, Fraction Start, Fraction Offset, Fraction WrittenStart, Tempo Tempo)
{
    public Fraction End => Start + Measure.Length;
}

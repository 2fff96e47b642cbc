using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>Where a measure of the frame stands: its number, its place in the line and in a full measure.</summary>
/// <param name="Number">Number shown; 0 for a pickup.</param>
/// <param name="Start">Start in quarter notes from the start of the line.</param>
/// <param name="Offset">Quarter notes of a full measure that are missing before it.</param>
internal readonly record struct MeasurePlan(int Number, Fraction Start, Fraction Offset)
{
    /// <summary>
    /// Numbers the measures of a frame. A short first measure is a pickup: it is number 0 and fills the end of a bar. Two short
    /// measures that make a full one between them are one bar divided by a repeat or double bar: they share a number. Any other
    /// short measure (the last one that completes a pickup) fills the start of a bar.
    /// </summary>
    /// <exception cref="ArgumentException">A measure is empty or longer than its meter.</exception>
    public static ImmutableArray<MeasurePlan> Of(IReadOnlyList<FrameMeasure> frame)
    {
        var plans = ImmutableArray.CreateBuilder<MeasurePlan>(frame.Count);
        var number = 0;
        var at = Fraction.Zero;
        var opensDivided = false;
        for (var i = 0; i < frame.Count; i++)
        {
            var measure = frame[i];
            var full = measure.Meter.MeasureLength;
            if (measure.Length <= Fraction.Zero || measure.Length > full) throw new ArgumentException($"Measure {i + 1} of the frame lasts {measure.Length} quarter notes, and {measure.Meter} holds {full}.", nameof(frame));
            var offset = Fraction.Zero;
            var isShort = measure.Length < full;
            if (isShort && i == 0 && frame.Count > 1)
            {
                offset = full - measure.Length;
            }
            else if (isShort && opensDivided && measure.EndingStart.IsEmpty && frame[i - 1].Length + measure.Length == full && frame[i - 1].Meter == measure.Meter)
            {
                offset = frame[i - 1].Length;
                opensDivided = false;
            }
            else
            {
                number++;
                opensDivided = isShort;
            }
            plans.Add(new MeasurePlan(number, at, offset));
            at += measure.Length;
        }
        return plans.MoveToImmutable();
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>Writes barlines with their repeats and endings.</summary>
internal sealed class BarlineWriter(XmlOutput xml)
{
    private string? _ending;

    /// <summary>Whether a measure just begun stands under an ending bracket.</summary>
    public bool IsInEnding => _ending is not null;

    /// <summary>The left edge of a measure, where a repeat or an ending starts.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="repeatStart">Whether a repeat starts here.</param>
    public void WriteLeft(Measure measure, bool repeatStart)
    {
        if (!measure.EndingStart.IsEmpty) _ending = Numbers(measure.EndingStart);
        if (!repeatStart && measure.EndingStart.IsEmpty) return;
        xml.Open("barline", ("location", "left"));
        if (repeatStart) xml.Leaf("bar-style", "heavy-light");
        if (!measure.EndingStart.IsEmpty) xml.Leaf("ending", Label(measure.EndingStart), ("number", _ending), ("type", "start"));
        if (repeatStart) xml.Empty("repeat", ("direction", "forward"));
        xml.Close();
    }

    /// <summary>The right edge of a measure.</summary>
    public void WriteRight(Measure measure)
    {
        var repeats = measure.RepeatEndTimes > 0;
        var stops = measure.EndingStop && _ending is not null;
        var style = repeats ? "light-heavy" : measure.Barline switch
        {
            Barline.Double => "light-light",
            Barline.Final => "light-heavy",
            Barline.None => "none",
            _ => null,
        };
        if (style is null && !stops) return;
        xml.Open("barline", ("location", "right"));
        if (style is not null) xml.Leaf("bar-style", style);
        if (stops) xml.Empty("ending", ("number", _ending), ("type", measure.EndingClosed ? "stop" : "discontinue"));
        if (repeats) xml.Empty("repeat", ("direction", "backward"), ("times", measure.RepeatEndTimes > 2 ? XmlOutput.Number(measure.RepeatEndTimes) : null));
        xml.Close();
        if (stops) _ending = null;
    }

    private static string Numbers(ImmutableArray<int> numbers) => string.Join(", ", numbers.Select(n => XmlOutput.Number(n)));

    private static string Label(ImmutableArray<int> numbers) => string.Join(", ", numbers.Select(n => XmlOutput.Number(n) + "."));
}

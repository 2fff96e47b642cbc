using SheetPress.Scores;

namespace SheetPress.Publishing;

/// <summary>
/// Numbers of measures. Within a part they have to differ (MusicXML 4.0, measure-attributes), so those of later exercises count on;
/// "text" says what to print: each exercise from 1. Pickups and second halves of split measures are implicit: 0 at the very start, else X1, X2.
/// </summary>
internal sealed class MeasureNumbers
{
    private int _offset;
    private int _highest;
    private int _implicit;
    private int _before;
    private bool _first = true;

    /// <summary>Begins an exercise.</summary>
    public void BeginExercise()
    {
        _offset = _highest;
        _before = 0;
    }

    /// <summary>The attributes of the next measure.</summary>
    public (string Number, string? Text, bool IsImplicit) Next(Measure measure)
    {
        var isFirst = _first;
        _first = false;
        if (measure.Number <= _before)
        {
            if (isFirst) return ("0", null, true);
            _implicit++;
            return ("X" + XmlOutput.Number(_implicit), null, true);
        }
        _before = measure.Number;
        _highest = _offset + measure.Number;
        return (XmlOutput.Number(_highest), _offset == 0 ? null : XmlOutput.Number(measure.Number), false);
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Lays out the boundaries between measures.</summary>
internal sealed class BoundaryBuilder(Score score)
{
    // Distances between the signs at the start of a system and after a barline, after the usual practice of about one space.
    private const double ClefIndent = 0.8;
    private const double AfterClef = 1.0;
    private const double AfterKey = 1.0;
    private const double AfterMeter = 1.0;
    private const double AfterBarline = 0.9;
    private const double BeforeBarline = 0.6;

    // Courtesy signs keep this much of the staff beyond them.
    private const double AfterCourtesy = 0.5;

    private bool HasStaff => score.Layout != StaffLayout.Tab;
    private bool HasTab => score.Layout is StaffLayout.StaffAndTab or StaffLayout.Tab;

    /// <summary>The start of a system with its clef, key, meter where it starts, and repeat.</summary>
    public Boundary Start(MeasureContext right)
    {
        var pen = new BoundaryPen();
        var origin = Origin(right.Index);
        pen.X = ClefIndent;
        if (HasStaff) pen.Sign(0, [ClefSigns.Of(right.Clef, false, origin)]);
        if (HasTab) pen.SignAtSameX(1, ClefSigns.Tab(score.Instrument.StringCount, origin with { Staff = 1 }), ClefIndent);
        if (HasStaff && right.Measure.Key.Fifths != 0)
        {
            pen.X += AfterClef;
            pen.Sign(0, KeySignatureSigns.Of(right.Measure.Key.Fifths, 0, right.Clef, origin));
        }
        if (right.MeterStarts)
        {
            pen.X += AfterKey;
            AddMeter(pen, right.Measure.Meter, origin);
        }
        if (right.Measure.RepeatStart)
        {
            pen.X += AfterMeter;
            pen.RepeatStart();
        }
        return pen.Build(isStart: true);
    }

    /// <summary>A boundary within a system.</summary>
    public Boundary Between(MeasureContext left, MeasureContext right)
    {
        var pen = new BoundaryPen();
        ClefBefore(pen, right);
        var startsHere = right.Measure.RepeatStart;
        var signsFollow = (right.KeyChanges && HasStaff) || right.MeterStarts;
        if (left.LastMeasure.RepeatEndTimes > 0) pen.RepeatEnd(startsHere && !signsFollow);
        else if (startsHere && !signsFollow) pen.RepeatStart();
        else AddBarline(pen, left.LastMeasure.Barline);
        pen.BarlineDone();
        AddChanges(pen, right, AfterBarline);
        if (startsHere && signsFollow)
        {
            pen.X += AfterMeter;
            pen.RepeatStart();
        }
        return pen.Build(isStart: false);
    }

    /// <summary>The end of a system, with courtesy signs for what changes in the measure that follows on the next one.</summary>
    /// <param name="left">The last measure.</param>
    /// <param name="right">The measure that begins the next system; null at the end of the score.</param>
    public Boundary End(MeasureContext left, MeasureContext? right)
    {
        var pen = new BoundaryPen();
        if (right is not null) ClefBefore(pen, right);
        if (left.LastMeasure.RepeatEndTimes > 0) pen.RepeatEnd(false);
        else AddBarline(pen, left.LastMeasure.Barline);
        pen.BarlineDone();
        if (right is null) return pen.Build(isStart: false);
        var bar = pen.X;
        AddChanges(pen, right, AfterBarline);
        if (pen.X > bar) pen.Reserve(AfterCourtesy);
        return pen.Build(isStart: false);
    }

    private void ClefBefore(BoundaryPen pen, MeasureContext right)
    {
        if (!HasStaff || !right.ClefChanges) return;
        var clef = ClefSigns.Of(right.Clef, true, Origin(right.Index));
        pen.SignBefore(0, clef, BeforeBarline);
    }

    private void AddChanges(BoundaryPen pen, MeasureContext right, double gap)
    {
        if (right.KeyChanges && HasStaff)
        {
            pen.X += gap;
            gap = AfterKey;
            pen.Sign(0, KeySignatureSigns.Of(right.Measure.Key.Fifths, right.KeyBefore!.Fifths, right.Clef, Origin(right.Index)));
        }
        if (right.MeterStarts)
        {
            pen.X += gap;
            AddMeter(pen, right.Measure.Meter, Origin(right.Index));
        }
    }

    // With both staves the meter stands in the upper one only.
    private void AddMeter(BoundaryPen pen, Meter meter, MarkOrigin origin)
    {
        if (HasStaff) pen.Sign(0, MeterSigns.OnStaff(meter, origin));
        else pen.Sign(1, MeterSigns.OnTab(meter, score.Instrument.StringCount, origin with { Staff = 1 }));
    }

    private static void AddBarline(BoundaryPen pen, Barline barline)
    {
        var defaults = Ink.Defaults;
        switch (barline)
        {
            case Barline.Single:
                pen.Stroke(defaults.ThinBarlineThickness);
                break;
            case Barline.Double:
                pen.Stroke(defaults.ThinBarlineThickness);
                pen.X += defaults.BarlineSeparation;
                pen.Stroke(defaults.ThinBarlineThickness);
                break;
            case Barline.Final:
                pen.Stroke(defaults.ThinBarlineThickness);
                pen.X += defaults.BarlineSeparation;
                pen.Stroke(defaults.ThickBarlineThickness);
                break;
            default:
                break;
        }
    }

    private static MarkOrigin Origin(int measure) => new(-1, measure, 0, -1);
}

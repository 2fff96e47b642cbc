namespace SheetPress.Scores;

/// <summary>Which measures are printed as the sign for the measure before.</summary>
internal static class MeasureRepeats
{
    /// <summary>Whether a measure is asked to be a repeat of the one before and is one, note by note.</summary>
    public static bool IsOne(StaffLayout layout, FrameMeasure frame, MeasurePlan plan, Line line, Measure before, Measure measure)
    {
        var isAsked = layout == StaffLayout.ChordChart ? frame.RepeatsPrevious : IsSimile(line, plan.Start, plan.Start + measure.Length);
        return isAsked && !frame.RepeatStart && frame.EndingStart.IsEmpty && before.RepeatEndTimes == 0
            && before.Meter == measure.Meter && before.Length == measure.Length && before.Key == measure.Key && measure.ClefChange is null
            && (layout == StaffLayout.ChordChart ? SameChords(before, measure) : SameNotes(before, measure));
    }

    private static bool IsSimile(Line line, Fraction start, Fraction end)
    {
        var any = false;
        foreach (var note in line.Notes)
        {
            if (note.Start < start || note.Start >= end) continue;
            if (!note.IsSimile) return false;
            any = true;
        }
        return any;
    }

    private static bool SameChords(Measure before, Measure measure)
    {
        if (before.Harmonies.Length != measure.Harmonies.Length) return false;
        for (var i = 0; i < measure.Harmonies.Length; i++)
        {
            if (before.Harmonies[i].Offset != measure.Harmonies[i].Offset || before.Harmonies[i].Chord != measure.Harmonies[i].Chord) return false;
        }
        return true;
    }

    // What the sign says is what is heard and how it is struck; another place on the neck is no other measure.
    private static bool SameNotes(Measure before, Measure measure)
    {
        if (before.Voices.Length != 1 || measure.Voices.Length != 1) return false;
        var (first, second) = (before.Voices[0].Events, measure.Voices[0].Events);
        if (first.Length != second.Length) return false;
        for (var i = 0; i < first.Length; i++)
        {
            var (a, b) = (first[i], second[i]);
            if (a.Onset != b.Onset || a.Value != b.Value || a.Stroke != b.Stroke || a.Articulations != b.Articulations || a.BendHalfSteps != b.BendHalfSteps || a.Tones.Length != b.Tones.Length) return false;
            for (var t = 0; t < a.Tones.Length; t++)
            {
                var (x, y) = (a.Tones[t], b.Tones[t]);
                if (x.Pitch != y.Pitch || x.Head != y.Head || x.TieStop || y.TieStop || x.TieStart || y.TieStart) return false;
            }
        }
        return true;
    }
}

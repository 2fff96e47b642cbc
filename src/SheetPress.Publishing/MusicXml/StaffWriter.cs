using SheetPress.Scores;
using SheetPress.Theory;

namespace SheetPress.Publishing;

/// <summary>Writes the staves of a measure voice by voice, going back to its start for each, with the marks of the measure where they fall.</summary>
internal sealed class StaffWriter(XmlOutput xml, ExercisePlan plan, Divisions divisions, DirectionWriter directions, HarmonyWriter harmonies, NoteWriter notes)
{
    public void Write(int measureIndex, Pitch middleLine)
    {
        var measure = plan.Score.Measures[measureIndex];
        var written = 0L;
        foreach (var role in plan.Staves)
        {
            var voices = role.IsShown || role.Sounds ? measure.Voices.Length : 1;
            for (var v = 0; v < voices; v++)
            {
                if (written > 0)
                {
                    xml.Open("backup");
                    xml.Leaf("duration", written);
                    xml.Close();
                }
                written = divisions.Count(WriteVoice(measure, measureIndex, v, role, middleLine));
            }
        }
    }

    // Writes one voice and gives the time it took.
    private Fraction WriteVoice(Measure measure, int measureIndex, int voice, StaffRole role, Pitch middleLine)
    {
        var marks = role.Leads ? MarksOf(measure, voice) : [];
        var events = measure.Voices[voice].Events;
        var isSilent = events is [{ MeasureRest: not null }] || !(role.IsShown || role.Sounds);
        if (isSilent)
        {
            var atEnd = WriteMarks(marks, 0, Fraction.Zero, measure.Length);
            notes.WriteMeasureRest(measure, voice, role);
            WriteMarks(marks, atEnd, measure.Length, null);
            return measure.Length;
        }
        var at = Fraction.Zero;
        var next = 0;
        for (var e = 0; e < events.Length; e++)
        {
            var place = new EventPlace(measureIndex, voice, e);
            var end = at + events[e].Duration;
            next = WriteMarks(marks, next, at, end);
            var (starts, ends) = role.Frets ? plan.Mutes.At(place) : (false, false);
            if (starts) directions.WriteMute(starts: true, lasts: !ends, voice, role);
            notes.Write(place, role, middleLine);
            if (ends && !starts) directions.WriteMute(starts: false, lasts: true, voice, role);
            at = end;
        }
        WriteMarks(marks, next, at, null);
        return at;
    }

    // The marks written with a voice in order of time, the upper having all but those of the lower; at one point in time directions come before chord symbols, each as listed.
    private static List<Mark> MarksOf(Measure measure, int voice)
    {
        var marks = new List<Mark>();
        foreach (var direction in measure.Directions) if (Math.Min(direction.Voice ?? 0, measure.Voices.Length - 1) == voice) Insert(marks, new Mark(direction.Offset, direction, null));
        if (voice == 0) foreach (var harmony in measure.Harmonies) Insert(marks, new Mark(harmony.Offset, null, harmony));
        return marks;
    }

    private static void Insert(List<Mark> marks, Mark mark)
    {
        var at = marks.Count;
        while (at > 0 && marks[at - 1].Offset > mark.Offset) at--;
        marks.Insert(at, mark);
    }

    // Writes the marks from an index on that fall before a time, at the present time "at"; gives the index of the first left over.
    private int WriteMarks(List<Mark> marks, int next, Fraction at, Fraction? before)
    {
        for (; next < marks.Count && (before is null || marks[next].Offset < before); next++)
        {
            var later = divisions.Count(marks[next].Offset - at);
            if (marks[next].Direction is { } direction) directions.Write(direction, later);
            if (marks[next].Harmony is { } harmony) harmonies.Write(harmony, later);
        }
        return next;
    }

    private sealed record Mark(Fraction Offset, Direction? Direction, HarmonyMark? Harmony);
}

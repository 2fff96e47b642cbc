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
        var marks = role.Leads && voice == 0 ? MarksOf(measure) : [];
        var events = measure.Voices[voice].Events;
        var isSilent = events is [{ MeasureRest: not null }] || !(role.IsShown || role.Sounds);
        if (isSilent)
        {
            WriteMarks(marks, 0, Fraction.Zero, measure.Length);
            notes.WriteMeasureRest(measure, voice, role);
            WriteMarks(marks, FirstFrom(marks, measure.Length), measure.Length, null);
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

    private static List<(Fraction Offset, Direction? Direction, HarmonyMark? Harmony)> MarksOf(Measure measure)
    {
        var marks = new List<(Fraction Offset, Direction? Direction, HarmonyMark? Harmony)>();
        foreach (var direction in measure.Directions) marks.Add((direction.Offset, direction, null));
        foreach (var harmony in measure.Harmonies) marks.Add((harmony.Offset, null, harmony));
        // A stable sort: at one point in time directions come before chord symbols, as listed.
        return [.. marks.OrderBy(m => m.Offset)];
    }

    private static int FirstFrom(List<(Fraction Offset, Direction? Direction, HarmonyMark? Harmony)> marks, Fraction offset)
    {
        var index = marks.FindIndex(m => m.Offset >= offset);
        return index < 0 ? marks.Count : index;
    }

    // Writes the marks from an index on that fall before a time, at the present time "at"; gives the index of the first left over.
    private int WriteMarks(List<(Fraction Offset, Direction? Direction, HarmonyMark? Harmony)> marks, int next, Fraction at, Fraction? before)
    {
        for (; next < marks.Count && (before is null || marks[next].Offset < before); next++)
        {
            var (offset, direction, harmony) = marks[next];
            var later = divisions.Count(offset - at);
            if (direction is not null) directions.Write(direction, later);
            if (harmony is not null) harmonies.Write(harmony, later);
        }
        return next;
    }
}

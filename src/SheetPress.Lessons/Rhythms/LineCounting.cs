using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>Gives notes that were not written by counting the syllables they are counted with.</summary>
internal static class LineCounting
{
    /// <summary>The line with a syllable at each note that has a usual one.</summary>
    /// <param name="line">The line; syllables that it has stay.</param>
    /// <param name="measures">The measures it is written into. A first one that is short is a pickup: its last beat is the last of a full measure.</param>
    public static Line Counted(this Line line, ImmutableArray<FrameMeasure> measures)
    {
        var notes = line.Notes.ToBuilder();
        var (at, start) = (0, Fraction.Zero);
        for (var i = 0; i < measures.Length; i++)
        {
            var (meter, end) = (measures[i].Meter, start + measures[i].Length);
            var zero = i == 0 ? end - meter.MeasureLength : start;
            var places = line.Notes.Where(n => n.Start < end && n.Start + n.Duration > start).Select(n => (n.Start - zero, n.Start + n.Duration - zero)).ToList();
            for (; at < notes.Count && notes[at].Start < end; at++)
            {
                if (notes[at].Count is null) notes[at] = notes[at] with { Count = Counting.SyllableAmong(meter, notes[at].Start - zero, places) };
            }
            start = end;
        }
        return line with { Notes = notes.ToImmutable() };
    }
}

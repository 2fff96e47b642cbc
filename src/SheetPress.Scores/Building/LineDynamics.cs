using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>Puts the loudness that is marked at the notes of a line into the measures of a frame.</summary>
internal static class LineDynamics
{
    /// <summary>The directions of each measure, in order.</summary>
    /// <remarks>
    /// Common practice: a hairpin runs to the next dynamic or hairpin; one that meets neither ends with the line. What is marked at
    /// the upper line alone, or the same at both, holds for both; else each voice has its own.
    /// </remarks>
    public static ImmutableArray<Direction>[] Of(Line line, Line? lower, IReadOnlyList<FrameMeasure> frame, ImmutableArray<MeasurePlan> plans)
    {
        var all = Of(line, frame, plans);
        if (lower is null || Of(lower, frame, plans) is not { } second || second.All(m => m.IsEmpty)) return all;
        if (all.Zip(second, (a, b) => a.SequenceEqual(b)).All(isSame => isSame)) return all;
        return [.. all.Zip(second, (a, b) => a.Select(d => d with { Voice = 0 }).Concat(b.Select(d => d with { Voice = 1 })).OrderBy(d => d.Offset).ToImmutableArray())];
    }

    private static ImmutableArray<Direction>[] Of(Line line, IReadOnlyList<FrameMeasure> frame, ImmutableArray<MeasurePlan> plans)
    {
        var found = new List<Direction>[frame.Count];
        for (var i = 0; i < found.Length; i++) found[i] = [];
        var isOpen = false;

        // The end of a measure belongs to it, the start of the next to that one.
        void Add(Fraction at, DirectionKind kind, string text = "")
        {
            var index = frame.Count - 1;
            while (index > 0 && (plans[index].Start > at || (kind == DirectionKind.HairpinStop && plans[index].Start == at))) index--;
            found[index].Add(new Direction(at - plans[index].Start, kind, text));
        }

        foreach (var note in line.Notes)
        {
            var starts = note.Hairpin is Hairpin.Crescendo or Hairpin.Diminuendo;
            if (isOpen && (note.Dynamic is not null || starts))
            {
                Add(note.Start, DirectionKind.HairpinStop);
                isOpen = false;
            }
            if (note.Dynamic is { } dynamic) Add(note.Start, DirectionKind.Dynamic, dynamic);
            if (starts)
            {
                Add(note.Start, note.Hairpin == Hairpin.Crescendo ? DirectionKind.CrescendoStart : DirectionKind.DiminuendoStart);
                isOpen = true;
            }
            if (note.Hairpin != Hairpin.Stop || !isOpen) continue;
            Add(note.End, DirectionKind.HairpinStop);
            isOpen = false;
        }
        if (isOpen) Add(line.Notes[^1].End, DirectionKind.HairpinStop);
        return [.. found.Select(d => d.ToImmutableArray())];
    }
}

using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Lessons;

/// <summary>
/// Undoes what a line joins over a barline that is never played through, such as the one between a first and a second ending: a note held there
/// is struck anew behind it, and no slide, hammer-on, pull-off or slur leads over it. Common practice (from memory): a tie into a second ending
/// would hold what was not sounding.
/// </summary>
internal static class UnplayedJoins
{
    /// <summary>The line without joins that are never played.</summary>
    /// <param name="line">The line.</param>
    /// <param name="measures">The measures it is written into.</param>
    public static Line WithoutUnplayedJoins(this Line line, ImmutableArray<FrameMeasure> measures)
    {
        if (line.Notes.IsEmpty || !measures.Any(m => !m.EndingStart.IsEmpty || m.Directions.Any(d => d.Kind is DirectionKind.DaCapo or DirectionKind.DalSegno))) return line;
        var notes = line.Notes;
        foreach (var cut in Cuts(measures)) notes = Parted(notes, cut);
        return line with { Notes = notes };
    }

    // Where a measure begins that is never reached from the one before it.
    private static IEnumerable<Fraction> Cuts(ImmutableArray<FrameMeasure> measures)
    {
        var order = PlaybackOrder.Of(ScoreBuilder.Empty(measures));
        var passed = order.Zip(order.Skip(1)).Where(p => p.Second == p.First + 1).Select(p => p.Second).ToHashSet();
        var start = Fraction.Zero;
        for (var i = 0; i < measures.Length; i++)
        {
            if (i > 0 && !passed.Contains(i)) yield return start;
            start += measures[i].Length;
        }
    }

    private static ImmutableArray<LineNote> Parted(ImmutableArray<LineNote> notes, Fraction cut)
    {
        var parted = ImmutableArray.CreateBuilder<LineNote>(notes.Length + 1);
        foreach (var note in notes)
        {
            if (note.Start >= cut || note.End <= cut)
            {
                parted.Add(note);
                continue;
            }
            parted.Add(note with { Duration = cut - note.Start, Articulations = note.Articulations & ~Articulations.Fermata, SlideOut = LooseSlide.None, SlurStop = false });
            parted.Add(note with { Start = cut, Duration = note.End - cut, SlideIn = LooseSlide.None, SlurStart = false, BendHalfSteps = null, Dynamic = null, Hairpin = Hairpin.None, Count = null });
        }
        var before = parted.Count(n => n.Start < cut);
        if (before == 0 || before == parted.Count) return parted.ToImmutable();
        parted[before - 1] = parted[before - 1] with { Connection = Connection.None };
        EndSlur(parted, before);
        return parted.ToImmutable();
    }

    // A slur that is open at the cut ends with the last note before it, and does not begin where that is its first.
    private static void EndSlur(ImmutableArray<LineNote>.Builder notes, int before)
    {
        var start = before - 1;
        while (start >= 0 && !notes[start].SlurStart && !notes[start].SlurStop) start--;
        if (start < 0 || !notes[start].SlurStart) return;
        notes[start] = notes[start] with { SlurStart = start < before - 1 };
        if (start < before - 1) notes[before - 1] = notes[before - 1] with { SlurStop = true };
        for (var i = before; i < notes.Count && !notes[i].SlurStart; i++)
        {
            if (!notes[i].SlurStop) continue;
            notes[i] = notes[i] with { SlurStop = false };
            break;
        }
    }
}

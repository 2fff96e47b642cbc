using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>
/// Breaks beams whose notes climb or fall over more than two octaves with no gap for a beam between them: at the widest leap, so
/// that no stem grows out of all proportion (handbook practice, from memory).
/// </summary>
internal static class WideBeams
{
    /// <summary>The voice with its widest groups broken.</summary>
    /// <param name="voice">A voice that has its staff to itself.</param>
    /// <param name="steps">Steps of each event, low to high; empty for a rest.</param>
    public static Voice Break(Voice voice, ImmutableArray<ImmutableArray<int>> steps)
    {
        var events = voice.Events;
        foreach (var group in BeamGroup.Of(voice)) events = Break(events, steps, group);
        return events == voice.Events ? voice : voice with { Events = events };
    }

    private static ImmutableArray<ScoreEvent> Break(ImmutableArray<ScoreEvent> events, ImmutableArray<ImmutableArray<int>> steps, BeamGroup group)
    {
        var notes = Enumerable.Range(group.First, group.Last - group.First + 1).Where(i => !steps[i].IsEmpty).ToList();
        if (notes.Count < 2) return events;
        var beams = notes.Max(i => events[i].Beams.Length);
        if (!KneedBeam.IsTooWide([.. notes.Select(i => steps[i])], beams) || KneedBeam.Split(steps, group, beams) is not null) return events;
        var at = WidestLeap(notes, steps);
        var (before, after) = (notes[at - 1], notes[at]);
        events = events.SetItem(before, Ended(events[before], isAlone: at == 1)).SetItem(after, Begun(events[after], isAlone: at == notes.Count - 1));
        events = Break(events, steps, new BeamGroup(group.First, before));
        return Break(events, steps, new BeamGroup(after, group.Last));
    }

    // The index among the notes of the one after the widest leap; of equal leaps the one nearest the middle.
    private static int WidestLeap(List<int> notes, ImmutableArray<ImmutableArray<int>> steps)
    {
        var (best, width) = (1, -1);
        for (var i = 1; i < notes.Count; i++)
        {
            var (a, b) = (steps[notes[i - 1]], steps[notes[i]]);
            var leap = Math.Max(b[0] - a[^1], a[0] - b[^1]);
            if (leap < width || (leap == width && Math.Abs((2 * i) - notes.Count) >= Math.Abs((2 * best) - notes.Count))) continue;
            (best, width) = (i, leap);
        }
        return best;
    }

    private static ScoreEvent Ended(ScoreEvent e, bool isAlone) => e with
    {
        Beams = isAlone ? [] : [.. e.Beams.Select(b => b switch
        {
            BeamState.Continue => BeamState.End,
            BeamState.Begin or BeamState.ForwardHook => BeamState.BackwardHook,
            _ => b,
        })],
    };

    private static ScoreEvent Begun(ScoreEvent e, bool isAlone) => e with
    {
        Beams = isAlone ? [] : [.. e.Beams.Select(b => b switch
        {
            BeamState.Continue => BeamState.Begin,
            BeamState.End or BeamState.BackwardHook => BeamState.ForwardHook,
            _ => b,
        })],
    };
}

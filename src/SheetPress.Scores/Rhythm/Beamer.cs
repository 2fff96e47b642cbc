using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>
/// Sets beams so that the beats show: eighths by the half bar of 4/4 and 2/2, by the bar of 2/4 and 3/4, by the beat of compound
/// meters and the groups of mixed ones; shorter values by the beat; tuplets of a beat and more as one. Rules of the engraving
/// handbooks (Read, Gould), from memory.
/// </summary>
public static class Beamer
{
    private static readonly Fraction HalfBeat = new(1, 2);

    /// <summary>The events of one voice with their beams set.</summary>
    /// <param name="meter">Meter in force.</param>
    /// <param name="offset">Where in a full measure this one starts, in quarter notes.</param>
    /// <param name="events">The events of the voice in order.</param>
    /// <param name="tuplets">Its tuplets.</param>
    public static ImmutableArray<ScoreEvent> Beam(Meter meter, Fraction offset, ImmutableArray<ScoreEvent> events, ImmutableArray<TupletSpan> tuplets) =>
        Beam(meter, MetricNode.OfMeter(meter), offset, events, tuplets);

    /// <summary>The same with the tree of the meter at hand.</summary>
    internal static ImmutableArray<ScoreEvent> Beam(Meter meter, MetricNode tree, Fraction offset, ImmutableArray<ScoreEvent> events, ImmutableArray<TupletSpan> tuplets)
    {
        var windows = BeamWindows.Of(meter, tree, offset, events, tuplets);
        var result = events.ToBuilder();
        var group = new List<int>();
        for (var i = 0; i < events.Length; i++)
        {
            if (!IsBeamable(events[i])) continue;
            group.Clear();
            group.Add(i);
            for (var next = NextOf(events, tuplets, windows, i); next > 0; next = NextOf(events, tuplets, windows, next)) group.Add(next);
            if (group.Count > 1) SetBeams(events, tuplets, offset, group, result);
            i = group[^1];
        }
        return result.MoveToImmutable();
    }

    private static bool IsBeamable(ScoreEvent e) => !e.IsRest && e.Value.Flags > 0;

    // The next note under the same beam, or 0. One short rest inside a beat or a tuplet is bridged; longer ones part the beam.
    private static int NextOf(ImmutableArray<ScoreEvent> events, ImmutableArray<TupletSpan> tuplets, BeamWindows windows, int index)
    {
        var next = index + 1;
        if (next < events.Length && events[next].IsRest && events[next].Value.Flags >= (OuterTupletOf(tuplets, next) is null ? 2 : 1)) next++;
        return next < events.Length && IsBeamable(events[next]) && windows[next] == windows[index] ? next : 0;
    }

    private static void SetBeams(ImmutableArray<ScoreEvent> events, ImmutableArray<TupletSpan> tuplets, Fraction offset, List<int> group, ImmutableArray<ScoreEvent>.Builder result)
    {
        var hasThirtySeconds = false;
        foreach (var index in group) hasThirtySeconds |= events[index].Value.Flags >= 3;
        for (var i = 0; i < group.Count; i++)
        {
            var flags = events[group[i]].Value.Flags;
            var beams = ImmutableArray.CreateBuilder<BeamState>(flags);
            for (var level = 1; level <= flags; level++)
            {
                var left = i > 0 && Joined(group[i - 1], group[i], level);
                var right = i + 1 < group.Count && Joined(group[i], group[i + 1], level);
                beams.Add((left, right) switch
                {
                    (true, true) => BeamState.Continue,
                    (true, false) => BeamState.End,
                    (false, true) => BeamState.Begin,
                    _ => HookOf(i, level),
                });
            }
            result[group[i]] = events[group[i]] with { Beams = beams.MoveToImmutable() };
        }

        bool Joined(int a, int b, int level)
        {
            if (level == 1) return true;
            for (var i = a; i <= b; i++) if (events[i].Value.Flags < level) return false;
            var tuplet = InnermostTupletOf(tuplets, b);
            if (InnermostTupletOf(tuplets, a) != tuplet) return false;
            return !(hasThirtySeconds && tuplet is null && (events[b].Onset + offset).IsMultipleOf(HalfBeat));
        }

        // A partial beam points into its group: inside it, toward the note whose unit it completes or opens.
        BeamState HookOf(int i, int level)
        {
            if (i == 0) return BeamState.ForwardHook;
            if (i == group.Count - 1) return BeamState.BackwardHook;
            var e = events[group[i]];
            var unit = new Fraction(4, 1L << (level + 1));
            return PositionOf(group[i]).IsMultipleOf(unit) ? BeamState.ForwardHook : BeamState.BackwardHook;
        }

        // Written time from the start of the tuplet, or sounding time in the full measure.
        Fraction PositionOf(int index)
        {
            if (InnermostTupletOf(tuplets, index) is not { } tuplet) return events[index].Onset + offset;
            return (events[index].Onset - events[tuplet.First].Onset) * new Fraction(events[index].Value.ActualNotes, events[index].Value.NormalNotes);
        }
    }

    internal static TupletSpan? OuterTupletOf(ImmutableArray<TupletSpan> tuplets, int index)
    {
        foreach (var tuplet in tuplets) if (tuplet.Level == 0 && tuplet.First <= index && index <= tuplet.Last) return tuplet;
        return null;
    }

    private static TupletSpan? InnermostTupletOf(ImmutableArray<TupletSpan> tuplets, int index)
    {
        TupletSpan? innermost = null;
        foreach (var tuplet in tuplets)
        {
            if (tuplet.First <= index && index <= tuplet.Last && (innermost is null || tuplet.Level > innermost.Value.Level)) innermost = tuplet;
        }
        return innermost;
    }
}

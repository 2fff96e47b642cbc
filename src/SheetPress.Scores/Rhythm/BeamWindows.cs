using System.Collections.Immutable;

namespace SheetPress.Scores;

/// <summary>The stretches of a measure that a beam may not leave, as a number for each event: events with the same number may share a beam.</summary>
internal sealed class BeamWindows
{
    private readonly int[] _numbers;
    private int _last;

    private BeamWindows(int count) => _numbers = new int[count];

    public int this[int index] => _numbers[index];

    public static BeamWindows Of(Meter meter, MetricNode tree, Fraction offset, ImmutableArray<ScoreEvent> events, ImmutableArray<TupletSpan> tuplets)
    {
        var windows = new BeamWindows(events.Length);
        windows.Visit(tree, GroupLimit(meter), offset, events, tuplets);
        windows.OpenTuplets(events, tuplets);
        return windows;
    }

    // Stated groups of eighths and shorter are never joined under one beam, whatever their length.
    private static Fraction GroupLimit(Meter meter) => meter.BeatUnit < 8 || meter.Groups.Length == 1 ? meter.MeasureLength : meter.UnitLength * meter.Groups.Max();

    private void Visit(MetricNode node, Fraction limit, Fraction offset, ImmutableArray<ScoreEvent> events, ImmutableArray<TupletSpan> tuplets)
    {
        var (first, last) = EventsIn(node, offset, events);
        if (last < first) return;
        if (node.Length <= limit && IsWindow(node, first, last, events, tuplets))
        {
            Number(first, last);
            if (node.IsSimpleTriple && node.Length > 2) SplitTriple(node, first, last, offset, events);
            return;
        }
        foreach (var child in node.Children) Visit(child, limit, offset, events, tuplets);
    }

    private static bool IsWindow(MetricNode node, int first, int last, ImmutableArray<ScoreEvent> events, ImmutableArray<TupletSpan> tuplets)
    {
        // A simple or compound beat, a stated group of eighths, or less.
        if (node.Length <= Fraction.One || (node.Shape == MetricShape.Equal && node.Children[0].Length < Fraction.One)) return true;
        if (node.Shape == MetricShape.Halves || node.HasTernaryParts) return false;
        if (node.Length > 2 && !(node.IsSimpleTriple && node.Length <= 3)) return false;
        // Longer windows are for plain eighths.
        for (var i = first; i <= last; i++)
        {
            if (events[i].Value.Flags > 1 || Beamer.OuterTupletOf(tuplets, i) is not null) return false;
        }
        return true;
    }

    // In 3/4 eighths run over the beats only from a beat to a beat; three in a row from an off-beat would look like 6/8.
    private void SplitTriple(MetricNode node, int first, int last, Fraction offset, ImmutableArray<ScoreEvent> events)
    {
        for (var i = first; i <= last;)
        {
            var end = i;
            while (end < last && !events[end].IsRest && events[end].Value.Flags > 0 && !events[end + 1].IsRest && events[end + 1].Value.Flags > 0) end++;
            var fromBeat = node.IsPartStart(events[i].Onset + offset);
            var to = events[end].End + offset;
            if (!fromBeat || !(to == node.End || node.IsPartStart(to)))
            {
                for (var j = i; j <= end; j++)
                {
                    if (node.IsPartStart(events[j].Onset + offset)) _last++;
                    _numbers[j] = _last;
                }
                _last++;
            }
            i = end + 1;
        }
    }

    // A tuplet that is longer than the window it starts in is one window.
    private void OpenTuplets(ImmutableArray<ScoreEvent> events, ImmutableArray<TupletSpan> tuplets)
    {
        foreach (var tuplet in tuplets)
        {
            if (tuplet.Level == 0 && _numbers[tuplet.First] != _numbers[tuplet.Last]) Number(tuplet.First, tuplet.Last);
        }
    }

    private static (int First, int Last) EventsIn(MetricNode node, Fraction offset, ImmutableArray<ScoreEvent> events)
    {
        var first = events.Length;
        var last = -1;
        for (var i = 0; i < events.Length; i++)
        {
            var onset = events[i].Onset + offset;
            if (onset < node.Start || onset >= node.End) continue;
            first = Math.Min(first, i);
            last = i;
        }
        return (first, last);
    }

    private void Number(int first, int last)
    {
        _last++;
        for (var i = first; i <= last; i++) _numbers[i] = _last;
    }
}

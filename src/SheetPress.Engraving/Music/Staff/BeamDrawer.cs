using System.Collections.Immutable;
using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws the beams of a group, level by level, as its beam states say.</summary>
internal static class BeamDrawer
{
    // A partial beam is as long as a notehead, or half the way to its neighbour when that is less.
    private const double HookLength = 1.18;

    /// <summary>Draws beams.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="events">Events of the group, rests included.</param>
    /// <param name="stemX">Middle of the stem of each event.</param>
    /// <param name="line">The outermost beam.</param>
    /// <param name="up">Whether the stems point up.</param>
    public static void Draw(StaffCanvas canvas, IReadOnlyList<PlacedEvent> events, Func<PlacedEvent, double> stemX, BeamLine line, bool up)
    {
        var pitch = Ink.Defaults.BeamThickness + Ink.Defaults.BeamSpacing;
        var levels = events.Max(e => e.Plan.Event.Beams.Length);
        var noted = events.Where(e => !e.Plan.Event.IsRest).ToList();
        for (var level = 0; level < levels; level++)
        {
            var offset = level * pitch * (up ? 1 : -1);
            PlacedEvent? from = null;
            for (var i = 0; i < noted.Count; i++)
            {
                var e = noted[i];
                if (e.Plan.Event.Beams.Length <= level) continue;
                switch (e.Plan.Event.Beams[level])
                {
                    case BeamState.Begin:
                        from = e;
                        break;
                    case BeamState.End when from is not null:
                        canvas.Add(Beam(stemX(from), stemX(e), line, offset, from.Plan.Origin));
                        from = null;
                        break;
                    case BeamState.ForwardHook:
                        canvas.Add(Beam(stemX(e), stemX(e) + Hook(noted, i, 1, stemX), line, offset, e.Plan.Origin));
                        break;
                    case BeamState.BackwardHook:
                        canvas.Add(Beam(stemX(e) - Hook(noted, i, -1, stemX), stemX(e), line, offset, e.Plan.Origin));
                        break;
                    default:
                        break;
                }
            }
        }
    }

    private static double Hook(List<PlacedEvent> events, int index, int direction, Func<PlacedEvent, double> stemX)
    {
        var neighbour = index + direction;
        if (neighbour < 0 || neighbour >= events.Count) return HookLength;
        return Math.Min(HookLength, Math.Abs(stemX(events[neighbour]) - stemX(events[index])) / 2);
    }

    private static PolygonMark Beam(double left, double right, BeamLine line, double offset, MarkOrigin origin)
    {
        var (half, stem) = (Ink.Defaults.BeamThickness / 2, Ink.Defaults.StemThickness / 2);
        left -= stem;
        right += stem;
        var (leftY, rightY) = (line.At(left) + offset, line.At(right) + offset);
        ImmutableArray<Point> corners = [new(left, leftY - half), new(right, rightY - half), new(right, rightY + half), new(left, leftY + half)];
        return new PolygonMark(corners) { Role = MarkRole.Beam, Origin = origin };
    }
}

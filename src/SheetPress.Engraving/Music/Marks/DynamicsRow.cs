using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws dynamics and hairpins on one line under a staff; where two voices have their own, those of the upper voice on one above it (common practice, from memory).</summary>
internal static class DynamicsRow
{
    private const double Drop = 2;
    private const double Rise = 1;
    private const double Gap = 0.6;

    // The number of a tuplet that stands nearer than this beside a dynamic would be read with it: the row goes beyond it.
    private const double SideGap = 0.8;
    private const double HairpinOpening = 1.1;
    private const double HairpinGap = 0.5;

    // The middle of a hairpin lies on the middle of small letters.
    private const double HairpinRise = 0.45;

    // A hairpin that goes on beyond the system is open, or not quite closed, at its end.
    private const double OpenShare = 0.4;
    private const double ShortestHairpin = 2;

    // From and To: whether it comes from the system before, goes on into the next.
    private readonly record struct Pin(DirectionKind Kind, double Left, double Right, bool From, bool To, MarkOrigin Origin);

    /// <summary>Draws the row of a system.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="canvas">The staff.</param>
    /// <param name="above">Whether it is the row above the staff, that of an upper voice with dynamics of its own.</param>
    /// <param name="edge">y of the top or bottom line (of the stems under a tab).</param>
    /// <param name="open">The hairpin of the row that is open at the start of the system, or null.</param>
    /// <param name="overBarlines">Whether barlines run through the row, as they do between staff and tab.</param>
    /// <param name="sizes">Sizes of text.</param>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, bool above, double edge, DirectionKind? open, bool overBarlines, TextSizes sizes)
    {
        var baseline = above ? edge - Rise : edge + Drop;
        var marks = new List<Mark>();
        var texts = new List<Box>();
        var pins = new List<Pin>();
        var (kind, start, origin) = (open, frame.Boundaries[0].Boundary.Right, new MarkOrigin(frame.Index, frame.Measures[0].Plan.Context.Index, 0, -1));
        var from = open is not null;
        foreach (var measure in frame.Measures)
        {
            foreach (var direction in measure.Plan.Context.Measure.Directions.Where(d => IsAbove(d) == above))
            {
                var x = measure.XAt(direction.Offset);
                var here = new MarkOrigin(frame.Index, measure.Plan.Context.Index, 0, -1);
                switch (direction.Kind)
                {
                    case DirectionKind.Dynamic when DirectionSymbols.Of(direction, sizes) is { } symbol:
                        var item = RowItem.Centred(symbol, x + (Ink.Glyph("noteheadBlack").Bounds.Right / 2), here);
                        if (overBarlines) item = item with { X = item.X + BarlineRoom.Move(frame, symbol.Bounds.Transform(1, item.X, 0)) };
                        marks.AddRange(item.MarksAt(baseline));
                        texts.Add(symbol.Bounds.Transform(1, item.X, 0));
                        break;
                    case DirectionKind.CrescendoStart or DirectionKind.DiminuendoStart:
                        (kind, start, origin, from) = (direction.Kind, x, here, false);
                        break;
                    case DirectionKind.HairpinStop when kind is { } ending:
                        pins.Add(new Pin(ending, start, direction.Offset >= measure.Plan.Length ? measure.InnerRight - HairpinGap : x, from, false, origin));
                        (kind, from) = (null, false);
                        break;
                    default:
                        break;
                }
            }
        }
        if (kind is { } unended) pins.Add(new Pin(unended, start, frame.Width, from, true, origin));
        for (var i = 0; i < pins.Count; i++)
        {
            var (least, most) = (i == 0 ? double.NegativeInfinity : pins[i - 1].Right + HairpinGap, i + 1 < pins.Count ? Math.Max(pins[i + 1].Left - HairpinGap, pins[i].Right) : frame.Width);
            pins[i] = Between(texts, least, most, pins[i]);
            marks.AddRange(Hairpin(pins[i], baseline - HairpinRise));
        }
        if (marks.Count > 0) canvas.Place(marks, above, Gap, SideGap);
    }

    /// <summary>The hairpin of a row that is open at the start of a measure, or null.</summary>
    public static DirectionKind? OpenAt(Score score, int measure, bool above)
    {
        for (var i = measure - 1; i >= 0; i--)
        {
            foreach (var direction in score.Measures[i].Directions.Reverse().Where(d => IsAbove(d) == above))
            {
                if (direction.Kind == DirectionKind.HairpinStop) return null;
                if (direction.Kind is DirectionKind.CrescendoStart or DirectionKind.DiminuendoStart) return direction.Kind;
            }
        }
        return null;
    }

    /// <summary>Whether a direction belongs in the row above the staff.</summary>
    public static bool IsAbove(Direction direction) => direction.Voice == 0;

    /// <summary>The room that dynamics, and the shortest hairpin behind them, take from their column in one row; null where there are none.</summary>
    /// <param name="directions">Directions of one column and row.</param>
    /// <param name="sizes">Sizes of text.</param>
    public static Box? Room(IEnumerable<Direction> directions, TextSizes sizes)
    {
        var (room, hasHairpin) = (Box.Empty, false);
        foreach (var direction in directions)
        {
            if (direction.Kind is DirectionKind.CrescendoStart or DirectionKind.DiminuendoStart) hasHairpin = true;
            else if (direction.Kind == DirectionKind.Dynamic && DirectionSymbols.Of(direction, sizes) is { } symbol) room = room.Union(symbol.Bounds.Transform(1, RowItem.Centred(symbol, Ink.Glyph("noteheadBlack").Bounds.Right / 2, MarkOrigin.None).X, 0));
        }
        if (!hasHairpin) return room.IsEmpty ? null : room;
        return room.IsEmpty ? new Box(0, 0, ShortestHairpin + HairpinGap, 0) : room with { Right = room.Right + HairpinGap + ShortestHairpin + HairpinGap };
    }

    // A hairpin between the texts and hairpins beside it, no shorter than can be seen.
    private static Pin Between(List<Box> texts, double least, double most, Pin pin)
    {
        var (left, right) = (Math.Max(pin.Left, least), Math.Min(pin.Right, most));
        foreach (var text in texts)
        {
            if (text.Left <= left + HairpinGap && text.Right > left - HairpinGap) left = text.Right + HairpinGap;
        }
        foreach (var text in texts)
        {
            if (text.Right <= left) least = Math.Max(least, text.Right + HairpinGap);
            else most = Math.Min(most, text.Left - HairpinGap);
        }
        right = Math.Min(Math.Max(right, left + ShortestHairpin), most);
        return pin with { Left = Math.Min(left, Math.Max(least, right - ShortestHairpin)), Right = right };
    }

    private static IEnumerable<LineMark> Hairpin(Pin pin, double y)
    {
        var (left, right) = (pin.Left, pin.Right);
        var grows = pin.Kind == DirectionKind.CrescendoStart;
        var (atLeft, atRight) = grows ? (pin.From ? OpenShare : 0, pin.To ? 1 - OpenShare : 1) : (pin.From ? 1 - OpenShare : 1, pin.To ? OpenShare : 0);
        for (var side = -1; side <= 1; side += 2)
        {
            yield return new LineMark(new Point(left, y + (side * atLeft * HairpinOpening / 2)), new Point(right, y + (side * atRight * HairpinOpening / 2)), Ink.Defaults.HairpinThickness) { Role = MarkRole.Dynamic, Origin = pin.Origin };
        }
    }
}

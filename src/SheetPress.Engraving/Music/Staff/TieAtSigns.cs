namespace SheetPress.Engraving;

/// <summary>
/// Takes a tie past the meter, key or clef between its notes (handbook practice, from memory): over the sign where a somewhat higher
/// arc clears it, else in two pieces, one on each side of the sign.
/// </summary>
internal static class TieAtSigns
{
    private const double Gap = 0.2;
    private const double MostLift = 0.8;
    private const double LiftStep = 0.1;
    private const double ShortestPiece = 0.5;

    /// <summary>The tie, or its pieces.</summary>
    /// <param name="canvas">The staff with its signs.</param>
    /// <param name="tie">The tie as it would be without them.</param>
    /// <param name="above">Whether it bulges upward.</param>
    /// <param name="shape">A tie between two places.</param>
    public static IEnumerable<CurveMark> Pass(StaffCanvas canvas, CurveMark tie, bool above, Func<double, double, CurveMark> shape)
    {
        var room = new InkRoom(canvas, tie.Start.X, tie.End.X, IsSign);
        for (var lift = 0.0; lift <= MostLift; lift += LiftStep)
        {
            if (Lifted(tie, above ? -lift : lift) is var lifted && room.IsFree(lifted, Gap)) return [lifted];
        }
        var signs = canvas.Marks.Where(m => IsSign(m) && m.Bounds.Right > tie.Start.X && m.Bounds.Left < tie.End.X).Select(m => m.Bounds).ToList();
        var (left, right) = (signs.Min(b => b.Left) - Gap, signs.Max(b => b.Right) + Gap);
        var pieces = new List<CurveMark>();
        if (left - tie.Start.X >= ShortestPiece) pieces.Add(shape(tie.Start.X, left));
        if (tie.End.X - right >= ShortestPiece) pieces.Add(shape(right, tie.End.X));
        return pieces;
    }

    private static bool IsSign(Mark mark) => mark.Role is MarkRole.Meter or MarkRole.KeySignature or MarkRole.Clef;

    private static CurveMark Lifted(CurveMark tie, double dy) =>
        tie with { Control1 = tie.Control1.Offset(0, dy / Arc.Reach), Control2 = tie.Control2.Offset(0, dy / Arc.Reach) };
}

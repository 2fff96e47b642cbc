namespace SheetPress.Engraving;

/// <summary>Breaks a line that passes other ink, as the lines of the tab are broken around their numbers.</summary>
internal static class LineGaps
{
    // White between the ink of a line and what it passes, and the shortest piece that still says something.
    private const double Gap = 0.2;
    private const double ShortestPiece = 0.4;

    /// <summary>The pieces of a line that keep clear of other ink; the whole line when it passes none.</summary>
    /// <param name="line">The line, from left to right.</param>
    /// <param name="passed">What it may pass.</param>
    public static IEnumerable<LineMark> Break(LineMark line, IEnumerable<Mark> passed)
    {
        var from = 0.0;
        foreach (var (enter, leave) in passed.Select(m => Passage(line, m.Bounds.Inflate(Gap + (line.Thickness / 2)))).Where(p => p.Enter < p.Leave).OrderBy(p => p.Enter))
        {
            if (Length(line, from, enter) >= ShortestPiece) yield return Piece(line, from, enter);
            from = Math.Max(from, leave);
        }
        if (from == 0) yield return line;
        else if (Length(line, from, 1) >= ShortestPiece) yield return Piece(line, from, 1);
    }

    // The share of the line that lies in a box, as two places between 0 and 1 (Liang and Barsky 1984).
    private static (double Enter, double Leave) Passage(LineMark line, Box box)
    {
        var (enter, leave) = (0.0, 1.0);
        void Clip(double start, double change, double low, double high)
        {
            if (change == 0)
            {
                if (start <= low || start >= high) leave = enter - 1;
                return;
            }
            var (a, b) = ((low - start) / change, (high - start) / change);
            (enter, leave) = (Math.Max(enter, Math.Min(a, b)), Math.Min(leave, Math.Max(a, b)));
        }
        Clip(line.From.X, line.To.X - line.From.X, box.Left, box.Right);
        Clip(line.From.Y, line.To.Y - line.From.Y, box.Top, box.Bottom);
        return (enter, leave);
    }

    private static double Length(LineMark line, double from, double to) => (to - from) * Math.Sqrt(Math.Pow(line.To.X - line.From.X, 2) + Math.Pow(line.To.Y - line.From.Y, 2));

    private static LineMark Piece(LineMark line, double from, double to) => line with { From = At(line, from), To = At(line, to) };

    private static Point At(LineMark line, double share) => new(line.From.X + ((line.To.X - line.From.X) * share), line.From.Y + ((line.To.Y - line.From.Y) * share));
}

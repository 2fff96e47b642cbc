namespace SheetPress.Lessons;

/// <summary>What a move of a walking line costs: steps are cheap, leaps dear, repeats and to-and-fro nearly forbidden.</summary>
internal static class WalkingCosts
{
    private const double Repeat = 60;
    private const double ToAndFro = 6;
    private const double Turn = 0.7;

    // By half steps, 0 to 12: a fifth or an octave is a natural leap, sixths and sevenths are not.
    private static ReadOnlySpan<double> Size => [Repeat, 0.3, 0, 0.5, 0.6, 0.9, 2.2, 1.2, 2.4, 2.4, 3.5, 6, 1.6];

    public static double Move(int beforeLast, int last, int next)
    {
        var move = next - last;
        var size = Math.Abs(move);
        var cost = size <= 12 ? Size[size] : 40 + size;
        if (beforeLast < 0) return cost;
        var moveBefore = last - beforeLast;
        if (next == beforeLast) cost += ToAndFro;
        // A leap is best followed by a move back; otherwise the line keeps its direction.
        if (Math.Abs(moveBefore) >= 6) cost += moveBefore * move > 0 ? 1.5 : 0;
        else if (moveBefore * move < 0) cost += Turn;
        return cost;
    }
}

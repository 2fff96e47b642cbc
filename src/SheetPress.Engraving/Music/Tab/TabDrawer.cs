using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Draws fret numbers and tab lines, which are broken around the numbers so that nothing has to be painted white.</summary>
internal static class TabDrawer
{
    // White between a number and the line it interrupts.
    private const double LineGap = 0.2;

    /// <summary>Draws lines and numbers.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, int strings, TextSizes sizes)
    {
        var numbers = new List<Mark>();
        var stopped = new HashSet<(int Measure, Fraction Onset, double Line)>();
        foreach (var e in frame.Events)
        {
            if (e.Plan.Event.IsRest) continue;
            foreach (var mark in FretNumbers.Of(e.Plan, sizes, showTied: frame.BeginsWith(e)))
            {
                // Both voices may stop the same string at the same moment: one number says so, also where their heads stand side by side.
                if (stopped.Add((e.Plan.Origin.Measure, e.Plan.Event.Onset, LineOf(mark)))) numbers.Add(mark.Transform(1, e.X, 0));
            }
        }
        DrawLines(frame, canvas, strings, numbers);
        canvas.AddAll(numbers);
    }

    // The line of the string that lies nearest.
    private static double LineOf(Mark number) => Math.Round((number.Bounds.Top + number.Bounds.Bottom) / 2 / FretNumbers.LineDistance);

    private static void DrawLines(SystemFrame frame, StaffCanvas canvas, int strings, List<Mark> numbers)
    {
        var origin = new MarkOrigin(frame.Index, -1, 1, -1);
        for (var s = 1; s <= strings; s++)
        {
            var y = FretNumbers.LineY(s);
            var x = 0.0;
            foreach (var box in numbers.Select(n => n.Bounds).Where(b => b.Top < y && y < b.Bottom).OrderBy(b => b.Left))
            {
                if (box.Left - LineGap > x) canvas.Add(Line(x, box.Left - LineGap, y, origin));
                x = Math.Max(x, box.Right + LineGap);
            }
            if (x < frame.Width) canvas.Add(Line(x, frame.Width, y, origin));
        }
    }

    private static LineMark Line(double left, double right, double y, MarkOrigin origin) =>
        Ink.Level(left, right, y, Ink.Defaults.StaffLineThickness, MarkRole.TabLine, origin);
}

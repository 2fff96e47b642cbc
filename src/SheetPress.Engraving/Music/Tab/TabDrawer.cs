namespace SheetPress.Engraving;

/// <summary>Draws fret numbers and tab lines, which are broken around the numbers so that nothing has to be painted white.</summary>
internal static class TabDrawer
{
    // White between a number and the line it interrupts.
    private const double LineGap = 0.18;

    /// <summary>Draws lines and numbers.</summary>
    public static void Draw(SystemFrame frame, StaffCanvas canvas, int strings, TextSizes sizes)
    {
        var numbers = new List<Mark>();
        foreach (var e in frame.Events)
        {
            if (e.Plan.Event.IsRest) continue;
            var isFirst = e.Measure == frame.Measures[0] && e.Plan.Event.Onset == Scores.Fraction.Zero;
            foreach (var mark in FretNumbers.Of(e.Plan, sizes, showTied: isFirst))
            {
                var number = mark.Transform(1, e.X, 0);
                // Both voices may stop the same string at the same moment: one number says so.
                if (!numbers.Exists(n => IsSame(n.Bounds, number.Bounds))) numbers.Add(number);
            }
        }
        DrawLines(frame, canvas, strings, numbers);
        canvas.AddAll(numbers);
    }

    // The brackets of a number reach down to the numbers of the next string: those are others.
    private static bool IsSame(Box a, Box b) => a.Overlaps(b) && Math.Abs(a.Top + a.Bottom - b.Top - b.Bottom) < FretNumbers.LineDistance;

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

namespace SheetPress.Engraving;

/// <summary>Draws barlines through all staves, repeat dots on each, and the bracket that joins them.</summary>
internal static class BarlineDrawer
{
    // The bracket stands this far left of the staff, and its line reaches this far into its ends.
    private const double BracketGap = 0.4;
    private const double BracketOverlap = 0.2;

    /// <summary>Draws barlines, the line at the left of joined staves, and the bracket.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="staves">Top and bottom line of each staff from the top of the system, and the two places of its repeat dots.</param>
    public static List<Mark> Draw(SystemFrame frame, IReadOnlyList<StaffSpan> staves)
    {
        var marks = new List<Mark>();
        var half = Ink.Defaults.StaffLineThickness / 2;
        var (top, bottom) = (staves[0].Top - half, staves[^1].Bottom + half);
        for (var i = 0; i < frame.Boundaries.Length; i++)
        {
            var (x, boundary) = frame.Boundaries[i];
            var origin = new MarkOrigin(frame.Index, MeasureIndex(frame, i), -1, -1);
            foreach (var stroke in boundary.Strokes)
            {
                marks.Add(Ink.Upright(x + stroke.Left + (stroke.Width / 2), top, bottom, stroke.Width, MarkRole.Barline, origin));
            }
            foreach (var dot in boundary.Dots)
            {
                foreach (var staff in staves)
                {
                    marks.Add(Ink.At("repeatDot", x + dot, staff.UpperDot, MarkRole.Barline, origin));
                    marks.Add(Ink.At("repeatDot", x + dot, staff.LowerDot, MarkRole.Barline, origin));
                }
            }
        }
        if (staves.Count > 1) AddBracket(marks, frame, top, bottom);
        return marks;
    }

    private static void AddBracket(List<Mark> marks, SystemFrame frame, double top, double bottom)
    {
        var defaults = Ink.Defaults;
        var origin = new MarkOrigin(frame.Index, -1, -1, -1);
        marks.Add(Ink.Upright(defaults.ThinBarlineThickness / 2, top, bottom, defaults.ThinBarlineThickness, MarkRole.Barline, origin));
        var left = -BracketGap - defaults.BracketThickness;
        // Without the overlap a seam would be seen on a screen.
        marks.Add(Ink.Upright(left + (defaults.BracketThickness / 2), top - BracketOverlap, bottom + BracketOverlap, defaults.BracketThickness, MarkRole.Bracket, origin));
        marks.Add(Ink.At("bracketTop", left, top, MarkRole.Bracket, origin));
        marks.Add(Ink.At("bracketBottom", left, bottom, MarkRole.Bracket, origin));
    }

    // A barline belongs to the measure it ends, the start of a system to its first measure.
    private static int MeasureIndex(SystemFrame frame, int boundary) =>
        frame.Measures[Math.Max(0, boundary - 1)].Plan.Context.LastIndex;
}

/// <summary>Where a staff lies in its system.</summary>
/// <param name="Top">Its top line.</param>
/// <param name="Bottom">Its bottom line.</param>
/// <param name="UpperDot">y of the upper repeat dot.</param>
/// <param name="LowerDot">y of the lower repeat dot.</param>
internal readonly record struct StaffSpan(double Top, double Bottom, double UpperDot, double LowerDot)
{
    /// <summary>A five-line staff.</summary>
    public static StaffSpan Staff(double top) => new(top, top + StaffSteps.BottomLine, top + StaffSteps.Middle - 0.5, top + StaffSteps.Middle + 0.5);

    /// <summary>A tab: its dots stand in the spaces on either side of the middle.</summary>
    public static StaffSpan Tab(double top, int strings)
    {
        var height = (strings - 1) * FretNumbers.LineDistance;
        var apart = strings % 2 == 0 ? FretNumbers.LineDistance : FretNumbers.LineDistance / 2;
        return new StaffSpan(top, top + height, top + (height / 2) - apart, top + (height / 2) + apart);
    }
}

namespace SheetPress.Engraving;

/// <summary>Draws staff lines and the clefs, keys and meters on them.</summary>
internal static class StaffDrawer
{
    /// <summary>The five lines over the whole width.</summary>
    public static void DrawLines(SystemFrame frame, StaffCanvas canvas)
    {
        var origin = new MarkOrigin(frame.Index, -1, 0, -1);
        for (var line = 0; line < 5; line++) canvas.Add(Ink.Level(0, frame.Width, line, Ink.Defaults.StaffLineThickness, MarkRole.StaffLine, origin));
    }

    /// <summary>Clefs, keys and meters of a staff.</summary>
    /// <param name="frame">The system.</param>
    /// <param name="staff">0 the staff, 1 the tab.</param>
    /// <param name="canvas">Where to.</param>
    public static void DrawSigns(SystemFrame frame, int staff, StaffCanvas canvas)
    {
        foreach (var (x, boundary) in frame.Boundaries)
        {
            foreach (var sign in boundary.Signs)
            {
                if (sign.Staff == staff) canvas.Add(sign.Mark.Transform(1, x, 0));
            }
        }
    }
}

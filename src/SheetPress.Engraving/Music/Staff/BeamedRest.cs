namespace SheetPress.Engraving;

/// <summary>Moves a rest under a beam out of its way, by whole spaces so that it still sits on the lines as rests do.</summary>
internal static class BeamedRest
{
    private const double Gap = 0.3;

    /// <summary>How far the rest has to move down (negative: up).</summary>
    /// <param name="rest">The rest.</param>
    /// <param name="notes">The notes of the group.</param>
    /// <param name="line">The outermost beam.</param>
    /// <param name="up">Whether the beam lies above.</param>
    public static double Drop(PlacedEvent rest, IReadOnlyList<PlacedEvent> notes, BeamLine line, bool up)
    {
        if (rest.Plan.Marks.IsEmpty) return 0;
        var ink = rest.Plan.Marks[0].Bounds.Transform(1, rest.X, 0);
        var beams = BeamsBeside(rest, notes);
        var depth = ((beams - 1) * (Ink.Defaults.BeamThickness + Ink.Defaults.BeamSpacing)) + (Ink.Defaults.BeamThickness / 2) + Gap;
        if (up)
        {
            var inner = Math.Max(line.At(ink.Left), line.At(ink.Right)) + depth;
            return Math.Max(0, Math.Ceiling(inner - ink.Top));
        }
        var upper = Math.Min(line.At(ink.Left), line.At(ink.Right)) - depth;
        return Math.Min(0, Math.Floor(upper - ink.Bottom));
    }

    /// <summary>The most beams beside a rest inside a group, stubs included.</summary>
    /// <param name="rest">The rest.</param>
    /// <param name="notes">The notes of the group.</param>
    public static int BeamsBeside(PlacedEvent rest, IReadOnlyList<PlacedEvent> notes)
    {
        PlacedEvent? before = null;
        foreach (var note in notes)
        {
            if (note.X > rest.X) return Math.Max(before?.Plan.Event.Beams.Length ?? 1, note.Plan.Event.Beams.Length);
            before = note;
        }
        return 1;
    }
}

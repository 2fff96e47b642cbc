namespace SheetPress.Engraving;

/// <summary>How far a beam rises from its first to its last note, after the handbooks (from memory): with the outer notes, but flat.</summary>
internal static class BeamSlope
{
    /// <summary>No beam rises more than this.</summary>
    public const double Most = 1.25;

    /// <summary>Nor is it steeper than this, whatever its length.</summary>
    public const double Steepest = 0.25;

    /// <summary>Wanted rise in staff spaces, y downward: negative when the last note is higher.</summary>
    /// <param name="notes">The notes, with y such that the beam lies above them.</param>
    public static double Wanted(IReadOnlyList<BeamNote> notes)
    {
        var steps = (int)Math.Round((notes[^1].HeadY - notes[0].HeadY) * 2);
        if (steps == 0 || IsConcave(notes) || IsRepeated(notes)) return 0;
        var rise = Math.Abs(steps) switch
        {
            1 => 0.25,
            2 => 0.5,
            3 or 4 => 0.75,
            <= 7 => 1.0,
            _ => Most,
        };
        rise = Math.Min(rise, Steepest * (notes[^1].StemX - notes[0].StemX));
        return Math.Sign(steps) * rise;
    }

    // An inner note nearer the beam than both outer ones.
    private static bool IsConcave(IReadOnlyList<BeamNote> notes)
    {
        var nearest = Math.Min(notes[0].HeadY, notes[^1].HeadY);
        for (var i = 1; i < notes.Count - 1; i++) if (notes[i].HeadY < nearest) return true;
        return false;
    }

    // A figure of two or more notes that comes again.
    private static bool IsRepeated(IReadOnlyList<BeamNote> notes)
    {
        for (var period = 2; period <= notes.Count / 2; period++)
        {
            if (notes.Count % period != 0) continue;
            var same = true;
            for (var i = period; i < notes.Count && same; i++) same = notes[i].HeadY == notes[i - period].HeadY;
            if (same) return true;
        }
        return false;
    }
}

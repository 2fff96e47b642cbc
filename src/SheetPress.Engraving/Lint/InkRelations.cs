namespace SheetPress.Engraving;

/// <summary>Which marks may touch because they belong together. Everything else keeps its distance.</summary>
internal static class InkRelations
{
    // Ties and slurs may come near the notes at their ends (in staff spaces along x).
    private const double EndReach = 1.3;

    // A stem that stands further than this within the ends of a tie is run through by it, also where it is that of its own note.
    private const double WithinEnds = 0.1;

    /// <summary>Whether two marks may touch.</summary>
    /// <param name="a">One mark.</param>
    /// <param name="b">The other.</param>
    /// <param name="unit">Length of a staff space.</param>
    public static bool MayTouch(Mark a, Mark b, double unit) => OneWay(a, b, unit) || OneWay(b, a, unit);

    private static bool OneWay(Mark a, Mark b, double unit)
    {
        // The parts of one sign.
        if (a.Role == b.Role && a.Origin == b.Origin && a.Role != MarkRole.Accidental) return true;
        var sameMeasure = a.Origin.System == b.Origin.System && a.Origin.Measure == b.Origin.Measure;
        var sameEvent = sameMeasure && a.Origin.Event == b.Origin.Event && a.Origin.Voice == b.Origin.Voice;
        return a.Role switch
        {
            MarkRole.StaffLine => StandsInStaff(b.Role),
            MarkRole.TabLine => StandsInStaff(b.Role) && b.Role != MarkRole.FretNumber || b.Role is MarkRole.Technique && b is not TextMark,
            MarkRole.Barline => b.Role is MarkRole.Barline or MarkRole.Bracket || (b.Role is MarkRole.Tie or MarkRole.Slur or MarkRole.Slide or MarkRole.Dynamic or MarkRole.Technique or MarkRole.Tuplet && b is LineMark or CurveMark),
            MarkRole.Bracket => b.Role is MarkRole.Bracket,
            MarkRole.KeySignature or MarkRole.Meter => b.Role == a.Role && sameMeasure,
            MarkRole.Stem => b.Role switch
            {
                MarkRole.Notehead or MarkRole.LedgerLine or MarkRole.Flag => sameEvent || SharesStem(a, b, unit),
                // A beam carries the stems of its own voice, from that of its first note on.
                MarkRole.Beam => sameMeasure && a.Origin.Voice == b.Origin.Voice && a.Origin.Event >= b.Origin.Event,
                MarkRole.Stem => sameMeasure && SharesStem(a, b, unit),
                _ => false,
            },
            MarkRole.Beam => b.Role is MarkRole.Beam && sameMeasure && a.Origin.Voice == b.Origin.Voice,
            MarkRole.Notehead => b.Role switch
            {
                MarkRole.LedgerLine => sameEvent || IsOtherVoice(a, b) && SharesColumn(a, b, unit),
                MarkRole.Notehead => IsOtherVoice(a, b) && SharesColumn(a, b, unit),
                MarkRole.Flag => sameEvent,
                _ => false,
            },
            MarkRole.LedgerLine => b.Role is MarkRole.LedgerLine && IsOtherVoice(a, b) && SharesColumn(a, b, unit),
            MarkRole.FretNumber => b.Role is MarkRole.FretNumber && IsOtherVoice(a, b) && SharesColumn(a, b, unit),
            MarkRole.Rest => b.Role is MarkRole.Rest && sameEvent,
            MarkRole.Tie or MarkRole.Slur => IsNote(b.Role) && NearEnd((CurveMark)a, b, unit) && !IsTieThroughStem((CurveMark)a, b, unit) || b.Role is MarkRole.Tie or MarkRole.Slur && ContinuesAt(a, b, unit),
            // A letter stands over its arc, an arrow at its number; the distances are theirs to keep.
            MarkRole.Technique => b.Role is MarkRole.Technique && sameEvent,
            // Of one neck only dots keep apart from each other, each of which has a number.
            MarkRole.Diagram => b.Role is MarkRole.Diagram && a.Origin.Event == b.Origin.Event && a.Origin.Staff < 0,
            MarkRole.BodyText or MarkRole.Title or MarkRole.TableRule => b.Role is MarkRole.BodyText or MarkRole.Title or MarkRole.TableRule or MarkRole.Diagram || IsSymbolInText(b),
            _ => false,
        };
    }

    private static bool StandsInStaff(MarkRole role) => role is MarkRole.StaffLine or MarkRole.TabLine or MarkRole.Barline or MarkRole.Bracket
        or MarkRole.Clef or MarkRole.KeySignature or MarkRole.Meter or MarkRole.Notehead or MarkRole.Stem or MarkRole.Flag or MarkRole.Beam
        or MarkRole.Accidental or MarkRole.Dot or MarkRole.Rest or MarkRole.Tie or MarkRole.Slur or MarkRole.Slide or MarkRole.Articulation or MarkRole.LedgerLine;

    // A flag is no part that an arc may start at: one that runs through it is not seen where it begins.
    private static bool IsNote(MarkRole role) => role is MarkRole.Notehead or MarkRole.Stem or MarkRole.LedgerLine or MarkRole.Beam or MarkRole.Dot;

    private static bool IsTieThroughStem(CurveMark arc, Mark b, double unit) =>
        arc.Role == MarkRole.Tie && b.Role == MarkRole.Stem && b.Bounds.Left > arc.Start.X + (WithinEnds * unit) && b.Bounds.Right < arc.End.X - (WithinEnds * unit);

    private static bool IsSymbolInText(Mark mark) => mark.Origin.System < 0 && mark.Role is MarkRole.ChordSymbol or MarkRole.DegreeName or MarkRole.Roman or MarkRole.Tempo;

    // Two voices may share a head, and stand against each other in a second.
    private static bool IsOtherVoice(Mark a, Mark b) =>
        a.Origin.System == b.Origin.System && a.Origin.Measure == b.Origin.Measure && a.Origin.Voice != b.Origin.Voice;

    // Two voices on one stem line, or chords that share a head.
    private static bool SharesStem(Mark a, Mark b, double unit) =>
        a.Bounds.Left < b.Bounds.Right + (0.05 * unit) && b.Bounds.Left < a.Bounds.Right + (0.05 * unit) && a.Origin.Voice != b.Origin.Voice
        && a.Origin.Measure == b.Origin.Measure && !IsMere(b, unit);

    // A stem that runs through a head away from the head's edge is no shared stem.
    private static bool IsMere(Mark b, double unit) => b.Role == MarkRole.Notehead && b.Bounds.Width > 3 * unit;

    private static bool SharesColumn(Mark a, Mark b, double unit) => Math.Abs(a.Bounds.Left - b.Bounds.Left) < 1.8 * unit;

    private static bool NearEnd(CurveMark arc, Mark b, double unit) =>
        b.Bounds.Left < arc.Start.X + (EndReach * unit) && b.Bounds.Right > arc.Start.X - (EndReach * unit)
        || b.Bounds.Left < arc.End.X + (EndReach * unit) && b.Bounds.Right > arc.End.X - (EndReach * unit);

    // One arc ends where the next begins, or both start from one chord.
    private static bool ContinuesAt(Mark a, Mark b, double unit)
    {
        if (a is not CurveMark first || b is not CurveMark second) return false;
        return Math.Abs(first.End.X - second.Start.X) < unit || Math.Abs(first.Start.X - second.Start.X) < unit || Math.Abs(first.End.X - second.End.X) < unit;
    }
}

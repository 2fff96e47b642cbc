using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Keeps two voices on one staff apart: shifted heads where they would collide, rests out of each other's way.</summary>
internal static class VoiceSeparation
{
    // White between heads of crossing voices that stand side by side.
    private const double CrossingGap = 0.2;

    // Rests of a voice move away from the middle by this much at least, and on in whole spaces past the notes of the other.
    private const double RestShift = 1;
    private const double RestGap = 0.3;
    private const double LevelReach = 2;

    // The brackets of a ghost note reach further up and down than its head.
    private const double HeadHalf = 0.5;
    private const double GhostHalf = 0.75;

    // The tie of far heads reaches this far from their middle.
    private const double TieReach = 2.1;

    /// <summary>Shifts heads and rests of the lower and upper voice of a measure.</summary>
    public static void Apply(EventDraft[] upper, EventDraft[] lower)
    {
        foreach (var below in lower)
        {
            var above = Array.Find(upper, d => d.Event.Onset == below.Event.Onset);
            if (above is null) continue;
            if (above.Event.IsRest && below.Event.IsRest && above.Event.Value == below.Event.Value) below.IsHidden = true;
            else if (!above.Event.IsRest && !below.Event.IsRest) Part(above, below);
        }
        MoveRests(upper, lower, -1);
        MoveRests(lower, upper, 1);
    }

    // Handbook rule, from memory: of a unison that cannot be shared the note with the dot stands right, beside its dot, which would
    // else seem to belong to the other voice.
    private static void Part(EventDraft above, EventDraft below)
    {
        var isUnison = above.Steps[0] == below.Steps[^1];
        if (isUnison && above.Event.Value.Dots > 0 && below.Event.Value.Dots == 0) above.Shift = below.Glyphs.Max(g => g.Bounds.Right) + CrossingGap;
        else below.Shift = ShiftOf(above, below);
    }

    // Common practice: in a second the lower voice stands right, so that both stems meet in one line; a unison of equal heads is
    // shared; crossing voices stand side by side. Brackets of ghost notes stand between the heads of both.
    private static double ShiftOf(EventDraft above, EventDraft below)
    {
        var distance = above.Steps[0] - below.Steps[^1];
        if (distance >= 2) return 0;
        if (distance == 0 && above.Glyphs[0] == below.Glyphs[^1] && above.Event.Value.Dots == below.Event.Value.Dots && above.HasStem == below.HasStem && IsGhost(above) == IsGhost(below)) return 0;
        var width = above.Glyphs.Max(g => g.Bounds.Right);
        if (ChordShape.Displaced(above.Steps, StemDirection.Up).Any(d => d)) width += above.HeadWidth;
        var brackets = new[] { above, below }.Count(IsGhost) * OnsetPlanner.BracketWidth;
        if (distance >= 0 && brackets == 0) return width - Ink.Defaults.StemThickness;
        return Math.Max(width, distance < 0 ? FlagReach(above, below) : 0) + brackets + CrossingGap;
    }

    private static bool IsGhost(EventDraft draft) => draft.Event.Tones.Any(t => t.Head == Notehead.Ghost);

    // How far the flag of a note reaches to where the heads of the other voice, and their ledger lines, would stand higher than it.
    private static double FlagReach(EventDraft above, EventDraft below)
    {
        if (above.IsBeamed || above.Event.Value.Flags == 0) return 0;
        var flag = Ink.Glyph(FlagGlyphs.Name(above.Event.Value.Flags, StemDirection.Up)).Bounds;
        var bottom = StemRules.Tip(StemDirection.Up, above.Steps[0], above.Steps[^1], above.Event.Value.Flags) + flag.Bottom;
        var isClear = StaffSteps.Y(below.Steps[^1]) - 0.5 > bottom + CrossingGap;
        return isClear ? 0 : above.Glyphs.Max(g => g.Bounds.Right) + flag.Right + Ink.Defaults.LegerLineExtension;
    }

    private static void MoveRests(EventDraft[] voice, EventDraft[] others, int away)
    {
        var rests = voice.Where(d => d.Event.IsRest && !d.IsHidden && !others.Any(o => o.IsHidden && o.Event.Onset == d.Event.Onset)).ToList();
        if (rests.Count == 0) return;
        foreach (var rest in rests) MoveRest(rest, others, away);
        // Rests of a bar that would stand at nearly the same height stand at the same.
        var furthest = rests.Max(Moved);
        foreach (var rest in rests.Where(r => furthest - Moved(r) <= LevelReach)) rest.RestY += away * (furthest - Moved(rest));
    }

    private static double Moved(EventDraft rest) => Math.Abs(rest.RestY - RestGlyphs.Y(rest.IsCentred ? NoteBase.Whole : rest.Event.Value.Base));

    private static void MoveRest(EventDraft rest, EventDraft[] others, int away)
    {
        rest.RestY += away * RestShift;
        var glyph = Ink.Glyph(RestGlyphs.Name(rest.IsCentred ? NoteBase.Whole : rest.Event.Value.Base, rest.RestY));
        while (others.Any(d => IsInWay(d, rest, glyph, away))) rest.RestY += away;
    }

    // Handbook rule, from memory: a rest stays on the side of its own voice, past all that the other voice has while it lasts; between
    // the notes of the other voice it would seem to be one of theirs. Their stems point to the other side.
    private static bool IsInWay(EventDraft other, EventDraft rest, MusicGlyph glyph, int away)
    {
        if (other.IsHidden || other.Event.Onset >= rest.Event.End || other.Event.End <= rest.Event.Onset) return false;
        if (other.Event.IsRest)
        {
            if (other.Event.Onset != rest.Event.Onset) return false;
            var sign = Ink.Glyph(RestGlyphs.Name(other.IsCentred ? NoteBase.Whole : other.Event.Value.Base, other.RestY)).Bounds;
            return rest.RestY + glyph.Bounds.Top < other.RestY + sign.Bottom + RestGap && rest.RestY + glyph.Bounds.Bottom > other.RestY + sign.Top - RestGap;
        }
        var reach = ReachTowards(rest, other);
        return away > 0
            ? rest.RestY + glyph.Bounds.Top < StaffSteps.Y(other.Steps[0]) + reach
            : rest.RestY + glyph.Bounds.Bottom > StaffSteps.Y(other.Steps[^1]) - reach;
    }

    // From the middle of the outer head of a note to where a rest may begin. White is needed only where they meet: in one column, or at
    // the tie of a chord, which lies on both of its sides and passes the rest.
    private static double ReachTowards(EventDraft rest, EventDraft note)
    {
        var isBefore = note.Event.Onset < rest.Event.Onset;
        if (isBefore && !rest.IsCentred && note.Steps.Length > 1 && note.Event.Tones.Any(t => t.TieStart)) return TieReach + RestGap;
        var half = IsGhost(note) ? GhostHalf : HeadHalf;
        return half + (rest.IsCentred || note.Event.Onset == rest.Event.Onset ? RestGap : 0);
    }
}

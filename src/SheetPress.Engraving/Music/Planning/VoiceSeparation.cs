using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Keeps two voices on one staff apart: shifted heads where they would collide, rests out of each other's way.</summary>
internal static class VoiceSeparation
{
    // White between heads of crossing voices that stand side by side.
    private const double CrossingGap = 0.2;

    // Rests of a voice move away from the middle by this much at least, and on in whole spaces while they touch a note.
    private const double RestShift = 1;
    private const double RestGap = 0.3;
    private const int MostRestMoves = 6;

    // The brackets of a ghost note reach further up and down than its head.
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
        foreach (var draft in upper.Where(d => d.Event.IsRest)) MoveRest(draft, lower, -1);
        foreach (var draft in lower.Where(d => d.Event.IsRest && !d.IsHidden)) MoveRest(draft, upper, 1);
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
    // shared; crossing voices stand side by side.
    private static double ShiftOf(EventDraft above, EventDraft below)
    {
        var distance = above.Steps[0] - below.Steps[^1];
        if (distance >= 2) return 0;
        if (distance == 0 && above.Glyphs[0] == below.Glyphs[^1] && above.Event.Value.Dots == below.Event.Value.Dots && above.HasStem == below.HasStem) return 0;
        var width = above.Glyphs.Max(g => g.Bounds.Right);
        if (ChordShape.Displaced(above.Steps, StemDirection.Up).Any(d => d)) width += above.HeadWidth;
        return distance >= 0 ? width - Ink.Defaults.StemThickness : Math.Max(width, FlagReach(above, below)) + CrossingGap;
    }

    // How far the flag of a note reaches to where the heads of the other voice, and their ledger lines, would stand higher than it.
    private static double FlagReach(EventDraft above, EventDraft below)
    {
        if (above.IsBeamed || above.Event.Value.Flags == 0) return 0;
        var flag = Ink.Glyph(FlagGlyphs.Name(above.Event.Value.Flags, StemDirection.Up)).Bounds;
        var bottom = StemRules.Tip(StemDirection.Up, above.Steps[0], above.Steps[^1], above.Event.Value.Flags) + flag.Bottom;
        var isClear = StaffSteps.Y(below.Steps[^1]) - 0.5 > bottom + CrossingGap;
        return isClear ? 0 : above.Glyphs.Max(g => g.Bounds.Right) + flag.Right + Ink.Defaults.LegerLineExtension;
    }

    private static void MoveRest(EventDraft rest, EventDraft[] others, int away)
    {
        var shared = Array.Find(others, d => d.IsHidden && d.Event.Onset == rest.Event.Onset);
        if (shared is not null) return;
        rest.RestY += away * RestShift;
        var glyph = Ink.Glyph(RestGlyphs.Name(rest.IsCentred ? NoteBase.Whole : rest.Event.Value.Base, rest.RestY));
        for (var move = 0; move < MostRestMoves && others.Any(d => Touches(rest, glyph, d)); move++) rest.RestY += away;
    }

    // The tie of a note lies on the side of its voice, those of a chord on both, past all that comes before the note they lead to.
    private static bool IsAtTie(EventDraft rest, MusicGlyph glyph, EventDraft tied)
    {
        if (!tied.Event.Tones.Any(t => t.TieStart)) return false;
        var isChord = tied.Steps.Length > 1;
        var top = StaffSteps.Y(tied.Steps[^1]) - (isChord || tied.Voice == 0 ? TieReach : 0);
        var bottom = StaffSteps.Y(tied.Steps[0]) + (isChord || tied.Voice == 1 ? TieReach : 0);
        return rest.RestY + glyph.Bounds.Top < bottom + RestGap && rest.RestY + glyph.Bounds.Bottom > top - RestGap;
    }

    private static bool Touches(EventDraft rest, MusicGlyph glyph, EventDraft other)
    {
        if (other.IsHidden || other.Event.Onset >= rest.Event.End || other.Event.End <= rest.Event.Onset) return false;
        if (other.Event.IsRest)
        {
            if (other.Event.Onset != rest.Event.Onset) return false;
            var sign = Ink.Glyph(RestGlyphs.Name(other.IsCentred ? NoteBase.Whole : other.Event.Value.Base, other.RestY)).Bounds;
            return rest.RestY + glyph.Bounds.Top < other.RestY + sign.Bottom + RestGap && rest.RestY + glyph.Bounds.Bottom > other.RestY + sign.Top - RestGap;
        }
        // A longer note that started before matters only where its head is: beside the rest when they start together; or by its tie.
        if (!rest.IsCentred && other.Event.Onset < rest.Event.Onset) return IsAtTie(rest, glyph, other);
        if (!rest.IsCentred && other.Event.Onset != rest.Event.Onset) return false;
        var half = other.Event.Tones.Any(t => t.Head == Notehead.Ghost) ? GhostHalf : 0.5;
        var (top, bottom) = (StaffSteps.Y(other.Steps[^1]) - half, StaffSteps.Y(other.Steps[0]) + half);
        // Beside its stem there is no room either.
        if (other.HasStem && other.Voice == 0) top -= StemRules.Usual;
        else if (other.HasStem) bottom += StemRules.Usual;
        return rest.RestY + glyph.Bounds.Top < bottom + RestGap && rest.RestY + glyph.Bounds.Bottom > top - RestGap;
    }
}

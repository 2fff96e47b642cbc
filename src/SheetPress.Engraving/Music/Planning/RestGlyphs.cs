using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>Glyphs and places of rests.</summary>
internal static class RestGlyphs
{
    /// <summary>SMuFL name of a rest; a whole or half rest off the staff brings its own ledger line.</summary>
    /// <param name="value">The written base.</param>
    /// <param name="y">y of the line it hangs from or sits on.</param>
    public static string Name(NoteBase value, double y) => value switch
    {
        NoteBase.Whole => y is < 0 or > StaffSteps.BottomLine ? "restWholeLegerLine" : "restWhole",
        NoteBase.Half => y is < 0 or > StaffSteps.BottomLine ? "restHalfLegerLine" : "restHalf",
        NoteBase.Quarter => "restQuarter",
        NoteBase.Eighth => "rest8th",
        NoteBase.Sixteenth => "rest16th",
        NoteBase.ThirtySecond => "rest32nd",
        _ => "rest64th",
    };

    /// <summary>y of a rest alone on its staff: the whole rest hangs from the fourth line, the rest sit about the middle line.</summary>
    public static double Y(NoteBase value) => value == NoteBase.Whole ? StaffSteps.Middle - 1 : StaffSteps.Middle;
}

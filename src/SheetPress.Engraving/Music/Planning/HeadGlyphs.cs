using SheetPress.Scores;

namespace SheetPress.Engraving;

/// <summary>SMuFL names of noteheads.</summary>
internal static class HeadGlyphs
{
    /// <summary>The glyph of a kind of head and a value.</summary>
    public static string Name(Notehead head, NoteBase value) => (head, value) switch
    {
        (Notehead.Dead, NoteBase.Whole) => "noteheadXWhole",
        (Notehead.Dead, NoteBase.Half) => "noteheadXHalf",
        (Notehead.Dead, _) => "noteheadXBlack",
        (Notehead.Slash, NoteBase.Whole) => "noteheadSlashWhiteWhole",
        (Notehead.Slash, NoteBase.Half) => "noteheadSlashWhiteHalf",
        (Notehead.Slash, _) => "noteheadSlashHorizontalEnds",
        (Notehead.Harmonic, NoteBase.Whole) => "noteheadDiamondWhole",
        (Notehead.Harmonic, NoteBase.Half) => "noteheadDiamondHalf",
        (Notehead.Harmonic, _) => "noteheadDiamondBlack",
        (_, NoteBase.Whole) => "noteheadWhole",
        (_, NoteBase.Half) => "noteheadHalf",
        _ => "noteheadBlack",
    };
}

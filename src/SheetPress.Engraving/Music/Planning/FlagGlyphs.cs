namespace SheetPress.Engraving;

/// <summary>SMuFL names of flags.</summary>
internal static class FlagGlyphs
{
    /// <summary>The glyph of one to four flags.</summary>
    public static string Name(int flags, StemDirection direction) => (flags, direction) switch
    {
        (1, StemDirection.Up) => "flag8thUp",
        (1, _) => "flag8thDown",
        (2, StemDirection.Up) => "flag16thUp",
        (2, _) => "flag16thDown",
        (3, StemDirection.Up) => "flag32ndUp",
        (3, _) => "flag32ndDown",
        (_, StemDirection.Up) => "flag64thUp",
        _ => "flag64thDown",
    };
}

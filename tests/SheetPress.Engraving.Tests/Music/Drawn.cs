using SheetPress.Scores;

namespace SheetPress.Engraving.Tests;

/// <summary>Engraves small scores for tests of rules and gives their marks by event.</summary>
internal static class Drawn
{
    /// <summary>A line wide enough for every measure of a test, in staff spaces.</summary>
    public const double Wide = 120;

    /// <summary>The first system of a score on a staff alone (or as the score says), in staff spaces from the top line.</summary>
    public static EngravedSystem System(Score score) => ScoreEngraver.Engrave(score, Wide, new EngravingOptions()).Systems[0];

    /// <summary>The first system of notes on a staff alone.</summary>
    public static EngravedSystem Staff(string notes, string instrument = "bass-4", string key = "C major", string meter = "4/4", string? lower = null) =>
        System(ScoreText.Parse(notes, instrument, key, meter, StaffLayout.Staff, lower));

    /// <summary>Marks of a role in order of x.</summary>
    public static List<Mark> Of(this EngravedSystem system, MarkRole role) => [.. system.Drawing.Marks.Where(m => m.Role == role).OrderBy(m => m.Bounds.Left)];

    /// <summary>Glyphs of a role in order of x.</summary>
    public static List<GlyphMark> Glyphs(this EngravedSystem system, MarkRole role) => [.. system.Of(role).OfType<GlyphMark>()];

    /// <summary>Names of the glyphs of a role in order of x.</summary>
    public static string Names(this EngravedSystem system, MarkRole role) => string.Join(' ', system.Glyphs(role).Select(g => g.Glyph.Name));

    /// <summary>Marks of a role that belong to an event of the first measure.</summary>
    public static List<Mark> Of(this EngravedSystem system, MarkRole role, int @event, int voice = 0, int measure = 0) =>
        [.. system.Of(role).Where(m => m.Origin.Event == @event && m.Origin.Voice == voice && m.Origin.Measure == measure)];
}
